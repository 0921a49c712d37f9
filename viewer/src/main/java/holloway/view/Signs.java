package holloway.view;

import holloway.look.Mark;
import holloway.look.Rgb;

/** The explanations of the signs in a picture. */
final class Signs {
  private Signs() {}

  static void holes(Page page) {
    page.sign(
        "hole to make, by its number in the hole schedule",
        (x, y) -> page.canvas.pin(x, y, page.theme.pin()));
  }

  static void ends(Page page) {
    page.sign("where cables end", (x, y) -> Marks.sign(page.canvas, x, y, false));
    page.sign("the cabinet", (x, y) -> Marks.sign(page.canvas, x, y, true));
  }

  static void lit(Page page) {
    int c = Rgb.with(Rgb.mix(page.theme.ground(), page.theme.glow(), 0.55), 1);
    float r = page.size() * 0.55f;
    page.sign(
        "a hollow that cable goes through",
        (x, y) -> page.canvas.add(new Mark.Slab(x - 1.6f * r, y - r, 3.2f * r, 2 * r, 2, c)));
  }

  static void faint(Page page) {
    page.sign(
        "faint: behind timber or board",
        (x, y) -> {
          float w = page.size() * 2.4f;
          int c = Rgb.with(page.theme.ink(), 0.35);
          page.canvas.add(new Mark.Line(x - w / 2, y, x + w / 2, y, page.size() * 0.3f, c));
        });
  }
}
