package holloway.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;
import holloway.geometry.Turn;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A model file is in the frame of the site: everything hangs under one node that is turned. */
class TurnedGlbTest {
  private static final Scene SCENE =
      new Scene(
          "Toy",
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(
              new Scene.Pin(
                  "h", "H1", "hole", new Vec(0, 0, 0), new Vec(0, 0, 90), 13, List.of(), false)),
          List.of());

  private static JsonNode json(byte[] glb) throws Exception {
    ByteBuffer b = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN);
    byte[] text = new byte[b.getInt(12)];
    b.position(20).get(text);
    return new ObjectMapper().readTree(new String(text, StandardCharsets.UTF_8));
  }

  @Test
  void everythingHangsUnderATurnedNode() throws Exception {
    SiteFrame site = new SiteFrame(Turn.degrees(36.869897646), 2_000_000_000L, 100_000_000L);
    JsonNode root = json(Glb.of(SCENE, site));
    JsonNode top = root.get("scenes").get(0).get("nodes");
    assertEquals(1, top.size());
    JsonNode house = root.get("nodes").get(top.get(0).asInt());
    assertEquals(1, house.get("children").size());
    JsonNode straight = json(Glb.of(SCENE));
    assertEquals(
        straight.get("nodes").get(0).get("name"),
        root.get("nodes").get(house.get("children").get(0).asInt()).get("name"));
    // Metres, y up, z south. 3 m east, 4 m north, 5 m up of the house: 0.8 x 3 - 0.6 x 4 + 2 east,
    // 0.6 x 3 + 0.8 x 4 + 0.1 north.
    double[] p = moved(house.get("matrix"), 3, 5, -4);
    assertEquals(2, p[0], 1e-9);
    assertEquals(5, p[1], 1e-9);
    assertEquals(-5.1, p[2], 1e-9);
    Point3 q = site.toSite(new Point3(3_000_000_000L, 4_000_000_000L, 5_000_000_000L));
    assertEquals(q.x() / 1e9, p[0], 1e-8);
    assertEquals(-q.y() / 1e9, p[2], 1e-8);
  }

  private static double[] moved(JsonNode m, double x, double y, double z) {
    assertTrue(m.size() == 16 && m.get(15).asDouble() == 1, m::toString);
    double[] out = new double[3];
    for (int i = 0; i < 3; i++) {
      out[i] =
          m.get(i).asDouble() * x
              + m.get(4 + i).asDouble() * y
              + m.get(8 + i).asDouble() * z
              + m.get(12 + i).asDouble();
    }
    return out;
  }
}
