package holloway.look;

/**
 * One flat thing drawn over the panes, in pixels from the upper left corner. Colours are
 * 0xAARRGGBB.
 */
public sealed interface Mark {
  /**
   * A straight line; {@code on} and {@code off} pixels of a dash, {@code off} 0 for a whole one.
   */
  record Line(float x0, float y0, float x1, float y1, float width, int colour, float on, float off)
      implements Mark {
    public Line(float x0, float y0, float x1, float y1, float width, int colour) {
      this(x0, y0, x1, y1, width, colour, 1, 0);
    }
  }

  /** A filled disc. */
  record Disc(float x, float y, float radius, int colour) implements Mark {}

  /** A ring whose line lies inside its radius. */
  record Ring(float x, float y, float radius, float width, int colour) implements Mark {}

  /** A filled rectangle with round corners. */
  record Slab(float x, float y, float width, float height, float corner, int colour)
      implements Mark {}

  /** A filled triangle, as of an arrow's head. */
  record Wedge(float x0, float y0, float x1, float y1, float x2, float y2, int colour)
      implements Mark {}

  /** Words on one line; {@code y} is the base line, {@code size} the height of a line in pixels. */
  record Word(float x, float y, String text, float size, boolean bold, int colour)
      implements Mark {}
}
