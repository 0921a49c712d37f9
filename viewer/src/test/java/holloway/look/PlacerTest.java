package holloway.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PlacerTest {
  private static final Area PAGE = new Area(0, 0, 800, 600);

  @Test
  void thirtyLabelsOfOnePlaceDoNotCoverEachOther() {
    Placer placer = new Placer(PAGE, 1);
    List<Area> all = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      all.add(placer.beside(400, 300, 50, 20, 8));
    }
    for (int a = 0; a < all.size(); a++) {
      assertTrue(all.get(a).within(PAGE));
      for (int b = 0; b < a; b++) {
        assertEquals(0, all.get(a).shared(all.get(b)), 0.01f, a + " covers " + b);
      }
    }
  }

  @Test
  void aLabelInACornerStaysOnThePage() {
    assertTrue(new Placer(PAGE, 1).beside(799, 1, 120, 24, 8).within(PAGE));
  }

  @Test
  void whatMustStaySeenIsNotCovered() {
    Placer placer = new Placer(PAGE, 1);
    Area ring = new Area(410, 250, 60, 60);
    placer.keepFree(ring);
    assertEquals(0, placer.beside(400, 300, 50, 20, 8).shared(ring));
  }

  @Test
  void whereThereIsNoRoomItIsStillOnThePage() {
    Placer placer = new Placer(PAGE, 1);
    placer.keepFree(PAGE);
    assertTrue(placer.beside(400, 300, 50, 20, 8).within(PAGE));
  }
}
