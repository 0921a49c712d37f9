package holloway.solve;

import holloway.routing.RouteGraph.Step;
import java.util.List;
import java.util.OptionalLong;

/**
 * A hole that leads to four outlets. A flexible bit bores it for 10 000 to 19 mm, which three
 * cables pass; from a patch for 500 000, which another hole needs too, a straight one bores it to
 * 22 mm for as much. An outlet's own way costs 1 000 000. So the patch is opened: 510 000.
 */
final class FlexibleHole {
  static final int PATCH = 0;
  static final int FLEXIBLE = 1;
  static final int STRAIGHT = 2;

  private FlexibleHole() {}

  /** The works come in the order of the constants, the cabinet is the first node. */
  static GraphBuilder builder() {
    GraphBuilder b = new GraphBuilder();
    int cabinet = b.node(0, 0, 0);
    int behind = b.node(0, 0, 1000);
    int patch = b.bore(500_000);
    List<int[]> methods = List.of(new int[] {b.bore(10_000)}, new int[] {patch, b.bore(10_000)});
    List<Step> steps = List.of(new Step(19, 0), new Step(22, 0));
    int hole = b.hole(methods, steps, OptionalLong.empty());
    b.firstIsFlexible(hole);
    b.edge(cabinet, behind, 0, hole);
    int aside = b.hole(List.of(new int[] {patch}), List.of(), OptionalLong.empty());
    b.edge(cabinet, b.node(1000, -1000, 0), 0, aside);
    FourOutlets.add(b, cabinet, behind, 1_000_000);
    return b;
  }
}
