package holloway.report;

import static holloway.report.ToySheet.metric;
import static holloway.report.ToySheet.sheet;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Toy;
import holloway.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** What the text says of runs, outlets and holes to the one who makes them. */
class PlanTextWorkTest {
  @Test
  void assumedHolesSayFindTheStudFirst() {
    String text = metric();
    assertTrue(text.contains("  - H1: find the stud or joist first"), text);
    assertTrue(text.contains("  H1   top plate, 22 mm (7/8 in) bit; find the stud first\n"), text);
    assertTrue(text.contains("  H2   top plate, 32 mm (1-1/4 in) bit\n"), text);
    assertTrue(text.contains("does not close: ground, east-west: off by 41 mm, 12 mm"), text);
  }

  @Test
  void aHoleIsPlacedMeasuredAndExplained() {
    String text = metric();
    assertTrue(text.contains("wall between garage and office, 1.200 m from its"), text);
    assertTrue(text.contains("top plate, then top plate; 76 mm in all"), text);
    assertTrue(text.contains("far side   1.200 m from the south-west corner of office"), text);
    assertTrue(text.contains("or         through a patch"), text);
    assertTrue(text.contains("no tape dimensions for this hole"), text);
  }

  @Test
  void runsSayWhereTheyGo() {
    String text = metric();
    assertTrue(text.contains("  desk/cat6-1: 10.0 m of cat6, cut 13.3 m\n"), text);
    assertTrue(
        text.contains("cabinet > open in the garage 1.0 m > H1 > inside the wall between"), text);
    assertTrue(text.contains("the same way as desk/cat6-1"), text);
    assertTrue(text.contains("a ready-made lead of 15 m, 1.0 m over"), text);
    assertTrue(text.contains("BICSI"), text);
    String steps = PlanText.of(sheet(Toy.placed(), true, UnitSystem.METRIC, Ink.PLAIN));
    assertTrue(
        steps.contains(
            "            8.9 m  inside the wall between garage and office, blind, fish 1\n"),
        steps);
  }

  @Test
  void outletsAreTapedFromBothEndsAndSayWhatIsBroughtThere() {
    String text = metric().split("\nOUTLETS\n")[1].split("\nHOLES\n")[0];
    assertTrue(text.contains("cabinet: east wall of the garage"), text);
    String desk = text.substring(text.indexOf("  desk:")).replaceAll("\\s+", " ");
    assertTrue(
        desk.contains("west wall of the office, 1.200 m from its south end and 2.800 m from"),
        desk);
    assertTrue(desk.contains("400 mm over its floor"), desk);
    assertTrue(desk.contains("brings 2 cat6, 1 om4 (1 of them spare"), desk);
  }

  @Test
  void powerAndBlocksNearTheHolesAreToldOf() {
    String text = metric().replaceAll("\\s+", " ");
    assertTrue(text.contains("H1: a socket 0 mm along the same wall"), text);
    assertTrue(text.contains("a block may stand half-way up a bay: about 40 in 100"), text);
    assertTrue(text.contains("our judgement; no published survey"), text);
  }
}
