package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.Lowered;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.FloorSpec;
import holloway.house.Lining;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * Ways straight through the floor between two rooms on top of each other, in a corner of what they
 * share. Where one could be tried hangs on the rooms alone and is worked out once; which of the
 * places is free, each draft of the house sees.
 */
final class FloorWays {
  /**
   * Where a way between two rooms could be, in order.
   *
   * @param shut why there is none
   */
  private record Between(
      PlacedRoom low, PlacedRoom high, List<Point3[]> axes, Optional<Refused> shut) {}

  private final Framed framed;
  private final List<Between> all = new ArrayList<>();

  FloorWays(Draft draft) {
    framed = draft.framed;
    for (PlacedRoom low : framed.placed().rooms()) {
      for (PlacedRoom high : framed.placed().rooms()) {
        find(draft, low, high);
      }
    }
  }

  /** One way for each two rooms, where there is room for it. */
  void keep(Draft draft) {
    for (Between b : all) {
      b.shut().ifPresent(draft.refused::add);
      draft.keepBest(
          b.low().name() + "/to-" + b.high().name() + "/",
          SiteKind.CEILING_AND_FLOOR,
          b.axes(),
          RoomSpaces.surface(b.low().name()),
          RoomSpaces.surface(b.high().name()));
    }
  }

  private void find(Draft draft, PlacedRoom low, PlacedRoom high) {
    PlacedLevel a = framed.placed().getLevel(low.room().level());
    PlacedLevel b = framed.placed().getLevel(high.room().level());
    if (!b.isNextOver(a)) {
      return;
    }
    if (concrete(high)) {
      shut(low, high).ifPresent(r -> all.add(new Between(low, high, List.of(), Optional.of(r))));
      return;
    }
    if (low.room().ceiling() != Lining.OPEN && !lowered(low)) {
      Geometry shared =
          Spaces.grow(Overlay.intersection(low.outline().toJts(), high.outline().toJts()), -70);
      Spaces.largest(shared)
          .ifPresent(
              p ->
                  all.add(
                      new Between(
                          low,
                          high,
                          nearCorners(p, Away.of(draft)).stream()
                              .filter(c -> !draft.covered(low, c))
                              .map(c -> new Point3[] {c.at(low.ceilingZ()), c.at(high.floorZ())})
                              .toList(),
                          Optional.empty())));
    }
  }

  /** A bore through the floor over a lowered ceiling would come out in its void. */
  private boolean lowered(PlacedRoom r) {
    return Lowered.visibleCeiling(framed.placed(), r) < r.ceilingZ();
  }

  private boolean concrete(PlacedRoom high) {
    FloorSpec usual = framed.placed().getLevel(high.room().level()).level().floor();
    return high.room().floor().orElse(usual).kind() == FloorSpec.Kind.SLAB;
  }

  /** A core bore through concrete between storeys is not offered; told once for each two rooms. */
  private static Optional<Refused> shut(PlacedRoom low, PlacedRoom high) {
    Geometry shared = Overlay.intersection(low.outline().toJts(), high.outline().toJts());
    if (shared.isEmpty() || shared.getArea() == 0) {
      return Optional.empty();
    }
    Point2 mid =
        new Point2(
            Math.round(shared.getCentroid().getX() * 1e6),
            Math.round(shared.getCentroid().getY() * 1e6));
    return Optional.of(
        new Refused(
            "floor between " + low.name() + " and " + high.name(),
            mid.at(high.floorZ()),
            "it is concrete: a core bore needs a specialist and somebody who knows its steel",
            "common practice, no published source"));
  }

  /**
   * The corners, then places beside them, as far as they lie within. Of corners as near to where
   * layouts begin the one furthest from the middle comes first, and steps go the longer way first.
   */
  private static List<Point2> nearCorners(Polygon2 shared, Away away) {
    Interval x = shared.xRange();
    Interval y = shared.yRange();
    Point2 mid = new Point2(x.mid(), y.mid());
    boolean upright = y.length() > x.length() + Length.NM_PER_MM;
    List<Point2> near = new ArrayList<>();
    shared.corners().stream()
        .sorted(away.order(c -> -c.at(0).distanceTo(mid.at(0)) / Length.NM_PER_MM))
        .forEach(
            c -> {
              for (long aside :
                  new long[] {0, 120_000_000, -120_000_000, 240_000_000, -240_000_000}) {
                Point2 east = away.plus(c, aside, 0);
                Point2 north = away.plus(c, 0, aside);
                near.add(upright ? north : east);
                near.add(upright ? east : north);
              }
            });
    return near.stream().filter(shared::contains).toList();
  }
}
