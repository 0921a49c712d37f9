package holloway.importing;

import holloway.house.Opening;

/**
 * A door, window or plain opening in the squared plan, millimetres.
 *
 * @param title as the model has it, for messages
 * @param centre in the middle of the wall
 * @param wall how thick the wall is
 */
record PlanHole(
    String title,
    Opening.Kind kind,
    Vec centre,
    Vec along,
    double width,
    double bottom,
    double top,
    double wall) {

  /** Two of one wall that stand side by side or share space, given a jamb's width. */
  boolean touches(PlanHole o, double jamb) {
    Vec d = o.centre.minus(centre);
    double off = Math.abs(d.dot(new Vec(-along.y(), along.x(), 0)));
    return Math.abs(along.cross(o.along).z()) < 0.02
        && off < 150
        && Math.abs(d.dot(along)) < (width + o.width) / 2 + jamb
        && bottom < o.top + jamb
        && o.bottom < top + jamb;
  }

  /** One opening over both. */
  PlanHole and(PlanHole o) {
    double shift = o.centre.minus(centre).dot(along);
    double lo = Math.min(-width / 2, shift - o.width / 2);
    double hi = Math.max(width / 2, shift + o.width / 2);
    boolean wider = o.width > width;
    return new PlanHole(
        title + " and " + o.title,
        wider ? o.kind : kind,
        centre.plus(along.times((lo + hi) / 2)),
        along,
        hi - lo,
        Math.min(bottom, o.bottom),
        Math.max(top, o.top),
        Math.max(wall, o.wall));
  }
}
