package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.routing.RouteGraph;
import holloway.support.AwkwardHouseText;
import holloway.support.StagedPlan;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Cable that is laid by hand never leaves the outline of its space between two places inside it, as
 * over a notch: every such leg of the routing graph, whether a plan takes it or not.
 */
class LaidInsideTest {
  private static final double ROUNDED_MM = 0.1;
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  @TempDir Path folder;

  /** In the crawlspace of 6030 an approach of 300 mm stepped over a corner that stands in. */
  @ParameterizedTest
  @ValueSource(longs = {6030, 6031})
  void everyLegInACrawlspace(long seed) throws Exception {
    var drawn = AwkwardHouseText.of(seed);
    Path file = Files.writeString(folder.resolve("laid.yaml"), drawn.house());
    if (drawn.found().isPresent()) {
      Files.writeString(folder.resolve("laid.found.yaml"), drawn.found().get());
    }
    StagedPlan house = new StagedPlan(file);
    Map<String, Geometry> outlines =
        house.hollows.hollows().stream()
            .filter(h -> h.kind() == HollowKind.CRAWLSPACE)
            .collect(
                Collectors.toMap(
                    Hollow::id, h -> h.area().orElseThrow().toJts().buffer(ROUNDED_MM)));
    List<RouteGraph.Piece.Leg> legs =
        house.routed.graph().edges().stream()
            .flatMap(e -> e.pieces().stream())
            .filter(p -> p instanceof RouteGraph.Piece.Leg)
            .map(p -> (RouteGraph.Piece.Leg) p)
            .filter(l -> outlines.containsKey(l.hollow()))
            .toList();
    assertTrue(legs.size() > 20, legs.size() + " legs");
    assertEquals(
        List.of(),
        legs.stream()
            .filter(l -> !outlines.get(l.hollow()).covers(seenFromAbove(l)))
            .map(l -> l.hollow() + " " + l.path())
            .toList());
  }

  private static Geometry seenFromAbove(RouteGraph.Piece.Leg leg) {
    return GEOMETRY.createLineString(
        leg.path().stream().map(LaidInsideTest::inPlan).toArray(Coordinate[]::new));
  }

  private static Coordinate inPlan(Point3 p) {
    return new Coordinate(p.x() / 1e6, p.y() / 1e6);
  }
}
