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
}
