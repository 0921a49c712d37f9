package holloway.view;

import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Rgb;
import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * Marks cables that go straight through a slice: seen from their end they are dots, and those of
 * one bundle would lie on each other.
 */
final class CutCables {
  /** Dots of one bundle, in a row. */
  private static final int ROW = 6;

  /** A cable that goes through at this slope at least is seen from its end. */
  private static final float STEEP = 0.9f;

  private record Dot(Vector3f at, int colour) {}

  private final Page page;
  private final Pane pane;

  CutCables(Page page, Pane pane) {
    this.page = page;
    this.pane = pane;
  }

  void draw(List<Cable> cables, Slice slice) {
    List<List<Dot>> bundles = new ArrayList<>();
    for (Cable c : cables) {
      for (int i = 0; i + 1 < c.points().size(); i++) {
        Vector3fc a = c.points().get(i);
        Vector3fc b = c.points().get(i + 1);
        if (goesThrough(a, b, slice)) {
          float t =
              (slice.at() - a.get(slice.axis())) / (b.get(slice.axis()) - a.get(slice.axis()));
          Vector3f at = pane.pixel(new Vector3f(a).lerp(b, t));
          bundle(bundles, at).add(new Dot(at, page.theme.run(c.number())));
        }
      }
    }
    bundles.forEach(this::bundle);
  }

  private static boolean goesThrough(Vector3fc a, Vector3fc b, Slice slice) {
    float da = a.get(slice.axis()) - slice.at();
    float db = b.get(slice.axis()) - slice.at();
    return da < 0 != db < 0 && Math.abs(db - da) > STEEP * a.distance(b);
  }

  private static List<Dot> bundle(List<List<Dot>> all, Vector3f at) {
    for (List<Dot> b : all) {
      if (b.get(0).at().distance(at) < 3) {
        return b;
      }
    }
    List<Dot> more = new ArrayList<>();
    all.add(more);
    return more;
  }

  private void bundle(List<Dot> dots) {
    float r = radius(page);
    Vector3f at = dots.get(0).at();
    int wide = Math.min(ROW, dots.size());
    int rows = (dots.size() + ROW - 1) / ROW;
    for (int i = 0; i < dots.size(); i++) {
      float x = at.x + (i % ROW - (wide - 1) / 2f) * 2 * r;
      float y = at.y + (i / ROW - (rows - 1) / 2f) * 2 * r;
      dot(page, x, y, dots.get(i).colour());
    }
  }

  private static float radius(Page page) {
    return 3.6f * page.canvas.scale();
  }

  private static void dot(Page page, float x, float y, int colour) {
    float r = radius(page);
    page.canvas.add(new Mark.Disc(x, y, r, Rgb.opaque(page.theme.plate())));
    page.canvas.add(new Mark.Disc(x, y, r - 1.2f * page.canvas.scale(), Rgb.opaque(colour)));
  }

  /** What the dots mean, for the column. */
  static void sign(Page page) {
    page.sign(
        "a cable that goes through, seen from its end",
        (x, y) -> dot(page, x, y, page.theme.run(0)));
  }
}
