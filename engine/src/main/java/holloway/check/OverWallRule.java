package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.Found;
import holloway.house.Soffit;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.List;
import java.util.Optional;

/**
 * From the void over one room's lowered ceiling to that over the next a cable goes through a hole,
 * or over a wall that is stated to stop short: higher than the wall's top and than both ceilings,
 * worked out again from what the house file says of the wall and of the ceilings.
 */
final class OverWallRule implements Rule {
  /** Cable lies on the wall's top, give or take; millimetres. */
  private static final double ON_TOP_MM = 5;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Placed placed = evidence.house().framed().placed();
    for (Walk.At at : evidence.steps()) {
      Optional<Soffit> from = at.before().flatMap(l -> soffit(l, evidence, placed));
      Optional<Soffit> to = at.after().flatMap(l -> soffit(l, evidence, placed));
      boolean passes = at.isCrossing() && from.isPresent() && to.isPresent();
      if (passes && !from.get().room().equals(to.get().room()) && !isBored(at, evidence, placed)) {
        judge(at, from.get(), to.get(), placed, charge);
      }
    }
  }

  private static void judge(Walk.At at, Soffit one, Soffit other, Placed placed, Charge charge) {
    PlacedRoom a = placed.getRoom(one.room());
    PlacedRoom b = placed.getRoom(other.room());
    List<Long> heights =
        placed.house().walls().stream()
            .filter(w -> w.ref().flatMap(WallRef::between).filter(r -> joins(r, a, b)).isPresent())
            .flatMap((WallSpec w) -> w.traits().height().stream())
            .map(h -> h.value().nm())
            .toList();
    double low = Math.min(at.start().z(), at.end().z());
    if (heights.isEmpty()) {
      charge.step(at, "needs a hole: the wall there goes on up to the ceiling");
      return;
    }
    double floor = Math.max(a.floorZ(), b.floorZ()) / 1e6;
    double top = floor + heights.stream().mapToLong(h -> h).max().getAsLong() / 1e6;
    if (low < top + ON_TOP_MM) {
      charge.step(at, "lies %.0f mm over the floor, as high as the wall there", low - floor);
    }
    double under = Math.max(underside(one, a), underside(other, b));
    if (low < under || low > Math.min(a.ceilingZ(), b.ceilingZ()) / 1e6) {
      charge.step(at, "does not lie between the lowered ceilings and the ceiling over them");
    }
  }

  private static double underside(Soffit s, PlacedRoom room) {
    return (room.ceilingZ() - s.drop().value().nm()) / 1e6;
  }

  private static boolean joins(WallRef.Between r, PlacedRoom a, PlacedRoom b) {
    return r.one().equals(a.name()) && r.other().equals(b.name())
        || r.one().equals(b.name()) && r.other().equals(a.name());
  }

  private static boolean isBored(Walk.At at, Evidence evidence, Placed placed) {
    String id = at.step().id();
    return evidence.hole(id).isPresent()
        || placed.house().found().stream()
            .anyMatch(f -> f instanceof Found.HoleMade m && m.id().equals(id));
  }

  /** The stated ceiling that a leg lies over. */
  private static Optional<Soffit> soffit(Walk.At leg, Evidence evidence, Placed placed) {
    Optional<Hollow> h = leg.isLeg() ? evidence.hollow(leg) : Optional.empty();
    return h.filter(x -> x.kind() == HollowKind.SOFFIT || x.kind() == HollowKind.LOWERED_CEILING)
        .flatMap(
            x ->
                placed.house().soffits().stream()
                    .filter(s -> x.id().equals("soffit/" + s.name()))
                    .findFirst());
  }
}
