package holloway.gl;

import holloway.look.Measure;
import holloway.look.Pixels;
import holloway.look.Sheet;
import org.lwjgl.opengl.GL33C;

/** Draws pictures that no window shows. To be used and closed on the thread that opened it. */
public final class Offscreen implements AutoCloseable {
  private final long context;
  private final Painter painter;

  private Offscreen(long context) {
    this.context = context;
    this.painter = new Painter();
  }

  /**
   * @throws NoDisplay when nothing here can draw; then nothing was started
   */
  public static Offscreen open() {
    return new Offscreen(Start.hidden());
  }

  /** The type that words are set in. */
  public Measure measure() {
    return painter.letters();
  }

  /** Widest and tallest picture that the driver draws. */
  public int most() {
    return Math.min(
        GL33C.glGetInteger(GL33C.GL_MAX_RENDERBUFFER_SIZE),
        GL33C.glGetInteger(GL33C.GL_MAX_VIEWPORT_DIMS));
  }

  /** The driver's own name for itself. */
  public String driver() {
    return GL33C.glGetString(GL33C.GL_RENDERER) + ", " + GL33C.glGetString(GL33C.GL_VERSION);
  }

  public Pixels draw(Sheet sheet) {
    try (Target target = new Target(sheet.width(), sheet.height())) {
      target.bind();
      painter.draw(sheet);
      return new Pixels(sheet.width(), sheet.height(), target.read());
    }
  }

  /** As a PNG file. */
  public byte[] png(Sheet sheet) {
    return Png.of(draw(sheet));
  }

  @Override
  public void close() {
    painter.close();
    Start.close(context);
  }
}
