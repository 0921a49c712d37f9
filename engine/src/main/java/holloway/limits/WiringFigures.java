package holloway.limits;

import static holloway.limits.Figure.Grade.A;
import static holloway.limits.Figure.Grade.B;
import static holloway.limits.Figure.Grade.C;
import static holloway.limits.Figure.Grade.M;

import holloway.finding.Source;
import java.util.List;

/** Distance from power, cable in air-handling spaces, cable entering from outside. */
public final class WiringFigures {
  public static final Figure FROM_POWER =
      new Figure(
          "B14",
          "data cable from open power conductors",
          2,
          "in",
          Source.us("NEC 800.133, 725.136(I)"),
          A);

  /** Sources disagree from 50 mm to 300 mm, so this is only the start value of a parameter. */
  public static final Figure BESIDE_POWER =
      new Figure(
          "A8-14",
          "beside sheathed power cable",
          50,
          "mm",
          Source.anywhere("attributed to TIA-569, EN 50174-2"),
          C);

  public static final Figure BESIDE_POWER_MOST =
      new Figure(
          "A8-14",
          "the widest such advice",
          300,
          "mm",
          Source.anywhere("attributed to TIA-569, EN 50174-2"),
          C);
  public static final Figure FLUORESCENT =
      new Figure(
          "A8-14",
          "from a fluorescent light",
          300,
          "mm",
          Source.anywhere("attributed to TIA-569, EN 50174-2"),
          C);

  public static final Figure MOTOR =
      new Figure(
          "A8-14",
          "from a motor or transformer",
          48,
          "in",
          Source.anywhere("attributed to TIA-569, EN 50174-2"),
          C);

  public static final Figure SHARED_BOX =
      new Figure(
          "B16", "from power inside equipment of one box", 0.25, "in", Source.us("NEC 800.133"), A);
  public static final Figure UK_FROM_POWER =
      new Figure(
          "UK-3", "data cable from mains cable", 50, "mm", Source.uk("BS 6701, BS 7671 528"), M);
  public static final Figure SENSING_IN_DUCT =
      new Figure(
          "B21",
          "plenum cable in a duct, for sensing only",
          4,
          "ft",
          Source.us("NEC 300.22(B)"),
          B);
  public static final Figure OUTSIDE_CABLE_INDOORS =
      new Figure(
          "B12", "unlisted outdoor cable inside, at most", 50, "ft", Source.us("NEC 800.48"), A);

  private WiringFigures() {}

  /** All figures of this sheet, in the order of the rules. */
  public static List<Figure> list() {
    return List.of(
        FROM_POWER,
        BESIDE_POWER,
        BESIDE_POWER_MOST,
        FLUORESCENT,
        MOTOR,
        SHARED_BOX,
        UK_FROM_POWER,
        SENSING_IN_DUCT,
        OUTSIDE_CABLE_INDOORS);
  }
}
