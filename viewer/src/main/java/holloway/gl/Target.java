package holloway.gl;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * A frame of any size that nobody sees: drawn with four samples a pixel and read back as one, or
 * drawn with one from the first while the eye moves.
 */
final class Target implements AutoCloseable {
  private static final int SAMPLES = 4;

  final int width;
  final int height;
  private final int many = glGenFramebuffers();
  private final int one = glGenFramebuffers();
  private final int[] buffers = new int[3];
  private final int samples = Math.min(SAMPLES, glGetInteger(GL_MAX_SAMPLES));

  /** Depth of what is drawn with one sample; 0 until that is asked for. */
  private int roughDepth;

  Target(int width, int height) {
    this.width = width;
    this.height = height;
    glGenRenderbuffers(buffers);
    glBindFramebuffer(GL_FRAMEBUFFER, many);
    attach(buffers[0], samples, GL_RGBA8, GL_COLOR_ATTACHMENT0);
    attach(buffers[1], samples, GL_DEPTH_COMPONENT24, GL_DEPTH_ATTACHMENT);
    check();
    glBindFramebuffer(GL_FRAMEBUFFER, one);
    attach(buffers[2], 0, GL_RGBA8, GL_COLOR_ATTACHMENT0);
    check();
  }

  private void attach(int buffer, int samples, int format, int as) {
    glBindRenderbuffer(GL_RENDERBUFFER, buffer);
    glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples, format, width, height);
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, as, GL_RENDERBUFFER, buffer);
  }

  private void check() {
    int state = glCheckFramebufferStatus(GL_FRAMEBUFFER);
    if (state != GL_FRAMEBUFFER_COMPLETE) {
      throw new NoDisplay(
          "the graphics driver cannot draw a picture of %d x %d pixels; ask for a smaller one"
              .formatted(width, height));
    }
  }

  void bind() {
    glBindFramebuffer(GL_FRAMEBUFFER, many);
  }

  /** To draw with one sample a pixel, which is settled as it is drawn. */
  void bindRough() {
    glBindFramebuffer(GL_FRAMEBUFFER, one);
    if (roughDepth == 0) {
      roughDepth = glGenRenderbuffers();
      attach(roughDepth, 0, GL_DEPTH_COMPONENT24, GL_DEPTH_ATTACHMENT);
      check();
    }
  }

  int samples() {
    return samples;
  }

  private void copy(int from, int to) {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, from);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, to);
    glBlitFramebuffer(0, 0, width, height, 0, 0, width, height, GL_COLOR_BUFFER_BIT, GL_NEAREST);
  }

  /** Makes one sample a pixel out of many, once what is drawn is whole. */
  void settle() {
    copy(many, one);
  }

  /** Copies what was settled into the window, which is bound afterwards. */
  void show() {
    copy(one, 0);
    glBindFramebuffer(GL_FRAMEBUFFER, 0);
  }

  /** What was drawn, red, green, blue a pixel, upper row first. */
  byte[] read() {
    settle();
    glBindFramebuffer(GL_FRAMEBUFFER, one);
    return pixels(width, height);
  }

  /** What is in the frame that is bound, red, green, blue a pixel, upper row first. */
  static byte[] pixels(int width, int height) {
    ByteBuffer pixels = MemoryUtil.memAlloc(width * height * 3);
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    glReadPixels(0, 0, width, height, GL_RGB, GL_UNSIGNED_BYTE, pixels);
    byte[] out = new byte[width * height * 3];
    int row = width * 3;
    for (int y = 0; y < height; y++) {
      pixels.get((height - 1 - y) * row, out, y * row, row);
    }
    MemoryUtil.memFree(pixels);
    return out;
  }

  @Override
  public void close() {
    glDeleteFramebuffers(many);
    glDeleteFramebuffers(one);
    glDeleteRenderbuffers(buffers);
    if (roughDepth != 0) {
      glDeleteRenderbuffers(roughDepth);
    }
  }
}
