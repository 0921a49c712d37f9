package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.MemberKind;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Two points of one ceiling with two joists between them: on straps the cable passes below the
 * joists, else each is bored from a patch.
 */
@Feature("strapped ceiling")
class StrappedCeilingTest {
  private static final String DESK =
      "- { name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }";
  private static final String POINTS =
      """
      - { name: one, in: den, ceiling: [west 5 ft, south 4 ft], cables: [] }
        - { name: two, in: den, ceiling: [west 5 ft, south 7 ft 4 in], cables: [] }
      links:
        - { from: one, to: two, cable: CABLE }""";

  private static WrittenHouse house(String den, String cable) {
    return WrittenHouse.of(
        TwoStoreys.with(
            "run: east-west, from: south 16 in",
            "run: east-west, from: south 16 in",
            DESK,
            POINTS.replace("CABLE", cable),
            "east-of: garage",
            "east-of: garage" + den));
  }

  private static final String STRAPS = ", straps: { depth: 3/4 in }";

  private static List<String> kinds(Plan p) {
    return p.holes().stream().map(Plan.PlannedHole::kind).sorted().toList();
  }

  @Test
  void noJoistIsBoredWhereStrapsCarryTheCeiling() {
    Plan bare = house("", "cat6").plan("outside", "surface");
    assertEquals(List.of("joist", "joist"), kinds(bare));
    assertTrue(bare.totals().patches() > 0, bare::toString);
    WrittenHouse strapped = house(STRAPS, "cat6");
    Plan p = strapped.plan("outside", "surface");
    assertEquals(List.of(), p.unrouted());
    assertEquals(List.of(), kinds(p));
    assertEquals(0, p.totals().patches());
    Plan.PlanStep leg =
        p.runs().get(0).steps().stream()
            .filter(s -> s.hollow().equals(java.util.Optional.of("void between battens")))
            .findFirst()
            .orElseThrow();
    assertTrue(leg.id().startsWith("den/straps-"), leg.id());
    assertEquals("[]", Spoiled.refused(p, strapped));
  }

  /** The joists lie over board and straps: 12.7 and 19.05 mm over what is seen. */
  @Test
  void theCeilingHangsByTheStraps() {
    WrittenHouse house = house(STRAPS, "cat6");
    long joists =
        house.framed().members().stream()
            .filter(m -> m.kind() == MemberKind.JOIST)
            .mapToLong(m -> m.frame().origin().z() + m.box().z0())
            .min()
            .orElseThrow();
    assertEquals(31_750_000, joists - house.placed().getRoom("den").ceilingZ());
    var battens =
        house.framed().members().stream().filter(m -> m.kind() == MemberKind.BATTEN).toList();
    // One along either wall and one every 16 in over 139-1/2 in: 2 and 8.
    assertEquals(10, battens.size());
    assertTrue(battens.stream().allMatch(m -> m.assumed()));
    assertEquals(
        Map.of(19_050_000L, 10L),
        battens.stream()
            .collect(
                java.util.stream.Collectors.groupingBy(
                    m -> m.box().z().length(), java.util.stream.Collectors.counting())));
  }

  @Test
  void tooThinAVoidIsNotOffered() {
    // 8 mm: under the 9 mm that a fish is swept with.
    Plan thin = house(", straps: { depth: 8 mm }", "cat6").plan("outside", "surface");
    assertEquals(List.of("joist", "joist"), kinds(thin));
    Plan ten = house(", straps: { depth: 10 mm }", "cat6").plan("outside", "surface");
    assertEquals(List.of(), kinds(ten));
    // The head that factory-made fibre is pulled by is 13 mm.
    assertEquals(
        List.of("joist", "joist"),
        kinds(house(", straps: { depth: 12 mm }", "om4").plan("outside", "surface")));
  }

  @Test
  void theRefereeReadsTheStrapsFromTheHouseFile() {
    WrittenHouse house = house(STRAPS, "cat6");
    Plan p = house.plan("outside", "surface");
    String none = Spoiled.refused(p, house("", "cat6"));
    assertTrue(none.contains("which the house does not have"), none);
    Plan fibre = house(STRAPS, "om4").plan("outside", "surface");
    assertEquals(List.of(), kinds(fibre));
    String says = Spoiled.refused(fibre, house(", straps: { depth: 12 mm }", "om4"));
    assertTrue(says.contains("is 13.0 mm thick in a void 12.0 mm deep over den"), says);
  }
}
