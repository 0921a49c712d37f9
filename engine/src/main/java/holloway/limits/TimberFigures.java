package holloway.limits;

import static holloway.limits.Figure.Grade.A;
import static holloway.limits.Figure.Grade.B;
import static holloway.limits.Figure.Grade.C;
import static holloway.limits.Figure.Grade.D;
import static holloway.limits.Figure.Grade.M;

import holloway.finding.Source;
import java.util.List;

/** Bores in joists, studs and plates, and channels in masonry. */
public final class TimberFigures {
  private static final Source JOIST_US = Source.us("IRC R502.8.1, R802.7.1");
  private static final Source STUD_US = Source.us("IRC R602.6");
  private static final Source JOIST_UK = Source.uk("BS 5268-2, BM TRADA guidance");
  private static final Source MAKER = Source.anywhere("I-joist makers' guides");
  private static final Source CHANNEL_UK = Source.uk("Approved Document A, 2C30");
  private static final Source NOBODY = Source.anywhere("usual care with partitions");
  private static final Source OURS = Source.uk("BS 5268-2 for joists, borrowed");

  public static final Figure US_JOIST_SHARE =
      new Figure("C1-1", "hole in a joist, of its depth", 1.0 / 3, "fraction", JOIST_US, A);
  public static final Figure US_JOIST_EDGE =
      new Figure("C1-2", "hole to the joist's edge, other hole or notch", 2, "in", JOIST_US, A);
  public static final Figure I_JOIST_KNOCKOUT =
      new Figure("C1-11", "knockout in an I-joist web", 1.5, "in", MAKER, B);
  public static final Figure I_JOIST_WEB_LEFT =
      new Figure("C1-11", "web left between hole and flange", 0.125, "in", MAKER, B);
  public static final Figure I_JOIST_FLANGE =
      new Figure(
          "C1-11", "depth of an I-joist flange", 1.5, "in", Source.anywhere("usual make"), M);

  public static final Figure US_STUD_BEARING =
      new Figure(
          "C2-3", "hole in a bearing or outer stud", 0.40, "fraction", STUD_US.noting("(2)"), A);
  public static final Figure US_STUD_DOUBLED =
      new Figure(
          "C2-4", "hole in doubled bearing studs", 0.60, "fraction", STUD_US.noting("(2)"), A);
  public static final Figure US_STUDS_RUNNING =
      new Figure("C2-4", "doubled studs bored in succession", 2, "count", STUD_US.noting("(2)"), A);
  public static final Figure US_STUD_PARTITION =
      new Figure("C2-5", "hole in a partition stud", 0.60, "fraction", STUD_US.noting("(2)"), A);
  public static final Figure US_STUD_EDGE =
      new Figure("C2-6", "hole to the stud's edge", 0.625, "in", STUD_US, A);
  public static final Figure US_PLATE_SHARE =
      new Figure(
          "C2-10",
          "cut in a bearing wall's plate before a tie",
          0.50,
          "fraction",
          Source.us("IRC R602.6.1"),
          A);
  public static final Figure US_TIE_THICKNESS =
      new Figure(
          "C2-10",
          "thickness of the tie over a cut plate",
          0.054,
          "in",
          Source.us("IRC R602.6.1"),
          A);
  public static final Figure US_TIE_OVERLAP =
      new Figure("C2-11", "tie past the opening, each side", 6, "in", Source.us("IRC R602.6.1"), A);

  public static final Figure UK_JOIST_SHARE =
      new Figure("C4-1", "hole in a joist, of its depth", 0.25, "fraction", JOIST_UK, A);
  public static final Figure UK_JOIST_MOST =
      new Figure("C4-1", "widest hole in any joist", 65, "mm", JOIST_UK, A);
  public static final Figure UK_SPAN_FROM =
      new Figure("C4-1", "hole from the nearer support, at least", 0.25, "fraction", JOIST_UK, A);
  public static final Figure UK_SPAN_TO =
      new Figure("C4-1", "hole from the nearer support, at most", 0.40, "fraction", JOIST_UK, A);
  public static final Figure UK_SPACING =
      new Figure("C4-1", "holes centre to centre, in widest diameters", 3, "count", JOIST_UK, A);
  public static final Figure UK_HOLE_TO_NOTCH =
      new Figure(
          "C4-4", "hole to notch along the joist", 100, "mm", Source.uk("NHBC Standards 6.4"), A);
  public static final Figure UK_STUD_SHARE =
      new Figure("C4-1", "hole in a stud or bearing plate", 0.25, "fraction", OURS, C);

  /** BS 5268 says on the centreline; a millimetre is what rounding of sizes needs. */
  public static final Figure UK_CENTRELINE =
      new Figure(
          "C4-1", "hole off the joist's centreline", 1, "mm", Source.anywhere("rounding only"), C);

  public static final Figure PARTITION_SHARE =
      new Figure("UK-4", "hole in a partition's stud or plate", 0.5, "fraction", NOBODY, C);
  public static final Figure PARTITION_EDGE =
      new Figure("UK-4", "its hole to the edge of the wood", 16, "mm", NOBODY, C);

  public static final Figure UK_CHANNEL_UPRIGHT =
      new Figure("UK-1", "upright channel, of the leaf", 1.0 / 3, "fraction", CHANNEL_UK, M);
  public static final Figure UK_CHANNEL_LEVEL =
      new Figure("UK-1", "level channel, of the leaf", 1.0 / 6, "fraction", CHANNEL_UK, M);

  public static final Figure PLATE_EDGE =
      new Figure(
          "B17",
          "hole to the wood's face before a nail plate",
          1.25,
          "in",
          Source.us("NEC 300.4(A)(1)"),
          A);
  public static final Figure PLATE_STEEL =
      new Figure(
          "B17", "thickness of a nail plate", 1.0 / 16, "in", Source.us("NEC 300.4(A)(1)"), A);
  public static final Figure UNPLATED_2X4 =
      new Figure(
          "B20",
          "widest hole in a 2x4 without nail plates",
          1,
          "in",
          Source.us("NEC 300.4(A)(1)"),
          D);
  public static final Figure UNPLATED_2X6 =
      new Figure(
          "B20",
          "widest hole in a 2x6 without nail plates",
          3,
          "in",
          Source.us("NEC 300.4(A)(1)"),
          D);
  public static final Figure UK_COVER =
      new Figure(
          "UK-2", "power cable below a joist's edge", 50, "mm", Source.uk("BS 7671 522.6"), M);

  private TimberFigures() {}

  /** All figures of this sheet, in the order of the rules. */
  public static List<Figure> list() {
    return List.of(
        US_JOIST_SHARE,
        US_JOIST_EDGE,
        I_JOIST_KNOCKOUT,
        I_JOIST_WEB_LEFT,
        I_JOIST_FLANGE,
        US_STUD_BEARING,
        US_STUD_DOUBLED,
        US_STUDS_RUNNING,
        US_STUD_PARTITION,
        US_STUD_EDGE,
        US_PLATE_SHARE,
        US_TIE_THICKNESS,
        US_TIE_OVERLAP,
        UK_JOIST_SHARE,
        UK_JOIST_MOST,
        UK_SPAN_FROM,
        UK_SPAN_TO,
        UK_SPACING,
        UK_HOLE_TO_NOTCH,
        UK_STUD_SHARE,
        UK_CENTRELINE,
        PARTITION_SHARE,
        PARTITION_EDGE,
        UK_CHANNEL_UPRIGHT,
        UK_CHANNEL_LEVEL,
        PLATE_EDGE,
        PLATE_STEEL,
        UNPLATED_2X4,
        UNPLATED_2X6,
        UK_COVER);
  }
}
