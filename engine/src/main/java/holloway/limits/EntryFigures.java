package holloway.limits;

import static holloway.limits.Figure.Grade.A;
import static holloway.limits.Figure.Grade.B;
import static holloway.limits.Figure.Grade.M;

import holloway.finding.Source;
import java.util.List;

/** Where cable comes into a house, attics people get into, and old paint. */
public final class EntryFigures {
  private static final Source BOND = Source.us("NEC 800.100(A), 820.100(A)");
  private static final Source ATTIC = Source.us("IRC R807.1");
  private static final Source PAINT = Source.us("40 CFR 745");

  public static final Figure BOND_LONG =
      new Figure("B25", "bonding conductor of a dwelling", 20, "ft", BOND, B);
  public static final Figure BURIED =
      new Figure(
          "B32", "cable laid in earth, Article 830 only", 18, "in", Source.us("NEC 830.47(C)"), B);
  public static final Figure BURIED_TUBE =
      new Figure(
          "B32",
          "plastic tube in earth, Article 830 only",
          12,
          "in",
          Source.us("NEC 830.47(C)"),
          B);
  public static final Figure CMX_WIDE =
      new Figure("B6", "CMX cable in a dwelling, under", 0.25, "in", Source.us("NEC 800.154"), B);
  public static final Figure CMX_EXPOSED =
      new Figure(
          "B6", "thicker CMX cable outside tubes, at most", 10, "ft", Source.us("NEC 800.154"), B);
  public static final Figure ATTIC_AREA =
      new Figure("C3-15", "attic that needs a way in, from", 30, "sq ft", ATTIC, A);
  public static final Figure ATTIC_HIGH =
      new Figure("C3-15", "its height, from", 30, "in", ATTIC, A);
  public static final Figure HATCH_NARROW =
      new Figure("C3-16", "way into an attic, its short side", 22, "in", ATTIC, A);
  public static final Figure HATCH_LONG =
      new Figure("C3-16", "way into an attic, its long side", 30, "in", ATTIC, A);
  public static final Figure HATCH_HEAD =
      new Figure("C3-17", "headroom somewhere over it", 30, "in", ATTIC, A);
  public static final Figure PAINT_INSIDE =
      new Figure("E15", "old paint disturbed, a room", 6, "sq ft", PAINT, B);
  public static final Figure PAINT_BEFORE =
      new Figure("E15", "paint of before the year", 1978, "count", PAINT, B);
  public static final Figure PATCH_AREA =
      new Figure(
          "M-2", "painted board of one patch", 1, "sq ft", Source.anywhere("our own patch"), M);

  private EntryFigures() {}

  /** All figures of this sheet, in the order of the rules. */
  public static List<Figure> list() {
    return List.of(
        BOND_LONG,
        BURIED,
        BURIED_TUBE,
        CMX_WIDE,
        CMX_EXPOSED,
        ATTIC_AREA,
        ATTIC_HIGH,
        HATCH_NARROW,
        HATCH_LONG,
        HATCH_HEAD,
        PAINT_INSIDE,
        PAINT_BEFORE,
        PATCH_AREA);
  }
}
