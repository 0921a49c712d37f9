package holloway.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Cables that share a way lie beside each other, and none in a wall that it only lies on. */
class LanesTest {
  private static final List<Vec> EAST = List.of(new Vec(0, 0, 0), new Vec(3000, 0, 0));
  private static final List<Vec> WEST = List.of(new Vec(3000, 0, 0), new Vec(0, 0, 0));

  /** North of each line, in widths; every other one runs the other way round. */
  private static List<Double> north(int cables, Map<Integer, Air> air) {
    List<Lanes.Line> lines = new ArrayList<>();
    for (int i = 0; i < cables; i++) {
      lines.add(new Lanes.Line(i % 2 == 0 ? EAST : WEST, List.of(0, 0), 6, air));
    }
    return Lanes.of(lines).stream().map(l -> l.fan().get(0).y()).toList();
  }

  @Test
  void withinAHollowTheyLieOnBothSidesOfTheWay() {
    assertEquals(List.of(-1.5, -0.5, 0.5, 1.5), north(4, Map.of()));
  }

  @Test
  void onAWallTheyLieWhereTheAirIs() {
    Air northern = (at, aside) -> aside.y() > 0 ? 1 : -1;
    assertEquals(List.of(0.5, 1.5, 2.5, 3.5), north(4, Map.of(0, northern)));
    Air southern = (at, aside) -> aside.y() > 0 ? -1 : 1;
    assertEquals(List.of(-3.5, -2.5, -1.5, -0.5), north(4, Map.of(0, southern)));
  }

  @Test
  void inTheMiddleOfARoomThereIsNoSide() {
    List<Double> far = north(3, Map.of(0, (at, aside) -> 0));
    assertTrue(far.equals(List.of(-1.0, 0.0, 1.0)), far.toString());
  }

  /** From the floor up, then away; as many to the east as to the north, then one way turns off. */
  private static List<Lanes.Line> upAndAway() {
    Vec foot = new Vec(0, 0, 0);
    Vec head = new Vec(0, 0, 2000);
    Vec east = new Vec(3000, 0, 2000);
    Vec on = new Vec(3000, 0, 4000);
    Vec north = new Vec(0, 3000, 2000);
    return List.of(
        new Lanes.Line(List.of(foot, head, east, on), List.of(0, 0, 0, 0), 6, Map.of()),
        new Lanes.Line(List.of(foot, head, north), List.of(0, 0, 0), 6, Map.of()),
        new Lanes.Line(List.of(on, east, head, foot), List.of(0, 0, 0, 0), 6, Map.of()));
  }

  @Test
  void uprightOnesLieBesideEachOtherFromEitherSide() {
    List<Lanes.Laid> laid = Lanes.of(upAndAway());
    assertEquals(new Vec(-1, -1, 0), laid.get(0).fan().get(0));
    assertEquals(new Vec(0, 0, 0), laid.get(1).fan().get(0));
    assertEquals(new Vec(1, 1, 0), laid.get(2).fan().get(laid.get(2).fan().size() - 1));
  }

  @Test
  void noneIsDrawnAslant() {
    for (Lanes.Laid l : Lanes.of(upAndAway())) {
      for (int i = 0; i + 1 < l.points().size(); i++) {
        Vec way = l.points().get(i + 1).minus(l.points().get(i));
        Vec moved = l.fan().get(i + 1).minus(l.fan().get(i));
        // Where lanes change a point is there twice; else a stretch only gets longer or shorter.
        double aslant = way.length() < 1 ? 0 : way.unit().cross(moved).length();
        assertEquals(0, aslant, 1e-9, l.toString());
      }
    }
  }

  @Test
  void uprightOnAWallTheyLieWhereTheAirIs() {
    // Air to the west: the whole bundle lies there, and its middle is not moved to the north.
    Air western = (at, aside) -> aside.x() > 0 ? -1 : 0;
    List<Vec> up = List.of(new Vec(0, 0, 0), new Vec(0, 0, 2000));
    Lanes.Line one = new Lanes.Line(up, List.of(0, 0), 6, Map.of(0, western));
    List<Lanes.Laid> laid =
        Lanes.of(List.of(one, new Lanes.Line(up, List.of(0, 0), 6, Map.of(0, western))));
    assertEquals(new Vec(-1.5, -0.5, 0), laid.get(0).fan().get(0));
    assertEquals(new Vec(-0.5, 0.5, 0), laid.get(1).fan().get(0));
  }
}
