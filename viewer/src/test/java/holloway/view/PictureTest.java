package holloway.view;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.gl.Driver;
import holloway.gl.Offscreen;
import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Pane;
import holloway.look.Pixels;
import holloway.look.Sheet;
import holloway.look.Theme;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.joml.Vector3f;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures of a sample: measured facts first, then the stored ones with a small tolerance. */
final class PictureTest {
  /** Set to a folder of resources to store the pictures anew; look at them before keeping them. */
  private static final String STORE = System.getProperty("holloway.pictures.store", "");

  private static Offscreen draws;
  private static Pictures pictures;

  @BeforeAll
  static void open() {
    draws = Driver.orSkip();
    pictures = Ranch.pictures();
  }

  @AfterAll
  static void close() {
    if (draws != null) {
      draws.close();
    }
  }

  private static Pictures.Paper paper(int w, int h, Theme t) {
    return new Pictures.Paper(w, h, t, draws.measure());
  }

  @Test
  void aPinsPixelLiesWhereProjectingItsPointSays() {
    for (Pin pin : pictures.model().pins()) {
      HoleSheet hole = pictures.findHole(pin.id()).orElseThrow();
      Sheet s = pictures.hole(pin.id(), paper(1200, 800, Theme.DUSK)).orElseThrow();
      Pixels p = draws.draw(s);
      assertEquals(2, s.panes().size());
      isPinned(p, s.panes().get(0).pixel(hole.a()), pin.label() + " where the drill stands");
      isPinned(p, s.panes().get(1).pixel(hole.b()), pin.label() + " where the bit comes out");
    }
  }

  /** The dot in the ring's middle, dark between, and the ring round it. */
  private static void isPinned(Pixels p, Vector3f at, String what) {
    int x = Math.round(at.x - 0.5f);
    int y = Math.round(at.y - 0.5f);
    assertTrue(isLight(p.at(x, y)), what + ": the dot");
    float scale = 0.75f;
    int r = Math.round(5.4f * scale);
    int ring = 0;
    for (int[] d : new int[][] {{r, 0}, {-r, 0}, {0, r}, {0, -r}}) {
      ring += isLight(p.at(x + d[0], y + d[1])) ? 1 : 0;
    }
    assertTrue(ring >= 3, what + ": the ring, on " + ring + " of four sides");
  }

  private static boolean isLight(int c) {
    return (c >> 16 & 255) > 150 && (c >> 8 & 255) > 150 && (c & 255) > 140;
  }

  @Test
  void hidingALayerChangesOnlyItsPixels() {
    Model m = pictures.model();
    Bodies all = new Painted(m, Theme.DUSK).solid(p -> !p.isSkin()).veiled(Piece::isSkin).bodies();
    Bodies bare = new Painted(m, Theme.DUSK).solid(p -> !p.isSkin()).bodies();
    Bodies skin = new Painted(m, Theme.DUSK).solid(Piece::isSkin).bodies();
    Pixels with = drawn(all);
    Pixels without = drawn(bare);
    Pixels mask = drawn(skin);
    Pixels ground = drawn(new Bodies());
    int changed = 0;
    for (int y = 1; y < 399; y++) {
      for (int x = 1; x < 599; x++) {
        if (with.at(x, y) != without.at(x, y)) {
          changed++;
          assertTrue(near(mask, ground, x, y), "pixel " + x + ", " + y + " is not of the finishes");
        }
      }
    }
    assertTrue(changed > 5000, "the finishes are seen: " + changed + " pixels");
  }

  /** Edges are smoothed, so the next pixel counts too. */
  private static boolean near(Pixels mask, Pixels ground, int x, int y) {
    boolean any = false;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        any |= mask.at(x + dx, y + dy) != ground.at(x + dx, y + dy);
      }
    }
    return any;
  }

  private static Pixels drawn(Bodies bodies) {
    Orbit o = Orbit.whole(pictures.model());
    Pane pane = new Pane(0, 0, 600, 400, o.view(), o.projection(600, 400), List.of(), bodies, 3);
    return draws.draw(new Sheet(600, 400, Theme.DUSK, List.of(pane), List.of()));
  }

  @Test
  void aCableIsSeenBesideAnotherOnTheSameWay() {
    List<Cable> laid = pictures.model().cables();
    for (int a = 0; a < laid.size(); a++) {
      for (int b = 0; b < a; b++) {
        assertTrue(!overlap(laid.get(a), laid.get(b)), "cables " + b + " and " + a);
      }
    }
  }

  /** Whether two drawn lines share a stretch and the side they are moved to there. */
  private static boolean overlap(Cable a, Cable b) {
    for (int i = 0; i + 1 < a.lane().size(); i++) {
      for (int k = 0; k + 1 < b.lane().size(); k++) {
        boolean same =
            a.lane().get(i).distance(b.lane().get(k)) < 1e-4
                    && a.lane().get(i + 1).distance(b.lane().get(k + 1)) < 1e-4
                || a.lane().get(i).distance(b.lane().get(k + 1)) < 1e-4
                    && a.lane().get(i + 1).distance(b.lane().get(k)) < 1e-4;
        boolean far = a.lane().get(i).distance(a.lane().get(i + 1)) > 0.05;
        if (same
            && far
            && a.fan().get(i).distance(b.fan().get(k)) < 0.5
            && a.fan().get(i + 1).distance(b.fan().get(k + 1)) < 0.5) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void noLabelOfALevelCoversAnother() {
    Sheet s =
        pictures
            .level(pictures.model().storeys().get(0).name(), paper(1600, 1000, Theme.DUSK))
            .orElseThrow();
    List<Area> plates =
        s.over().stream()
            .filter(m -> m instanceof holloway.look.Mark.Slab b && b.corner() > 3)
            .map(m -> (holloway.look.Mark.Slab) m)
            .map(b -> new Area(b.x(), b.y(), b.width(), b.height()))
            .toList();
    assertTrue(plates.size() > 10);
    for (int a = 0; a < plates.size(); a++) {
      for (int b = 0; b < a; b++) {
        assertEquals(
            0, plates.get(a).shared(plates.get(b)), 1, plates.get(a) + ", " + plates.get(b));
      }
    }
  }

  @Test
  void theSamePictureComesOutTheSameByteForByte() {
    Sheet s = sheet("level");
    assertArrayEquals(draws.png(s), draws.png(sheet("level")));
  }

  private static Sheet sheet(String what) {
    Model m = pictures.model();
    return switch (what) {
      case "level" ->
          pictures.level(m.storeys().get(0).name(), paper(800, 500, Theme.LIGHT)).orElseThrow();
      case "run" -> pictures.run(m.cables().get(0).id(), paper(800, 500, Theme.DUSK)).orElseThrow();
      case "hole" -> pictures.hole("H1", paper(800, 500, Theme.DUSK)).orElseThrow();
      default -> pictures.slice(new Slice(1, 3, 0.6f), paper(800, 500, Theme.DUSK));
    };
  }

  @ParameterizedTest
  @ValueSource(strings = {"level", "run", "hole", "slice"})
  void thePictureIsTheStoredOne(String what) throws IOException {
    Sheet s = sheet(what);
    if (!STORE.isEmpty()) {
      Files.write(Files.createDirectories(Path.of(STORE)).resolve(what + ".png"), draws.png(s));
    }
    Pixels now = draws.draw(s);
    BufferedImage stored = stored(what);
    assertEquals(now.width(), stored.getWidth());
    assertEquals(now.height(), stored.getHeight());
    long off = 0;
    for (int y = 0; y < now.height(); y++) {
      for (int x = 0; x < now.width(); x++) {
        off += apart(now.at(x, y), stored.getRGB(x, y)) > 40 ? 1 : 0;
      }
    }
    // Another driver rounds edges otherwise: one pixel in two hundred may be another.
    assertTrue(off <= now.width() * now.height() / 200, off + " pixels differ");
  }

  private static BufferedImage stored(String what) throws IOException {
    if (!STORE.isEmpty()) {
      return ImageIO.read(Path.of(STORE).resolve(what + ".png").toFile());
    }
    try (InputStream in = PictureTest.class.getResourceAsStream("/pictures/" + what + ".png")) {
      return ImageIO.read(in);
    }
  }

  private static int apart(int a, int b) {
    return Math.abs((a >> 16 & 255) - (b >> 16 & 255))
        + Math.abs((a >> 8 & 255) - (b >> 8 & 255))
        + Math.abs((a & 255) - (b & 255));
  }
}
