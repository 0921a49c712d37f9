package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Found;

/**
 * A notch that was found, at the member it is cut into.
 *
 * @param cut what is gone of the wood, in the member's frame, nanometres
 * @param upright the member stands up (a stud): the cut's depth is across the wall
 */
public record Notch(Member member, Box cut, boolean upright, Found.Notch found) {

  /** The stretch of the member that it takes, on the axis the member runs along. */
  public Interval run() {
    return along(cut);
  }

  /** The whole of the member on that axis. */
  public Interval whole() {
    return along(member.box());
  }

  private Interval along(Box b) {
    return upright ? b.z() : isAlongX() ? b.x() : b.y();
  }

  private boolean isAlongX() {
    return member.box().x().length() >= member.box().y().length();
  }

  /**
   * Wood left between the cut and a hole bored across the member; negative if the hole breaks into
   * it.
   *
   * @param p the hole's middle in the member's frame
   */
  public long clear(Point3 p, long radius) {
    double along = gap(run(), alongOf(p));
    double deep = gap(upright ? cut.y() : cut.z(), upright ? p.y() : p.z());
    return (long) Math.floor(Math.hypot(along, deep)) - radius;
  }

  /** The same measured along the member only. */
  public long clearAlong(Point3 p, long radius) {
    return gap(run(), alongOf(p)) - radius;
  }

  private long alongOf(Point3 p) {
    return upright ? p.z() : isAlongX() ? p.x() : p.y();
  }

  private static long gap(Interval i, long at) {
    return Math.max(0, Math.max(i.lo() - at, at - i.hi()));
  }
}
