package holloway.gl;

import static org.lwjgl.opengl.GL33C.*;

import holloway.look.Measure;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import org.lwjgl.system.MemoryUtil;

/**
 * Letters as they are needed, drawn once each into one picture on the card. The upper left corner
 * of that picture is covered all over, for what is not a letter.
 */
final class Letters implements Measure, AutoCloseable {
  private static final int SIDE = 2048;
  private static final int GAP = 1;

  /** A place all over covered. */
  static final float FULL = 2f / SIDE;

  private final int texture = glGenTextures();
  private final Face plain = new Face(false);
  private final Face bold = new Face(true);
  private final Map<Key, Letter> known = new HashMap<>();
  private int x = 8;
  private int y;
  private int row = 8;

  private record Key(int letter, float size, boolean bold) {}

  /** Where a letter is in the picture (0 to 1) and about the pen (pixels). */
  record Letter(float u0, float v0, float u1, float v1, int[] box, float advance) {}

  Letters() {
    clear();
  }

  private void clear() {
    known.clear();
    x = 8;
    y = 0;
    row = 8;
    glBindTexture(GL_TEXTURE_2D, texture);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
    ByteBuffer empty = MemoryUtil.memCalloc(SIDE * SIDE);
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        empty.put(i * SIDE + j, (byte) 255);
      }
    }
    glTexImage2D(GL_TEXTURE_2D, 0, GL_R8, SIDE, SIDE, 0, GL_RED, GL_UNSIGNED_BYTE, empty);
    MemoryUtil.memFree(empty);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
  }

  void bind() {
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, texture);
  }

  Face face(boolean isBold) {
    return isBold ? bold : plain;
  }

  @Override
  public float width(String text, float size, boolean isBold) {
    return face(isBold).width(text, size);
  }

  Letter get(int letter, float size, boolean isBold) {
    return known.computeIfAbsent(new Key(letter, size, isBold), this::draw);
  }

  /** Forgets all letters when so few places are left that a picture may not fit; call between. */
  void tidy() {
    if (y > SIDE / 2) {
      clear();
    }
  }

  private Letter draw(Key k) {
    Face face = face(k.bold);
    int[] box = face.box(k.letter, k.size);
    int w = box[2] - box[0];
    int h = box[3] - box[1];
    float advance = face.advance(k.letter, k.size);
    if (w <= 0 || h <= 0) {
      return new Letter(0, 0, 0, 0, new int[4], advance);
    }
    if (x + w + GAP > SIDE) {
      x = 0;
      y += row + GAP;
      row = 0;
    }
    if (y + h > SIDE) {
      throw new IllegalStateException("more letters in one picture than can be drawn");
    }
    ByteBuffer pixels = face.draw(k.letter, k.size, w, h);
    glBindTexture(GL_TEXTURE_2D, texture);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
    glTexSubImage2D(GL_TEXTURE_2D, 0, x, y, w, h, GL_RED, GL_UNSIGNED_BYTE, pixels);
    MemoryUtil.memFree(pixels);
    float s = SIDE;
    Letter out = new Letter(x / s, y / s, (x + w) / s, (y + h) / s, box, advance);
    x += w + GAP;
    row = Math.max(row, h);
    return out;
  }

  @Override
  public void close() {
    glDeleteTextures(texture);
    plain.close();
    bold.close();
  }
}
