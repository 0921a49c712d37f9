package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where the framing of one wall butts into the side of another. */
final class Junctions {
  /**
   * An end this near to a core face butts into it (a lining, an angle, or a merged line between).
   */
  private static final long NEAR = 20 * Length.NM_PER_MM;

  /** Less than this in common is a corner touched, not a wall met. */
  private static final long LEAST = 5 * Length.NM_PER_MM;

  private Junctions() {}

  /**
   * @param ids wall ids in the order of {@code all}
   */
  static List<Wall.Junction> on(Framed through, List<Framed> all, List<String> ids) {
    List<Wall.Junction> out = new ArrayList<>();
    Interval own = new Interval(0, through.range().length());
    for (int i = 0; i < all.size(); i++) {
      Framed other = all.get(i);
      if (other == through || other.strip().heading() == through.strip().heading()) {
        continue;
      }
      for (boolean high : new boolean[] {false, true}) {
        Interval s = foot(through, other, high, true);
        Interval t = foot(through, other, high, false);
        int side = side(through, other, t);
        if (side >= 0 && s.cut(own).filter(c -> c.length() >= LEAST).isPresent()) {
          out.add(new Wall.Junction(ids.get(i), side, s));
        }
      }
    }
    out.sort(
        Comparator.comparingLong((Wall.Junction j) -> j.s().lo())
            .thenComparing(Wall.Junction::side)
            .thenComparing(Wall.Junction::other));
    return out;
  }

  /** The two corners of the other's end in the through wall's own frame: their s or their t. */
  private static Interval foot(Framed through, Framed other, boolean high, boolean alongS) {
    long end = high ? other.range().hi() : other.range().lo();
    Interval core = other.strip().core();
    long[] at = new long[2];
    for (int k = 0; k < 2; k++) {
      Point3 world =
          other.strip().heading().frame().toWorld(end, k == 0 ? core.lo() : core.hi(), 0);
      Point3 local = through.strip().heading().frame().toLocal(world);
      at[k] = alongS ? local.x() - through.range().lo() : local.y();
    }
    return new Interval(Math.min(at[0], at[1]), Math.max(at[0], at[1]));
  }

  private static int side(Framed through, Framed other, Interval t) {
    Interval core = through.strip().core();
    Interval whole = otherT(through, other);
    if (Math.abs(t.lo() - core.hi()) <= NEAR && whole.mid() > core.hi()) {
      return 1;
    }
    return Math.abs(t.hi() - core.lo()) <= NEAR && whole.mid() < core.lo() ? 0 : -1;
  }

  private static Interval otherT(Framed through, Framed other) {
    Interval a = foot(through, other, false, false);
    Interval b = foot(through, other, true, false);
    return new Interval(Math.min(a.lo(), b.lo()), Math.max(a.hi(), b.hi()));
  }
}
