package holloway.scene;

import holloway.geometry.Box;
import holloway.geometry.Frame;

/**
 * A box that may be turned: its middle and the three half edges, square to each other and
 * right-handed.
 */
public record Brick(Vec middle, Vec a, Vec b, Vec c) {
  /** A box of a local frame in the world. */
  static Brick of(Frame frame, Box box) {
    Vec u = Vec.of(frame.u());
    Vec v = Vec.of(frame.v());
    Vec w = Vec.of(frame.w());
    Vec middle =
        Vec.of(frame.origin())
            .plus(u.times((box.x0() + box.x1()) / 2e6))
            .plus(v.times((box.y0() + box.y1()) / 2e6))
            .plus(w.times((box.z0() + box.z1()) / 2e6));
    return new Brick(
        middle,
        u.times((box.x1() - box.x0()) / 2e6),
        v.times((box.y1() - box.y0()) / 2e6),
        w.times((box.z1() - box.z0()) / 2e6));
  }

  /** False for a sheet without thickness, which is no solid. */
  boolean isSolid() {
    return a.length() > 0 && b.length() > 0 && c.length() > 0;
  }
}
