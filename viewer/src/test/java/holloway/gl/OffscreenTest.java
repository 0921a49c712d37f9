package holloway.gl;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Bodies;
import holloway.look.Dash;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Pixels;
import holloway.look.Rgb;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.look.Tube;
import java.util.List;
import org.joml.Matrix4f;
import org.joml.Vector3f;
import org.joml.Vector4f;
import org.joml.Vector4fc;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** One cube of a metre seen from above, 100 pixels a metre: everything is arithmetic. */
final class OffscreenTest {
  private static Offscreen draws;

  @BeforeAll
  static void open() {
    draws = Driver.orSkip();
  }

  @AfterAll
  static void close() {
    if (draws != null) {
      draws.close();
    }
  }

  private static Pane above(Bodies bodies, Vector4fc... cuts) {
    Matrix4f view = new Matrix4f().lookAt(0, 0, 10, 0, 0, 0, 0, 1, 0);
    Matrix4f projection = new Matrix4f().ortho(-2, 2, -1.5f, 1.5f, 0.1f, 20);
    return new Pane(0, 0, 400, 300, view, projection, List.of(cuts), bodies, 8);
  }

  private static Pixels draw(Bodies bodies, List<Mark> marks, Vector4fc... cuts) {
    return draws.draw(new Sheet(400, 300, Theme.DUSK, List.of(above(bodies, cuts)), marks));
  }

  private static Bodies cube() {
    Bodies b = new Bodies();
    b.solids.add(
        new Vector3f(0.5f, 0, 0),
        new Vector3f(0.5f, 0, 0),
        new Vector3f(0, 0.5f, 0),
        new Vector3f(0, 0, 0.5f),
        0xFF0000,
        1);
    return b;
  }

  private static boolean red(int c) {
    return Rgb.red(c) > 0.4 && Rgb.green(c) < 0.05;
  }

  @Test
  void aBoxCoversThePixelsItsCornersSay() {
    Pixels p = draw(cube(), List.of());
    assertTrue(red(p.at(250, 150)), "its middle");
    assertTrue(red(p.at(202, 102)), "just inside its corner");
    assertTrue(!red(p.at(197, 150)), "just left of it");
    assertTrue(!red(p.at(303, 150)), "just right of it");
    assertTrue(!red(p.at(250, 97)), "just above it");
  }

  @Test
  void aCutTakesAwayWhatLiesBeyondIt() {
    Pixels p = draw(cube(), List.of(), new Vector4f(-1, 0, 0, 0.5f));
    assertTrue(red(p.at(225, 150)));
    assertTrue(!red(p.at(275, 150)));
  }

  @Test
  void aHiddenTubeIsSeenThroughFaintly() {
    Bodies plain = cube();
    Bodies b = cube();
    Vector3f z = new Vector3f();
    b.tubes.add(
        new Tube(
            List.of(new Vector3f(-1, 0, -1), new Vector3f(1, 0, -1)),
            List.of(z, z),
            0.01f,
            0x56B4E9,
            Dash.WHOLE,
            1));
    int bare = draw(plain, List.of()).at(250, 150);
    Pixels p = draw(b, List.of());
    int open = p.at(120, 150);
    int behind = p.at(250, 150);
    assertTrue(Rgb.blue(open) > 0.6, "in the open it is plain: " + Integer.toHexString(open));
    assertNotEquals(bare, behind, "behind the box it is not lost");
    assertTrue(Rgb.red(behind) > Rgb.red(open), "but the box is still seen");
  }

  @Test
  void aTubeIsNeverThinnerThanThePaneAsks() {
    Bodies b = new Bodies();
    Vector3f z = new Vector3f();
    b.tubes.add(
        new Tube(
            List.of(new Vector3f(-1, 0, 0), new Vector3f(1, 0, 0)),
            List.of(z, z),
            0.001f,
            0xFFFFFF,
            Dash.WHOLE,
            1));
    Pixels p = draw(b, List.of());
    Pixels bare = draw(new Bodies(), List.of());
    int covered = 0;
    for (int y = 0; y < 300; y++) {
      covered += p.at(200, y) != bare.at(200, y) ? 1 : 0;
    }
    assertEquals(8, covered, 1);
  }

  @Test
  void wordsTakeAsMuchRoomAsTheyAreMeasured() {
    float wide = draws.measure().width("Office", 40, false);
    Pixels p = draw(new Bodies(), List.of(new Mark.Word(100, 150, "Office", 40, false, ~0)));
    int first = 400;
    int last = 0;
    for (int y = 0; y < 300; y++) {
      for (int x = 0; x < 400; x++) {
        if (Rgb.red(p.at(x, y)) > 0.6) {
          first = Math.min(first, x);
          last = Math.max(last, x);
        }
      }
    }
    assertEquals(100, first, 4);
    assertEquals(100 + wide, last, 4);
  }

  @Test
  void theSameSheetGivesTheSameBytes() {
    Sheet s = new Sheet(400, 300, Theme.LIGHT, List.of(above(cube())), List.of());
    byte[] first = draws.png(s);
    assertArrayEquals(first, draws.png(s));
    assertEquals((byte) 'P', first[1]);
  }
}
