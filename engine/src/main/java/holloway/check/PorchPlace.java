package holloway.check;

import holloway.house.Porch;
import holloway.house.Side;
import holloway.request.Spot;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.Optional;

/**
 * A porch in the referee's own millimetres, from what was taped of it and from where the face of
 * its wall stands.
 *
 * @param corner its end at the west or south, at the outside of the wall, as high as its ceiling
 * @param along level, towards its other end
 * @param outward level, away from the house
 */
record PorchPlace(Porch porch, Mm corner, Mm along, Mm outward) {
  static Optional<PorchPlace> of(String name, Placed placed) {
    return placed.house().porches().stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .flatMap(p -> of(p, placed));
  }

  private static Optional<PorchPlace> of(Porch p, Placed placed) {
    return placed
        .findSpot(p.face(), p.from(), p.height().value().nm())
        .filter(s -> s.wall().isOuter())
        .map(s -> of(p, s));
  }

  private static PorchPlace of(Porch p, OnWall spot) {
    Wall w = spot.wall();
    Mm near = Mm.of(w.world(spot.s(), w.outside() == 0 ? 0 : w.thickness(), spot.z()));
    Mm far = Mm.of(w.world(spot.s(), w.outside() == 0 ? w.thickness() : 0, spot.z()));
    double thick = near.to(far);
    Mm outward = near.minus(far).times(1 / thick);
    // square to it, towards the east, or the north where it runs north-south
    Mm left = new Mm(-outward.y(), outward.x(), 0);
    boolean east = Math.abs(left.x()) > 1e-6;
    Mm along = left.times(Math.signum(east ? left.x() : left.y()));
    boolean low = p.from().from() == Side.WEST || p.from().from() == Side.SOUTH;
    double length = p.length().value().toMm();
    Mm corner = low ? near : near.minus(along.times(length));
    return new PorchPlace(p, corner, along, outward);
  }

  /** Where an outlet under it was wanted. */
  Mm at(Spot.Under u) {
    double d = u.from().distance().value().toMm();
    boolean low = u.from().from() == Side.WEST || u.from().from() == Side.SOUTH;
    double x = low ? d : porch.length().value().toMm() - d;
    return corner.plus(along.times(x)).plus(outward.times(u.out().value().toMm()));
  }

  /** Along the wall from the corner, out from the wall, up from what shows. */
  double[] local(Mm p) {
    Mm d = p.minus(corner);
    return new double[] {d.dot(along), d.dot(outward), d.z()};
  }
}
