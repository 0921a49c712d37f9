package holloway.gl;

import org.lwjgl.nuklear.NkUserFont;
import org.lwjgl.nuklear.NkUserFontGlyph;
import org.lwjgl.system.MemoryUtil;

/** The type of the panels, out of the same letters as the pictures. */
final class NkFonts implements AutoCloseable {
  private final Letters letters;
  final float size;
  final NkUserFont plain;
  final NkUserFont bold;

  NkFonts(Letters letters, float size) {
    this.letters = letters;
    this.size = size;
    plain = font(false);
    bold = font(true);
  }

  holloway.look.Measure measure() {
    return letters;
  }

  private NkUserFont font(boolean isBold) {
    NkUserFont f = NkUserFont.calloc();
    f.height(size);
    f.width(
        (handle, height, text, length) ->
            length == 0 || text == 0
                ? 0
                : letters.width(MemoryUtil.memUTF8(text, length), height, isBold));
    f.query(
        (handle, height, glyph, letter, next) -> {
          Letters.Letter l = letters.get(letter, height, isBold);
          NkUserFontGlyph g = NkUserFontGlyph.create(glyph);
          int[] b = l.box();
          g.width(b[2] - b[0]).height(b[3] - b[1]).xadvance(l.advance());
          g.offset().set(b[0], Math.round(height * 0.80f) + b[1]);
          g.uv(0).set(l.u0(), l.v0());
          g.uv(1).set(l.u1(), l.v1());
        });
    f.texture(t -> t.id(1));
    return f;
  }

  @Override
  public void close() {
    for (NkUserFont f : new NkUserFont[] {plain, bold}) {
      f.width().free();
      f.query().free();
      f.free();
    }
  }
}
