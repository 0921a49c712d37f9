package holloway.limits;

import static holloway.limits.Figure.Grade.A;

import holloway.finding.Source;
import java.util.List;

/** Notches that somebody cut before: how deep, how long and where they may be. None is offered. */
public final class NotchFigures {
  private static final Source JOIST_US = Source.us("IRC R502.8.1, R802.7.1");
  private static final Source STUD_US = Source.us("IRC R602.6(1)");
  private static final Source JOIST_UK = Source.uk("BS 5268-2, BM TRADA guidance");

  public static final Figure US_DEEP =
      new Figure("C1-4", "notch in a joist, of its depth", 1.0 / 6, "fraction", JOIST_US, A);
  public static final Figure US_DEEP_AT_END =
      new Figure("C1-4", "notch at a joist's end, of its depth", 0.25, "fraction", JOIST_US, A);
  public static final Figure US_LONG =
      new Figure(
          "C1-5", "length of a notch, of the joist's depth", 1.0 / 3, "fraction", JOIST_US, A);
  public static final Figure US_THIRD =
      new Figure(
          "C1-6", "notch from the nearer support, at most", 1.0 / 3, "fraction", JOIST_US, A);

  /** The text says 4 in nominal, which is 3-1/2 in of wood. */
  public static final Figure US_TENSION_SIDE =
      new Figure("C1-7", "thickness from which the lower edge stays whole", 3.5, "in", JOIST_US, A);

  public static final Figure US_STUD_BEARING =
      new Figure("C2-1", "notch in a bearing or outer stud", 0.25, "fraction", STUD_US, A);
  public static final Figure US_STUD_PARTITION =
      new Figure("C2-2", "notch in a partition's stud", 0.40, "fraction", STUD_US, A);
  public static final Figure UK_DEEP =
      new Figure("C4-2", "notch in a joist, of its depth", 0.125, "fraction", JOIST_UK, A);
  public static final Figure UK_MOST =
      new Figure("C4-2", "deepest notch in any joist", 35, "mm", JOIST_UK, A);
  public static final Figure UK_FROM =
      new Figure("C4-2", "notch from the nearer support, at least", 0.07, "fraction", JOIST_UK, A);
  public static final Figure UK_TO =
      new Figure("C4-2", "notch from the nearer support, at most", 0.25, "fraction", JOIST_UK, A);

  private NotchFigures() {}

  /** All figures of this sheet, in the order of the rules. */
  public static List<Figure> list() {
    return List.of(
        US_DEEP,
        US_DEEP_AT_END,
        US_LONG,
        US_THIRD,
        US_TENSION_SIDE,
        US_STUD_BEARING,
        US_STUD_PARTITION,
        UK_DEEP,
        UK_MOST,
        UK_FROM,
        UK_TO);
  }
}
