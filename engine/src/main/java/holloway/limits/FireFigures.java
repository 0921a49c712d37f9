package holloway.limits;

import static holloway.limits.Figure.Grade.A;
import static holloway.limits.Figure.Grade.B;

import holloway.finding.Source;
import java.util.List;

/** Garage separation, fire blocks and fire stops (US; elsewhere read the local code). */
public final class FireFigures {
  private static final Source T302 = Source.us("IRC Table R302.6");

  public static final Figure BLOCK_ALONG =
      new Figure(
          "C3-1",
          "fire blocks along a wall, HORIZONTALLY",
          10,
          "ft",
          Source.us("IRC R302.11(1)"),
          A);
  public static final Figure BLOCK_LUMBER =
      new Figure("C3-6", "lumber as a fire block, nominal", 2, "in", Source.us("IRC R302.11.1"), A);
  public static final Figure BLOCK_GYPSUM =
      new Figure("C3-6", "gypsum board as a fire block", 0.5, "in", Source.us("IRC R302.11.1"), A);
  public static final Figure GARAGE_BOARD =
      new Figure("C3-8", "board on the garage side of house and attic", 0.5, "in", T302, B);
  public static final Figure GARAGE_CEILING =
      new Figure("C3-9", "Type X ceiling below a habitable room", 0.625, "in", T302, B);
  public static final Figure GARAGE_SUPPORTS =
      new Figure("C3-10", "board on what carries that ceiling", 0.5, "in", T302, B);
  public static final Figure GARAGE_NEAR =
      new Figure("C3-11", "detached garage counts below this distance", 3, "ft", T302, B);
  public static final Figure GARAGE_DOOR =
      new Figure("C3-12", "solid door to the garage", 1.375, "in", Source.us("IRC R302.5.1"), B);
  public static final Figure RATED_BOXES =
      new Figure(
          "B24", "boxes back to back in a rated wall, apart", 24, "in", Source.us("NEC 800.26"), A);

  /** What to do at a hole through the wall or ceiling between a garage and the house or attic. */
  public static final Source GARAGE_SOURCE = Source.us("IRC R302.5.3, R302.11 item 4");

  /** What to do at a hole through a plate or floor, or through a fire block. */
  public static final Source BLOCK_SOURCE =
      Source.us("IRC R302.11 item 4 (cables named in later editions)");

  /** Openings in any wall, floor or ceiling with a fire rating. */
  public static final Source RATED_SOURCE = Source.us("NEC 800.26, 770.26, 300.21");

  private FireFigures() {}

  /** All figures of this sheet, in the order of the rules. */
  public static List<Figure> list() {
    return List.of(
        BLOCK_ALONG,
        BLOCK_LUMBER,
        BLOCK_GYPSUM,
        GARAGE_BOARD,
        GARAGE_CEILING,
        GARAGE_SUPPORTS,
        GARAGE_NEAR,
        GARAGE_DOOR,
        RATED_BOXES);
  }
}
