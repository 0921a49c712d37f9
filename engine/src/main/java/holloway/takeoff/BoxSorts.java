package holloway.takeoff;

import holloway.catalog.ShopItem;
import holloway.geometry.Interval;
import holloway.hollow.HollowKind;
import holloway.house.Fact;
import holloway.house.Thing;
import holloway.house.WallSpec;
import holloway.limits.BoxPractice;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.survey.BehindBoard;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What holds a plate at each outlet: a bracket clamped behind the lining, a shallow one where the
 * wall is thin, a box set into masonry, a box on the wall where cable comes along it, or the box
 * that hangs there already.
 */
final class BoxSorts {
  /** A box that is there serves an outlet this near to it. */
  private static final long SAME_BOX = 150_000_000L;

  private final Plan plan;
  private final Placed placed;

  BoxSorts(Plan plan, Placed placed) {
    this.plan = plan;
    this.placed = placed;
  }

  /** Empty where the box that hangs there is used. */
  Optional<ShopItem> of(Outlet outlet, boolean twoGangs) {
    Optional<OnWall> spot = spot(outlet);
    ShopItem ring = twoGangs ? ShopItem.RING_DOUBLE : ShopItem.RING_SINGLE;
    if (spot.isEmpty()) {
      return Optional.of(ring);
    }
    if (hasBox(spot.get())) {
      return Optional.empty();
    }
    if (!isCut(outlet.name()) && alongTheWall(outlet.name())) {
      return Optional.of(ShopItem.BOX_SURFACE);
    }
    Length wanted = outlet.boxDepth().map(Fact::value).orElse(BoxPractice.USUAL);
    long room = depth(spot.get());
    if (!spot.get().wall().isFramed()) {
      boolean sunk = room < outlet.boxDepth().map(Fact::value).orElse(BoxPractice.LEAST).nm();
      return Optional.of(sunk ? ShopItem.BOX_MASONRY : ring);
    }
    return Optional.of(room < wanted.nm() ? ShopItem.RING_SHALLOW : ring);
  }

  /** The spot that the runs end at, of those wanted. */
  private Optional<OnWall> spot(Outlet outlet) {
    Optional<OnWall> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (Spot s : outlet.spots()) {
      if (!(s instanceof Spot.OnWall w)) {
        continue;
      }
      Optional<OnWall> at =
          placed.findSpot(w.at().face(), w.at().along(), w.at().height().value().nm());
      double off = at.map(this::fromEnd).orElse(Double.POSITIVE_INFINITY);
      if (at.isPresent() && (best.isEmpty() || off < least)) {
        best = at;
        least = off;
      }
    }
    return best;
  }

  private double fromEnd(OnWall at) {
    var here = at.wall().world(at.s(), at.wall().core().mid(), at.z());
    return plan.runs().stream()
        .flatMap(r -> r.steps().stream())
        .flatMap(s -> s.path().stream())
        .mapToDouble(p -> p.distanceTo(here))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private boolean isCut(String outlet) {
    return plan.works().stream()
        .anyMatch(w -> w.kind().equals("cut-out") && w.id().equals(outlet + "/cut-out"));
  }

  private boolean alongTheWall(String outlet) {
    return OutletParts.ending(plan, outlet).stream()
        .map(Plan.PlannedRun::steps)
        .filter(steps -> !steps.isEmpty())
        .map(steps -> last(steps, outlet))
        .anyMatch(s -> s.hollow().filter(HollowKind.ROOM_SURFACE.word()::equals).isPresent());
  }

  private Plan.PlanStep last(List<Plan.PlanStep> steps, String outlet) {
    boolean ends = plan.runs().stream().anyMatch(r -> r.to().equals(outlet) && r.steps() == steps);
    return ends ? steps.get(steps.size() - 1) : steps.get(0);
  }

  private boolean hasBox(OnWall spot) {
    return placed.house().things().stream()
        .filter(t -> t.kind() == Thing.Kind.DATA_BOX)
        .flatMap(
            t ->
                placed
                    .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
                    .stream())
        .anyMatch(
            b ->
                b.wall().id().equals(spot.wall().id())
                    && b.side() == spot.side()
                    && Math.abs(b.s() - spot.s()) < SAME_BOX
                    && Math.abs(b.z() - spot.z()) < SAME_BOX);
  }

  /** From the face of the lining to the back of what is clear behind it. */
  private static long depth(OnWall s) {
    Wall w = s.wall();
    Optional<Interval> before = BehindBoard.between(w, s.side());
    if (w.isFramed() && before.isPresent()) {
      return s.side() == 0 ? before.get().hi() : w.thickness() - before.get().lo();
    }
    if (w.isFramed()) {
      return s.side() == 0
          ? w.rows().get(0).hi()
          : w.thickness() - w.rows().get(w.rows().size() - 1).lo();
    }
    boolean hollow = w.kind() == WallSpec.Kind.FURRED || w.kind() == WallSpec.Kind.DABBED;
    long skin = s.side() == 0 ? w.core().lo() : w.thickness() - w.core().hi();
    return hollow ? skin : 0;
  }
}
