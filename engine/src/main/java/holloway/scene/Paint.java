package holloway.scene;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * How a thing looks in a file: a colour 0xRRGGBB, how much it hides, how much it shines of itself.
 */
record Paint(String name, int colour, double hides, boolean shines) {
  static final Paint GLOW = new Paint("hollow", 0xFFD9A0, 0.25, true);
  static final Paint HOLE = new Paint("hole", 0xFFFFFF, 1, true);

  /** Quiet clay and slate; finishes are a veil. */
  static Paint of(Layer layer) {
    return switch (layer) {
      case FRAMING -> new Paint(layer.word(), 0xB59A80, 1, false);
      case ROOF -> new Paint(layer.word(), 0xA08A78, 1, false);
      case FLOOR -> new Paint(layer.word(), 0x8C8279, 0.45, false);
      case MASONRY -> new Paint(layer.word(), 0x7D8288, 0.6, false);
      case OBSTACLE -> new Paint(layer.word(), 0x5E6670, 1, false);
      case FINISH -> new Paint(layer.word(), 0xDDE1E4, 0.15, false);
      case OUTSIDE -> new Paint(layer.word(), 0x9AA4AC, 0.2, false);
      case NOT_OURS -> new Paint(layer.word(), 0x55585C, 0.35, false);
    };
  }

  static Paint run(int index) {
    return new Paint("run colour " + (index + 1), Palette.RUNS.get(index), 1, true);
  }

  ObjectNode material() {
    ObjectNode m = JsonNodeFactory.instance.objectNode().put("name", name);
    ObjectNode pbr = m.putObject("pbrMetallicRoughness");
    rgb(pbr.putArray("baseColorFactor"), 1).add(hides);
    pbr.put("metallicFactor", 0).put("roughnessFactor", 1);
    if (shines) {
      rgb(m.putArray("emissiveFactor"), 0.4);
    }
    if (hides < 1) {
      m.put("alphaMode", "BLEND");
    }
    return m;
  }

  /** Factors of the format are linear; colours of a palette are not. */
  private ArrayNode rgb(ArrayNode to, double times) {
    for (int shift = 16; shift >= 0; shift -= 8) {
      double c = (colour >> shift & 0xFF) / 255.0;
      double linear = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
      to.add(Math.round(linear * times * 1e6) / 1e6);
    }
    return to;
  }
}
