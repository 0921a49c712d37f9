package holloway.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.gl.Driver;
import holloway.pack.Pictures;
import holloway.view.Ranch;
import java.nio.ByteBuffer;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a work pack gets of the viewer. */
class DrawnHouseTest {
  @Test
  void everyKindIsDrawnInTheSizeAskedFor() {
    Driver.orSkip().close();
    try (Pictures p = DrawnHouse.of(Ranch.live().drawn(Ranch.judged()))) {
      assertEquals("", p.why());
      String run = Ranch.judged().plan().runs().get(0).id();
      List<String> levels = p.levels();
      assertEquals(1, levels.size(), "the sample has one storey");
      for (String[] of :
          new String[][] {
            {"level", levels.get(0)}, {"run", run}, {"hole", "H1"}, {"slice", "floor 1 m"}
          }) {
        ByteBuffer png = ByteBuffer.wrap(p.png(of[0], of[1], 640, 400, t -> t).orElseThrow());
        assertEquals(0x89504E47, png.getInt(0), "a PNG begins so");
        assertEquals(640, png.getInt(16));
        assertEquals(400, png.getInt(20));
      }
      assertTrue(p.png("hole", "H999", 640, 400, t -> t).isEmpty());
      assertTrue(p.png("level", "moon", 640, 400, t -> t).isEmpty());
      assertThrows(IllegalArgumentException.class, () -> p.png("tree", "oak", 640, 400, t -> t));
    }
  }
}
