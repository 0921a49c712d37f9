package holloway.check;

import static holloway.check.StonePlan.CHANNEL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A channel lies open to the surface of its own room and to nothing else. */
class ChannelJoinTest {
  private static final String NO_WAY =
      "is neither a crossing of the house nor an opened patch, access or cut-out";

  private static List<String> crossings(Plan plan) {
    return StonePlan.judge(new CrossingRule(), plan).stream().map(Refusal::text).toList();
  }

  @Test
  void aCeilingBoreLeadsIntoTheChannelsOfItsOwnRoom() {
    assertEquals(List.of(), crossings(StonePlan.good()));
  }

  @Test
  void aCeilingBoreLeadsIntoNoOtherRoomsChannel() {
    Plan moved =
        StonePlan.withDeskStep(StonePlan.LEG, s -> StonePlan.in(StonePlan.BENCH_CHANNEL, s));
    assertEquals(
        List.of(
            "opens into north room/surface, but step "
                + (StonePlan.LEG + 1)
                + " lies in "
                + StonePlan.BENCH_CHANNEL),
        crossings(moved));
    assertTrue(
        StonePlan.referee(moved).stream()
            .anyMatch(r -> r.text().startsWith("leaves " + StonePlan.BENCH_CHANNEL)));
  }

  @Test
  void aCableThatLeavesTheChannelSidewaysIsRefused() {
    // The channel may be cut up to 320 mm beside the outlet: 321 mm and the slack of 1 mm.
    assertEquals(List.of(), legs(320));
    assertEquals(1, legs(322).size());
    assertTrue(legs(322).get(0).startsWith("leaves " + CHANNEL + " at "), legs(322)::toString);
  }

  private static List<String> legs(int asideMm) {
    Plan bent =
        StonePlan.withDeskPath(
            path -> {
              Point3 top = path.get(1);
              Point3 aside = new Point3(top.x(), top.y() + asideMm * 1_000_000L, top.z());
              return List.of(path.get(0), top, aside, top, path.get(2));
            });
    return StonePlan.judge(new LegRule(), bent).stream().map(Refusal::text).toList();
  }

  @Test
  void aCableComesOutOfTheChannelOntoItsOwnRoomsSurface() {
    assertEquals(List.of(), crossings(surfaced("north room/surface", 0)));
  }

  @Test
  void aCableComesOutOntoNoOtherRoomsSurface() {
    // Twice: where it leaves the channel, and where the ceiling bore of the north room takes it.
    assertEquals(
        List.of(
            "opens into north room/surface, but step "
                + (StonePlan.LEG + 1)
                + " lies in south room/surface",
            NO_WAY),
        crossings(surfaced("south room/surface", 0)));
  }

  @Test
  void comingOutIsOnePlace() {
    assertEquals(List.of(), crossings(surfaced("north room/surface", 1)));
    assertEquals(List.of(NO_WAY), crossings(surfaced("north room/surface", 2)));
  }

  /**
   * The cable to the desk lies on that surface for a hand's breadth before it enters the channel.
   *
   * @param gapMm how long the crossing from the one to the other is
   */
  private static Plan surfaced(String surface, int gapMm) {
    return StonePlan.withDeskSteps(
        steps -> {
          Plan.PlanStep leg = steps.get(StonePlan.LEG);
          Point3 in = leg.path().get(0);
          Point3 aside = new Point3(in.x() - 100_000_000, in.y(), in.z());
          Point3 back = new Point3(in.x() - gapMm * 1_000_000L, in.y(), in.z());
          List<Plan.PlanStep> out = new ArrayList<>(steps);
          out.add(StonePlan.LEG, ToySteps.laid(surface, 1, in, aside, back));
          out.add(StonePlan.LEG + 1, step("desk/out", back, in));
          return out;
        });
  }

  private static Plan.PlanStep step(String id, Point3 from, Point3 to) {
    return new Plan.PlanStep(
        "crossing",
        id,
        Optional.empty(),
        Optional.empty(),
        List.of(from, to),
        from.distanceTo(to) / 1e9,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
