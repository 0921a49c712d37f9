package holloway.view;

import java.util.Optional;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** The part of a piece that lies near a cable, and a little more along its length. */
record Trimmed(Vector3fc centre, Vector3fc u, Vector3fc v, Vector3fc w) {
  /** Metres that are kept on each side of the near part. */
  private static final float MORE = 0.30f;

  private static final float STEP = 0.05f;

  /** Empty when no part of the piece is nearer to the cable than that. */
  static Optional<Trimmed> of(Piece p, Cable cable, float near) {
    Vector3fc[] axes = {p.u(), p.v(), p.w()};
    int longest = 0;
    for (int i = 1; i < 3; i++) {
      longest = axes[i].length() > axes[longest].length() ? i : longest;
    }
    float low = Float.MAX_VALUE;
    float high = -Float.MAX_VALUE;
    float half = axes[longest].length();
    for (int i = 0; i + 1 < cable.points().size(); i++) {
      Vector3fc a = cable.points().get(i);
      Vector3fc b = cable.points().get(i + 1);
      int parts = Math.max(1, (int) Math.ceil(a.distance(b) / STEP));
      for (int k = 0; k <= parts; k++) {
        Vector3f at = new Vector3f(a).lerp(b, (float) k / parts).sub(p.centre());
        if (gap(at, axes) < near) {
          float along = Math.max(-half, Math.min(half, at.dot(axes[longest]) / half));
          low = Math.min(low, along);
          high = Math.max(high, along);
        }
      }
    }
    if (low > high) {
      return Optional.empty();
    }
    float from = Math.max(-half, low - MORE);
    float to = Math.min(half, high + MORE);
    Vector3f unit = new Vector3f(axes[longest]).div(half);
    Vector3f centre = new Vector3f(unit).mul((from + to) / 2).add(p.centre());
    axes[longest] = unit.mul((to - from) / 2);
    return Optional.of(new Trimmed(centre, axes[0], axes[1], axes[2]));
  }

  /**
   * The part of a piece in a slice, closed where it is cut; the piece itself where none of its axes
   * is that of the slice, or nothing is to be cut.
   */
  static Trimmed to(Piece p, Slice slice) {
    Vector3fc[] axes = {p.u(), p.v(), p.w()};
    for (int i = 0; i < 3; i++) {
      float half = Math.abs(axes[i].get(slice.axis()));
      boolean square = half > 0.9999f * axes[i].length() && half > 0;
      float middle = p.centre().get(slice.axis());
      float low = Math.max(middle - half, slice.at() - slice.thick() / 2);
      float high = Math.min(middle + half, slice.at() + slice.thick() / 2);
      if (square && high > low && (low > middle - half || high < middle + half)) {
        Vector3f centre = new Vector3f(p.centre());
        centre.setComponent(slice.axis(), (low + high) / 2);
        axes[i] = new Vector3f(axes[i]).mul((high - low) / 2 / half);
        return new Trimmed(centre, axes[0], axes[1], axes[2]);
      }
    }
    return new Trimmed(p.centre(), p.u(), p.v(), p.w());
  }

  /** How far a point, given from the middle of a box, is outside of it. */
  private static float gap(Vector3fc at, Vector3fc[] axes) {
    float sum = 0;
    for (Vector3fc axis : axes) {
      float half = axis.length();
      float out = Math.max(0, Math.abs(at.dot(axis) / half) - half);
      sum += out * out;
    }
    return (float) Math.sqrt(sum);
  }
}
