package holloway.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Only what another edge beats in everything is left out. */
class DominatedTest {
  private static final List<RouteGraph.Hole> HOLES = List.of(hole(0), hole(1));

  private static RouteGraph.Hole hole(int id) {
    Point3 at = new Point3(0, 0, 0);
    return new RouteGraph.Hole(
        id,
        "site" + id,
        "stud",
        at,
        at,
        "bay",
        "bay",
        List.of(),
        List.of(),
        OptionalLong.empty(),
        false,
        false,
        0,
        List.of());
  }

  private static Drawn edge(int a, int b, long price, String hollow, int... holes) {
    return edge(a, b, price, price, hollow, holes);
  }

  private static Drawn edge(int a, int b, long price, long length, String hollow, int... holes) {
    List<Point3> path = List.of(new Point3(0, 0, 0), new Point3(length, 0, 0));
    RouteGraph.Piece leg = new RouteGraph.Piece.Leg(hollow, HollowKind.STUD_BAY, path, true, price);
    return new Drawn(a, b, Laid.of(List.of(leg)), 0, holes, new int[0], 0);
  }

  private static List<Long> left(Drawn... edges) {
    List<RouteGraph.Edge> out = Dominated.without(List.of(edges), HOLES);
    assertEquals(
        LongStream.range(0, out.size()).boxed().toList(),
        out.stream().map(e -> (long) e.id()).toList());
    return out.stream().map(RouteGraph.Edge::price).toList();
  }

  @Test
  void theDearerOfTwoIsLeftOutEvenIfItRunsTheOtherWay() {
    assertEquals(List.of(4L), left(edge(1, 2, 5, "bay", 0), edge(2, 1, 4, "bay", 0)));
    assertEquals(List.of(4L), left(edge(1, 2, 4, "bay", 0), edge(1, 2, 4, "bay", 0, 1)));
  }

  @Test
  void ofTwinsOneStays() {
    assertEquals(List.of(4L), left(edge(1, 2, 4, "bay", 0), edge(1, 2, 4, "bay", 0)));
  }

  /** A nanometre comes of rounding from one end or the other; two micrometres are a choice. */
  @Test
  void aNanometreLongerIsAsLong() {
    long metre = 1_000_000_000;
    List<Long> same = left(edge(1, 2, 5, metre - 1, "bay"), edge(2, 1, 4, metre, "bay"));
    assertEquals(List.of(4L), same);
    assertEquals(2, left(edge(1, 2, 5, metre - 2000, "bay"), edge(2, 1, 4, metre, "bay")).size());
  }

  @Test
  void anotherHollowAnotherHoleOrAnotherHandIsAChoice() {
    assertEquals(2, left(edge(1, 2, 5, "bay"), edge(1, 2, 4, "duct")).size());
    assertEquals(2, left(edge(1, 2, 5, "bay", 0), edge(1, 2, 4, "bay", 1)).size());
    assertEquals(2, left(edge(1, 2, 5, "bay", 0), edge(1, 3, 4, "bay", 0)).size());
  }

  @Test
  void anEdgeThatPassesAHoleTwiceBeatsNothing() {
    assertEquals(2, left(edge(1, 2, 4, "bay", 0, 0), edge(1, 2, 5, "bay", 0)).size());
  }
}
