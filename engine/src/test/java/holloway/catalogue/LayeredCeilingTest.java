package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.MemberKind;
import holloway.pipeline.Minutes;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ceilings of several layers: bored, cut and reckoned sheet by sheet. */
@Feature("ceiling of several layers")
class LayeredCeilingTest {
  private static final String DESK =
      "{ name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }";
  private static final String POINT =
      "{ name: point, in: den, ceiling: [west 5 ft, south 6 ft], cables: [cat6], power: class 4 }";

  private static WrittenHouse house(String garage, String den) {
    return WrittenHouse.of(
        TwoStoreys.with(
            DESK,
            POINT,
            "bearing: yes",
            "bearing: no",
            "garage: yes",
            "garage: yes" + garage,
            "east-of: garage",
            "east-of: garage" + den));
  }

  private static WrittenHouse layered() {
    return house(
        ", ceiling: [board 5/8 in, board 1/2 in]", ", ceiling: [board 1/2 in, plaster 9 mm]");
  }

  @Test
  void eachSheetIsBoredAndCut() {
    Plan one = house("", "").plan("surface", "outside");
    // ceiling cut-out 12; garage board (4 + 1) x 1 + 2
    assertEquals(12, Minutes.work(one, "point/cut-out"), 1e-9);
    assertEquals(7, one.holes().get(0).minutes(), 1e-9);
    Plan two = layered().plan("surface", "outside");
    // a layer more 4; a sheet more 1
    assertEquals(16, Minutes.work(two, "point/cut-out"), 1e-9);
    assertEquals(8, two.holes().get(0).minutes(), 1e-9);
    assertEquals("[]", Spoiled.refused(two, layered()));
  }

  /** 5/8 in and 1/2 in of board are drilled: 28.6 mm. */
  @Test
  void theHoleIsAsDeepAsTheLayers() {
    Plan two = layered().plan("surface", "outside");
    assertEquals(28.575, two.holes().get(0).depthMm(), 0.1);
  }

  /** The joists lie over all layers: 12.7 and 9 mm over what is seen, the garage's below that. */
  @Test
  void theCeilingsHangByTheirThickness() {
    WrittenHouse house = layered();
    long den = house.placed().getRoom("den").ceilingZ();
    long joists =
        house.hollows().framed().members().stream()
            .filter(m -> m.kind() == MemberKind.JOIST)
            .mapToLong(m -> m.frame().origin().z() + m.box().z0())
            .min()
            .orElseThrow();
    assertEquals(21_700_000, joists - den);
    assertEquals(28_575_000, joists - house.placed().getRoom("garage").ceilingZ());
  }

  @Test
  void theRefereeCountsTheSheets() {
    Plan cheap = house("", "").plan("surface", "outside");
    String says = Spoiled.refused(cheap, layered());
    assertTrue(says.contains("no price of it: [16.0]"), says);
    assertEquals(List.of(), cheap.unrouted());
  }
}
