package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.StoneHouse;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A solid wall has no hollow: a channel is cut up its face, 45 minutes a metre. */
@Feature("channel in plaster")
class ChannelTest {
  private static final String BENCH = "in: south room, wall: east, from: north 1 m, height: 900 mm";

  private static List<Double> channels(String bench) {
    Plan p = WrittenHouse.of(StoneHouse.TEXT.replace(BENCH, bench)).plan("surface");
    assertEquals(List.of(), p.unrouted());
    return p.works().stream()
        .filter(w -> w.kind().equals("channel"))
        .map(Plan.PlannedWork::minutes)
        .sorted()
        .toList();
  }

  @Test
  void aChannelIsAsLongAsTheCableInIt() {
    // Cable lies 12 mm off the wall, the ceiling is bored 60 mm off it: 48 mm across. Up from
    // 400 mm and 900 mm to 2400 mm: 2.048 m and 1.548 m at 45 minutes.
    assertEquals(List.of(69.66, 92.16), channels(BENCH));
  }

  @Test
  void twoCablesOfOneOutletLieInOneChannel() {
    String two = StoneHouse.TEXT.replace("400 mm, cables: [cat6]", "400 mm, cables: [cat6, cat6]");
    Plan p = WrittenHouse.of(two).plan("surface");
    assertEquals(3, p.runs().size());
    assertEquals(
        List.of(69.66, 92.16),
        p.works().stream()
            .filter(w -> w.kind().equals("channel"))
            .map(Plan.PlannedWork::minutes)
            .sorted()
            .toList());
  }

  @Test
  void twoOutletsAboveEachOtherPayForTheirOwnLengths() {
    assertEquals(
        List.of(69.66, 92.16),
        channels("in: north room, wall: east, from: south 1 m, height: 900 mm"));
  }

  @Test
  void twoOutletsSideBySidePayForTheirOwnLengths() {
    // The bench shares the desk's bore, 150 mm aside and 48 mm out: 0.1575 m along the ceiling, up
    // 1.5 m before. Both lie in the strip of either.
    assertEquals(
        List.of(74.5872, 92.16),
        channels("in: north room, wall: east, from: south 1150 mm, height: 900 mm"));
  }
}
