package holloway.gl;

import static org.lwjgl.stb.STBTruetype.*;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import org.lwjgl.stb.STBTTFontinfo;
import org.lwjgl.system.MemoryUtil;

/** One font file of the Liberation fonts and the shapes of its letters. */
final class Face implements AutoCloseable {
  private final ByteBuffer file;
  private final STBTTFontinfo info = STBTTFontinfo.create();

  Face(boolean bold) {
    String name = "/liberation/LiberationSans-" + (bold ? "Bold" : "Regular") + ".ttf";
    byte[] bytes;
    try (InputStream in = Face.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the font " + name + " is not in the program");
      }
      bytes = in.readAllBytes();
    } catch (IOException e) {
      throw new IllegalStateException("the font " + name + " cannot be read", e);
    }
    file = MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
    if (!stbtt_InitFont(info, file)) {
      throw new IllegalStateException("the font " + name + " is not a font");
    }
  }

  /** The font file's own bytes. */
  ByteBuffer file() {
    return file;
  }

  private float scale(float size) {
    return stbtt_ScaleForPixelHeight(info, size);
  }

  /** How far the pen moves, in pixels. */
  float advance(int letter, float size) {
    int[] wide = new int[1];
    int[] left = new int[1];
    stbtt_GetCodepointHMetrics(info, letter, wide, left);
    return wide[0] * scale(size);
  }

  float width(String text, float size) {
    float sum = 0;
    for (int letter : text.codePoints().toArray()) {
      sum += advance(letter, size);
    }
    return sum;
  }

  /** The pixels that a letter covers, about the pen: left, top, right, bottom. */
  int[] box(int letter, float size) {
    int[] x0 = new int[1];
    int[] y0 = new int[1];
    int[] x1 = new int[1];
    int[] y1 = new int[1];
    stbtt_GetCodepointBitmapBox(info, letter, scale(size), scale(size), x0, y0, x1, y1);
    return new int[] {x0[0], y0[0], x1[0], y1[0]};
  }

  /** Draws a letter, a byte a pixel, rows one after another. */
  ByteBuffer draw(int letter, float size, int width, int height) {
    ByteBuffer out = MemoryUtil.memCalloc(Math.max(1, width * height));
    stbtt_MakeCodepointBitmap(info, out, width, height, width, scale(size), scale(size), letter);
    return out;
  }

  @Override
  public void close() {
    MemoryUtil.memFree(file);
  }
}
