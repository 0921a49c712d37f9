package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Theme;
import holloway.scene.Palette;
import holloway.scene.Scene;
import holloway.scene.SceneMaker;
import holloway.scene.Vec;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Pictures and model files are made of one scene. */
class OneSceneTest {
  private static Scene scene;
  private static Model model;

  @BeforeAll
  static void make() {
    var house = Ranch.live().drawn(Ranch.judged());
    scene = SceneMaker.of(house.hollows(), house.plan());
    model = Ranch.pictures().model();
  }

  @Test
  void whatIsDrawnIsWhatIsWritten() {
    assertEquals(
        scene.solids().stream().map(Scene.Solid::id).toList(),
        model.pieces().stream().map(Piece::id).toList());
    assertEquals(
        scene.pins().stream().map(Scene.Pin::label).toList(),
        Ranch.judged().plan().holes().stream().map(h -> h.label()).toList());
    assertEquals(
        scene.spaces().stream().filter(Scene.Space::isLit).map(Scene.Space::id).toList(),
        model.spaces().stream().filter(Space::isLit).map(Space::id).toList());
    assertEquals(Theme.DUSK.runs(), Palette.RUNS, "runs have one colour everywhere");
  }

  @Test
  void theNumbersAreThoseOfThePlanAndOfTheCards() {
    Parity.check(Ranch.live().drawn(Ranch.judged()));
  }

  /** In a model file cables have their true size, so they must stay within the bores. */
  @Test
  void packedCablesStayInTheirHoles() {
    int seen = 0;
    for (Scene.Pin p : scene.pins()) {
      Vec axis = p.to().minus(p.from());
      double depth = axis.length();
      if (depth < 1) {
        continue;
      }
      for (String run : p.runs()) {
        Scene.Tube t = scene.findTube(run).orElseThrow();
        List<Vec> way = t.laid().packed();
        for (int i = 0; i + 1 < way.size(); i++) {
          Vec a = way.get(i).minus(p.from());
          Vec b = way.get(i + 1).minus(p.from());
          boolean along = off(b.minus(a), axis) < 1;
          boolean near = off(a, axis) < 60 && off(b, axis) < 60;
          boolean through = along && near && Math.abs(b.minus(a).length() - depth) < 1;
          if (through) {
            seen++;
            double reach = Math.max(off(a, axis), off(b, axis)) + t.diameterMm() / 2;
            assertTrue(reach <= p.diameterMm() / 2 + 0.2, p.label() + ", " + run + ": " + reach);
          }
        }
      }
    }
    assertTrue(seen >= scene.pins().size(), "only " + seen + " passages were looked at");
  }

  private static double off(Vec p, Vec axis) {
    return p.cross(axis.unit()).length();
  }
}
