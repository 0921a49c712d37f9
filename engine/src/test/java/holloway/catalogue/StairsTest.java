package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.Solids;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Stairs: what their well takes out of a floor, and what lies under them. */
@Feature("stairs and stairwell")
class StairsTest {
  /** Stairs fill the hall between study and lounge; the floor above is full of foam. */
  private static final String BETWEEN =
      """
      house: Stair House
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west, fill: foam }, ceiling-height: 8 ft }
      rooms:
        study: { level: ground, size: 3 m x 6 m }
        hall: { level: ground, size: 900 mm x 6 m, east-of: study, align: south }
        lounge: { level: ground, size: 4 m x 6 m, east-of: hall, align: south }
        landing: { level: upper, size: 900 mm x 6 m, above: hall, align: south-west }
      stairs:
        - { stair: main stair, in: hall, from: [west 0 m, south 1 m], size: 900 mm x 3 m, climbs: north, under: closed }
      cabinet: { in: study, wall: east, from: south 3.3 m, height: 400 mm }
      outlets:
        - { name: desk, in: lounge, wall: west, from: south 3.3 m, height: 400 mm, cables: [cat6] }
      """;

  private static Plan hidden(String text) {
    return WrittenHouse.of(text).plan("surface", "outside");
  }

  @Test
  @Feature("closed space under stairs")
  void theClosedSpaceUnderThemIsAWay() {
    Plan p = hidden(BETWEEN);
    assertEquals(List.of(), p.unrouted());
    assertEquals(
        List.of(
            "ground/hall-study/1/bay-3270",
            "stairs/main stair/under/wall/ground/hall-study/1/bay-3270",
            "stairs/main stair/under",
            "stairs/main stair/under/wall/ground/hall-lounge/1/bay-3270",
            "ground/hall-lounge/1/bay-3270"),
        WrittenHouse.way(p, "desk/cat6-1"));
    // Cut-outs 2 x 10, the boards from them 2 x 13; 0.22815 m in each bay and 0.9 m below the
    // stairs at 1.2 a metre, one fish 5.
    assertEquals(52.6276, p.totals().minutes(), 1e-3);
  }

  @Test
  @Feature("closed space under stairs")
  void openToTheHallThereIsNone() {
    Plan p = hidden(BETWEEN.replace("under: closed", "under: open"));
    assertEquals(1, p.unrouted().size());
  }

  @Test
  @Feature("cupboard under stairs")
  void inACupboardAPersonLaysTheCable() {
    Plan p = hidden(BETWEEN.replace("under: closed", "under: cupboard"));
    assertEquals(List.of(), p.unrouted());
    // Cut-outs 2 x 10, the boards bored from the cupboard 2 x 7; bays as before 2 x 0.2738, and
    // 0.9 m laid by hand at 2 a metre.
    assertEquals(36.3476, p.totals().minutes(), 1e-3);
    assertTrue(p.holes().get(0).method().contains("cupboard under the main stair"));
  }

  private static List<Member> stringers(WrittenHouse house) {
    List<Member> out =
        house.framed().members().stream()
            .filter(m -> m.kind() == MemberKind.STAIR && m.id().contains("stringer"))
            .toList();
    assertEquals(2, out.size());
    return out;
  }

  /** Whatever is under them and whichever way they climb, and with the bit's own radius. */
  @Test
  @Feature("stringers of stairs")
  void noBoreIsOfferedThroughAStringer() {
    for (String under : List.of("closed", "cupboard", "open")) {
      for (String climbs : List.of("north", "south")) {
        WrittenHouse house =
            WrittenHouse.of(
                BETWEEN
                    .replace("under: closed", "under: " + under)
                    .replace("climbs: north", "climbs: " + climbs));
        Solids solids = new Solids(stringers(house));
        for (Site s : house.hollows().sites()) {
          long radius = s.made() ? 6_000_000 : s.platedBit() * 500_000L;
          assertTrue(solids.free(s.a(), s.b(), radius), under + " " + climbs + " " + s.id());
        }
      }
    }
  }

  /** At the foot of the flight the stringers stand in the way of what passes under higher steps. */
  @Test
  @Feature("stringers of stairs")
  void theRefereeSeesTheCableGoThroughAStringer() {
    WrittenHouse north = WrittenHouse.of(BETWEEN);
    WrittenHouse south = WrittenHouse.of(BETWEEN.replace("climbs: north", "climbs: south"));
    // The same hollows and holes, round which the stairs are built the other way.
    HollowHouse h = north.hollows();
    HollowHouse turned =
        new HollowHouse(
            south.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    String says =
        Referee.check(north.plan("surface", "outside"), turned, north.request())
            .refusals()
            .toString();
    assertTrue(says.contains("runs into stair stairs/main stair/st"), says);
  }

  @Test
  void upTheWellNothingIsBored() {
    String up =
        BETWEEN.replace(
            "in: lounge, wall: west, from: south 3.3 m",
            "in: landing, wall: west, from: south 5 m");
    up =
        up.replace(
            "in: study, wall: east, from: south 3.3 m", "in: hall, wall: west, from: south 500 mm");
    Plan p = WrittenHouse.of(up).plan(Profile.FEWEST_HOLES);
    assertEquals(0, p.totals().holes());
    String none = up.substring(0, up.indexOf("stairs:")) + up.substring(up.indexOf("cabinet:"));
    assertEquals(1, WrittenHouse.of(none).plan(Profile.FEWEST_HOLES).totals().holes());
  }

  /**
   * One room under one floor, its joists running east-west from the cabinet's wall to the desk's.
   */
  private static final String UNDER_A_FLOOR =
      """
      house: Well House
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        store: { level: ground, size: 2 m x 6 m }
        lounge: { level: ground, size: 4 m x 6 m, east-of: store, align: south }
        den: { level: ground, size: 2 m x 6 m, east-of: lounge, align: south }
        study: { level: upper, size: 4 m x 6 m, above: lounge, align: south-west }
      STAIRS
      cabinet: { in: lounge, wall: west, from: south 2 m, height: 400 mm }
      outlets:
        - { name: desk, in: lounge, wall: east, from: south 2 m, height: 400 mm, cables: [cat6] }
      """;

  private static final String STAIRS =
      "stairs: [{ stair: back stair, in: lounge, from: [west 1.5 m, south 1.2 m], size: 900 mm x 2.4 m, climbs: north }]";

  @Test
  void noBayRunsAcrossTheWell() {
    Chain none = Chain.of(UNDER_A_FLOOR.replace("STAIRS", ""));
    Chain well = Chain.of(UNDER_A_FLOOR.replace("STAIRS", STAIRS));
    Plan straight = none.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    Plan round = well.plan(Profile.LEAST_WORK, Set.of("outside", "surface"), r -> true);
    assertEquals(List.of(), none.refusals(straight));
    assertEquals(List.of(), well.refusals(round));
    List<String> told =
        Referee.check(straight, well.house(), well.request()).refusals().stream()
            .map(Object::toString)
            .toList();
    assertTrue(told.stream().anyMatch(t -> t.contains("leaves upper/floor/bay-")), told::toString);
    assertTrue(told.stream().anyMatch(t -> t.contains("runs into header")), told::toString);
    assertTrue(round.totals().objective() > straight.totals().objective());
  }

  @Test
  void theWellIsTrimmedByDoubledJoists() {
    Chain well = Chain.of(UNDER_A_FLOOR.replace("STAIRS", STAIRS));
    // The floor's edge lies 101.6 mm outside the room: the well is 1601.6 to 2501.6 along the
    // joists and 1301.6 to 3701.6 across; two timbers of 38.1 mm before and behind it.
    assertEquals(
        List.of(1_225_400_000L, 1_263_500_000L, 3_701_600_000L, 3_739_700_000L),
        well.framed().members().stream()
            .filter(m -> m.kind() == MemberKind.JOIST && m.box().x().length() > 4_000_000_000L)
            .map(m -> m.box().y0())
            .filter(y -> y > 1_200_000_000L && y < 4_000_000_000L)
            .sorted()
            .toList());
    assertEquals(
        List.of(1_525_400_000L, 1_563_500_000L, 2_501_600_000L, 2_539_700_000L),
        well.framed().members().stream()
            .filter(m -> m.kind() == MemberKind.HEADER && m.owner().equals("upper/floor"))
            .map(m -> m.box().x0())
            .sorted()
            .toList());
    for (Hollow h : well.house().hollows()) {
      boolean across =
          h.kind() == HollowKind.JOIST_BAY
              && h.clear()
                  .overlaps(
                      new Box(
                          1_526_000_000,
                          2_577_000_000L,
                          1_302_000_000,
                          3_701_000_000L,
                          -1_000_000_000,
                          0));
      assertTrue(!across, h::id);
    }
  }
}
