package holloway.view;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Rgb;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * Where north is in a picture of a house that stands turned: an arrow with an N to the real one,
 * and a thin dashed one to the house's own, which all its words go by.
 */
public final class NorthMark {
  private static final Vector3fc OWN = new Vector3f(0, 1, 0);

  private NorthMark() {}

  /** The place that a mark takes in the lower right corner of a part, where no card stands. */
  public static Area area(Area in, float size) {
    float side = 5.6f * size;
    return new Area(in.right() - side - size, in.bottom() - side - size, side, side);
  }

  /**
   * @param north the real one, level, in the house's own frame
   * @param at what is looked at: arrows point as they would there
   */
  public static void draw(Canvas c, Pane pane, Vector3fc at, Vector3fc north, Area in) {
    float s = c.size();
    Vector3f real = seen(pane, at, north);
    Vector3f own = seen(pane, at, OWN);
    float longest = Math.max(1e-3f, Math.max(length(real), length(own)));
    float reach = in.width() / 2 - 1.3f * s;
    c.add(
        new Mark.Slab(
            in.x(), in.y(), in.width(), in.height(), s * 0.4f, Rgb.with(c.theme().plate(), 0.86)));
    int quiet = Rgb.opaque(c.theme().quiet());
    int ink = Rgb.opaque(c.theme().ink());
    arrow(c, in, own.mul(reach / longest), "own", quiet, true);
    arrow(c, in, real.mul(reach / longest), "N", ink, false);
  }

  private static Vector3f seen(Pane pane, Vector3fc at, Vector3fc way) {
    Vector3f d = pane.pixel(new Vector3f(at).add(way)).sub(pane.pixel(at));
    return new Vector3f(d.x, d.y, 0);
  }

  private static float length(Vector3f v) {
    return (float) Math.hypot(v.x, v.y);
  }

  private static void arrow(Canvas c, Area in, Vector3f way, String word, int ink, boolean thin) {
    float s = c.size();
    float x = in.midX() + way.x;
    float y = in.midY() + way.y;
    float length = Math.max(1e-3f, length(way));
    float ux = way.x / length;
    float uy = way.y / length;
    float w = thin ? 1.4f * c.scale() : 2.6f * c.scale();
    float dash = thin ? 0.25f * s : 0;
    c.add(
        new Mark.Line(
            in.midX() - way.x * 0.6f, in.midY() - way.y * 0.6f, x, y, w, ink, dash + 1, dash));
    float h = thin ? 0.3f * s : 0.42f * s;
    c.add(
        new Mark.Wedge(
            x,
            y,
            x - ux * 1.6f * h - uy * h * 0.7f,
            y - uy * 1.6f * h + ux * h * 0.7f,
            x - ux * 1.6f * h + uy * h * 0.7f,
            y - uy * 1.6f * h - ux * h * 0.7f,
            ink));
    float size = thin ? Math.round(0.8f * s) : s;
    // Both words at the points would lie on each other where the house is little turned.
    float far = thin ? -0.6f * length - 0.6f * s : length + 0.7f * s;
    c.centred(in.midX() + ux * far, in.midY() + uy * far, word, size, !thin, ink);
  }
}
