package holloway.scene;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The binary part of a GLB file, and how the two parts are put together (glTF 2.0, section 4.4).
 */
final class GlbBytes {
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_INT = 5125;
  private static final int VERTICES = 34962;
  private static final int INDICES = 34963;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final ObjectNode root;

  GlbBytes(ObjectNode root) {
    this.root = root;
    root.putArray("bufferViews");
    root.putArray("accessors");
  }

  /** Puts the mesh in and gives its primitive, without a material. */
  ObjectNode primitive(Mesh mesh) {
    ObjectNode p = root.objectNode();
    ObjectNode attributes = p.putObject("attributes");
    attributes.put("POSITION", vectors(mesh.corners(), true));
    attributes.put("NORMAL", vectors(mesh.normals(), false));
    ByteBuffer b = room(mesh.triangles().size() * 4);
    mesh.triangles().forEach(b::putInt);
    p.put("indices", accessor(b, INDICES, UNSIGNED_INT, mesh.triangles().size(), "SCALAR"));
    return p;
  }

  private int vectors(List<Vec> all, boolean bounds) {
    ByteBuffer b = room(all.size() * 12);
    float[] lo = {Float.MAX_VALUE, Float.MAX_VALUE, Float.MAX_VALUE};
    float[] hi = {-Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE};
    for (Vec v : all) {
      float[] f = {(float) v.x(), (float) v.y(), (float) v.z()};
      for (int i = 0; i < 3; i++) {
        b.putFloat(f[i]);
        lo[i] = Math.min(lo[i], f[i]);
        hi[i] = Math.max(hi[i], f[i]);
      }
    }
    int index = accessor(b, VERTICES, FLOAT, all.size(), "VEC3");
    if (bounds) {
      ObjectNode a = (ObjectNode) root.get("accessors").get(index);
      ArrayNode min = a.putArray("min");
      ArrayNode max = a.putArray("max");
      for (int i = 0; i < 3; i++) {
        min.add(lo[i]);
        max.add(hi[i]);
      }
    }
    return index;
  }

  private static ByteBuffer room(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private int accessor(ByteBuffer b, int target, int type, int count, String shape) {
    ArrayNode views = (ArrayNode) root.get("bufferViews");
    ArrayNode accessors = (ArrayNode) root.get("accessors");
    views
        .addObject()
        .put("buffer", 0)
        .put("byteOffset", bytes.size())
        .put("byteLength", b.array().length)
        .put("target", target);
    bytes.writeBytes(b.array());
    accessors
        .addObject()
        .put("bufferView", views.size() - 1)
        .put("componentType", type)
        .put("count", count)
        .put("type", shape);
    return accessors.size() - 1;
  }

  /** The whole file. */
  byte[] file() {
    root.putArray("buffers").addObject().put("byteLength", bytes.size());
    byte[] json = root.toString().getBytes(StandardCharsets.UTF_8);
    int words = (json.length + 3) / 4 * 4;
    ByteBuffer out = room(12 + 8 + words + 8 + bytes.size());
    out.putInt(0x46546C67).putInt(2).putInt(out.capacity());
    out.putInt(words).putInt(0x4E4F534A).put(json);
    for (int i = json.length; i < words; i++) {
      out.put((byte) ' ');
    }
    out.putInt(bytes.size()).putInt(0x004E4942).put(bytes.toByteArray());
    return out.array();
  }
}
