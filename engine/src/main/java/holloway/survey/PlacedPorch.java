package holloway.survey;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.House;
import holloway.house.LayoutCorner;
import holloway.house.Porch;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A porch's roof where it stands.
 *
 * @param wall the outer wall it is fixed to
 * @param frame u along the wall from one end of the porch, v outward from the outside of the wall,
 *     w up from the underside of what shows: its boards, or its joists where it has none
 */
public record PlacedPorch(Porch porch, Wall wall, Frame frame) {
  /** Boards or panels under the joists; from experience. */
  private static final long BOARDS = 12_700_000;

  /** All of a house, in the order of their names; those that stand nowhere are left out. */
  public static List<PlacedPorch> of(Placed placed) {
    List<PlacedPorch> out = new ArrayList<>();
    placed.house().porches().forEach(p -> of(placed, p).ifPresent(out::add));
    return out;
  }

  public static Optional<PlacedPorch> find(Placed placed, String name) {
    return of(placed).stream().filter(p -> p.porch().name().equals(name)).findFirst();
  }

  static Optional<PlacedPorch> of(Placed placed, Porch p) {
    return placed
        .findSpot(p.face(), p.from(), p.height().value().nm())
        .filter(s -> s.wall().isOuter())
        .map(s -> of(p, s));
  }

  private static PlacedPorch of(Porch p, OnWall near) {
    Interval s = stretch(p, near.s());
    Wall w = near.wall();
    boolean left = w.outside() == 1; // v of the wall leads outward
    Frame.Axis u = w.frame().u();
    Frame frame =
        Frame.level(
            left ? w.world(s.lo(), w.thickness(), near.z()) : w.world(s.hi(), 0, near.z()),
            left ? u.x() : -u.x(),
            left ? u.y() : -u.y());
    return new PlacedPorch(p, w, frame);
  }

  /** Along its wall, from the end that it is taped from. */
  static Interval stretch(Porch p, long near) {
    boolean low = p.from().from() == Side.WEST || p.from().from() == Side.SOUTH;
    long far = near + (low ? 1 : -1) * p.length().value().nm();
    return new Interval(Math.min(near, far), Math.max(near, far));
  }

  public String id() {
    return "porch/" + porch.name();
  }

  /** What the ids of the spaces at it begin with: they lie outside. */
  public String space() {
    return "outside/porch " + porch.name();
  }

  public long length() {
    return porch.length().value().nm();
  }

  public long out() {
    return porch.out().value().nm();
  }

  /** Of the joists, over the underside of what shows. */
  public Interval joists() {
    long foot = porch.boarded() ? BOARDS : 0;
    return new Interval(foot, foot + porch.joists().value().depth().nm());
  }

  /** Thickness of a joist, of the ledger on the wall, and of the beam at its outer edge. */
  public long thick() {
    return porch.joists().value().thickness().nm();
  }

  /** How high its roof stands over the joists' tops where it meets the wall. */
  public long rise() {
    double slope = porch.pitchRise() / (double) porch.pitchRun();
    return switch (porch.cover()) {
      case FLAT -> 0;
      case SHED -> Math.round(out() * slope);
      case GABLE -> Math.round(length() / 2.0 * slope);
    };
  }

  /** A point of the plan, taped as outlets are: from an end of the porch, and out from the wall. */
  public Point2 at(Side end, long along, long out) {
    double lead = end.runsEastWest() ? frame.u().y() : frame.u().x();
    boolean high = end == Side.EAST || end == Side.NORTH;
    long x = lead > 0 == high ? length() - along : along;
    return frame.toWorld(x, out, 0).plan();
  }

  /** Does u lead away from the corner that assumed layouts are counted from? */
  public boolean leadsAway(House house) {
    LayoutCorner corner = house.layout();
    double east = (corner.isFromHigh(true) ? -1 : 1) * frame.u().x();
    double north = (corner.isFromHigh(false) ? -1 : 1) * frame.u().y();
    return east + north >= 0;
  }
}
