package holloway.look;

/**
 * What a window shows, and whom it tells about keys and pointer. The window knows nothing of houses
 * and this nothing of windows. All is called on one thread.
 */
public interface Session {
  /** The size of what is drawn in pixels, and pixels for each point of usual type. */
  void resized(int width, int height, float scale);

  void key(Key key, boolean shift, boolean control);

  /** The pointer was pressed and let go again in one place, over no panel. */
  void click(float x, float y);

  /** The pointer was drawn along; {@code second}: with the other button, or with shift held. */
  void drag(float dx, float dy, boolean second);

  /** The wheel was turned, away from the person over 0, with the pointer at a place. */
  void wheel(float steps, float x, float y);

  /** Called now and then while nothing happens; files and plans are looked after here. */
  void tick();

  /** Whether an answer is awaited, so that {@link #tick} is to be called often. */
  boolean isWaiting();

  /** Whether a frame has to be drawn; asking does not change that. */
  boolean isStale();

  /** What to draw; the same object as before while nothing in it changed. */
  Sheet sheet(Measure measure);

  void panels(Panels panels);

  /** Height of a line of the panels' type in pixels. */
  float typeSize();

  /**
   * Called after a frame was shown.
   *
   * @param number frames so far; {@code houses} how often the house was drawn among them
   * @param samples a pixel that the house was drawn with: one while the eye moves
   */
  void shown(long number, long houses, int samples);

  /** A picture of the window is wanted; empty when not. It is given to {@link #taken}. */
  boolean wantsPicture();

  /** The whole window as a PNG file. */
  void taken(byte[] png);

  boolean isOver();

  String title();
}
