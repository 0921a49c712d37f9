package holloway.gl;

import static org.lwjgl.nuklear.Nuklear.*;
import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;
import org.lwjgl.nuklear.NkAllocator;
import org.lwjgl.nuklear.NkBuffer;
import org.lwjgl.nuklear.NkContext;
import org.lwjgl.nuklear.NkConvertConfig;
import org.lwjgl.nuklear.NkDrawCommand;
import org.lwjgl.nuklear.NkDrawVertexLayoutElement;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** Turns what Nuklear wants drawn into triangles, and draws them with the flat program. */
final class NkDraw implements AutoCloseable {
  private static final int VERTEX = 32;

  private final NkAllocator memory =
      NkAllocator.calloc()
          .alloc((handle, old, size) -> MemoryUtil.nmemAllocChecked(size))
          .mfree((handle, pointer) -> MemoryUtil.nmemFree(pointer));
  private final NkBuffer commands = NkBuffer.calloc();
  private final NkBuffer vertices = NkBuffer.calloc();
  private final NkBuffer elements = NkBuffer.calloc();
  private final NkDrawVertexLayoutElement.Buffer layout = layout();
  private final int array = glGenVertexArrays();
  private final int corners = glGenBuffers();
  private final int order = glGenBuffers();

  NkDraw() {
    nk_buffer_init(commands, memory, 4096);
    nk_buffer_init(vertices, memory, 65536);
    nk_buffer_init(elements, memory, 16384);
    glBindVertexArray(array);
    glBindBuffer(GL_ARRAY_BUFFER, corners);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, order);
    int at = 0;
    int[] parts = FlatMesh.PARTS;
    for (int i = 0; i < parts.length; i++) {
      glEnableVertexAttribArray(i);
      glVertexAttribPointer(i, parts[i], GL_FLOAT, false, VERTEX, at * 4L);
      at += parts[i];
    }
  }

  NkAllocator memory() {
    return memory;
  }

  private static NkDrawVertexLayoutElement.Buffer layout() {
    NkDrawVertexLayoutElement.Buffer b = NkDrawVertexLayoutElement.calloc(4);
    b.get(0).attribute(NK_VERTEX_POSITION).format(NK_FORMAT_FLOAT).offset(0);
    b.get(1).attribute(NK_VERTEX_TEXCOORD).format(NK_FORMAT_FLOAT).offset(8);
    b.get(2).attribute(NK_VERTEX_COLOR).format(NK_FORMAT_R32G32B32A32_FLOAT).offset(16);
    b.get(3).attribute(NK_VERTEX_ATTRIBUTE_COUNT).format(NK_FORMAT_COUNT).offset(0);
    return b;
  }

  /** Draws with the flat program, its size and the letters' picture already bound. */
  void draw(NkContext context, int height) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      NkConvertConfig config = NkConvertConfig.calloc(stack);
      config.vertex_layout(layout).vertex_size(VERTEX).vertex_alignment(4);
      config.circle_segment_count(22).curve_segment_count(22).arc_segment_count(22);
      config.global_alpha(1).shape_AA(NK_ANTI_ALIASING_ON).line_AA(NK_ANTI_ALIASING_ON);
      config.tex_null().texture().id(1);
      config.tex_null().uv().set(Letters.FULL, Letters.FULL);
      nk_convert(context, commands, vertices, elements, config);
    }
    glBindVertexArray(array);
    upload(GL_ARRAY_BUFFER, corners, vertices);
    upload(GL_ELEMENT_ARRAY_BUFFER, order, elements);
    glEnable(GL_SCISSOR_TEST);
    long at = 0;
    for (NkDrawCommand c = nk__draw_begin(context, commands);
        c != null;
        c = nk__draw_next(c, commands, context)) {
      if (c.elem_count() == 0) {
        continue;
      }
      glScissor(
          (int) c.clip_rect().x(),
          (int) (height - c.clip_rect().y() - c.clip_rect().h()),
          (int) Math.max(0, c.clip_rect().w()),
          (int) Math.max(0, c.clip_rect().h()));
      glDrawElements(GL_TRIANGLES, c.elem_count(), GL_UNSIGNED_SHORT, at);
      at += c.elem_count() * 2L;
    }
    glDisable(GL_SCISSOR_TEST);
    nk_clear(context);
    nk_buffer_clear(commands);
    nk_buffer_clear(vertices);
    nk_buffer_clear(elements);
  }

  private static void upload(int kind, int buffer, NkBuffer from) {
    ByteBuffer data =
        MemoryUtil.memByteBuffer(nnk_buffer_memory(from.address()), (int) from.allocated());
    glBindBuffer(kind, buffer);
    glBufferData(kind, data, GL_STREAM_DRAW);
  }

  @Override
  public void close() {
    nk_buffer_free(commands);
    nk_buffer_free(vertices);
    nk_buffer_free(elements);
    commands.free();
    vertices.free();
    elements.free();
    layout.free();
    memory.alloc().free();
    memory.mfree().free();
    memory.free();
    glDeleteBuffers(corners);
    glDeleteBuffers(order);
    glDeleteVertexArrays(array);
  }
}
