package holloway.gl;

import static org.lwjgl.stb.STBImageWrite.stbi_write_png_to_func;

import holloway.look.Pixels;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import org.lwjgl.stb.STBIWriteCallback;
import org.lwjgl.system.MemoryUtil;

/** Pixels as a PNG file; the same pixels give the same bytes. */
final class Png {
  private Png() {}

  static byte[] of(Pixels p) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteBuffer data = MemoryUtil.memAlloc(p.rgb().length).put(p.rgb()).flip();
    try (STBIWriteCallback write =
        STBIWriteCallback.create(
            (context, from, size) -> {
              byte[] part = new byte[size];
              MemoryUtil.memByteBuffer(from, size).get(part);
              out.writeBytes(part);
            })) {
      if (!stbi_write_png_to_func(write, 0, p.width(), p.height(), 3, data, p.width() * 3)) {
        throw new IllegalStateException("the picture could not be made into a PNG");
      }
    } finally {
      MemoryUtil.memFree(data);
    }
    return out.toByteArray();
  }
}
