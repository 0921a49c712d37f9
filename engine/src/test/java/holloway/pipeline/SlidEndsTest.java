package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Framing;
import holloway.hollow.HollowBase;
import holloway.hollow.HollowHouse;
import holloway.hollow.Hollows;
import holloway.house.Along;
import holloway.house.Fact;
import holloway.house.WallSpot;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.routing.Ends;
import holloway.routing.RouteGraph;
import holloway.routing.Routing;
import holloway.routing.RoutingMemory;
import holloway.survey.Placed;
import holloway.units.Length;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * An outlet is slid and slid on: hollows and ways of the house that remembers what it was before
 * are those that are listed from nothing, to the last number.
 */
final class SlidEndsTest {
  private static final long[] BY = {101_600_000, -203_200_000, 1_219_200_000, 7_000_000};

  @ParameterizedTest
  @ValueSource(
      strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street", "wren-hollow"})
  void waysOfASlidOutletAreThoseFromNothing(String sample) {
    RealStages stages = new RealStages(Progress.SILENT);
    Path file = Path.of("..", "samples", sample + ".yaml");
    Stages.Reading reading = stages.read(file, PlanSettings.USUAL);
    Placed placed = stages.survey(reading.house()).value();
    Request request = reading.request();
    HollowBase base = Hollows.of(Framing.of(placed));
    RoutingMemory memory = new RoutingMemory(request);
    int compared = 0;
    for (Request r : slides(request)) {
      Ends ends = Ends.of(placed, r);
      if (ends.problems().isEmpty()) {
        HollowHouse hollows = base.near(ends.interests());
        HollowHouse anew = Hollows.of(Framing.of(placed), ends.interests());
        same(anew, hollows);
        Routing.Routed expected = Routing.of(anew, ends.besideStuds(anew), r);
        same(expected, Routing.of(hollows, ends.besideStuds(hollows), r, memory));
        compared++;
      }
    }
    assertTrue(compared >= 5, sample + ": only " + compared + " could be slid so");
  }

  /**
   * Every third outlet by each length, in a house of many outlets five of them all the same, and
   * between two of them all as they were.
   */
  private static List<Request> slides(Request r) {
    List<Request> out = new ArrayList<>(List.of(r));
    for (int o = 0; o < r.outlets().size(); o += Math.max(3, r.outlets().size() / 5)) {
      for (long by : BY) {
        out.add(slid(r, o, by));
      }
      out.add(r);
    }
    return out;
  }

  static Request slid(Request r, int outlet, long by) {
    Outlet o = r.outlets().get(outlet);
    List<Spot> spots = new ArrayList<>(o.spots());
    if (spots.get(0) instanceof Spot.OnWall w) {
      Fact<Length> d = w.at().along().distance();
      Length to = new Length(Math.max(0, d.value().nm() + by));
      Along along =
          new Along(w.at().along().from(), new Fact<>(to, d.spread(), d.origin(), d.where()));
      spots.set(0, new Spot.OnWall(new WallSpot(w.at().face(), along, w.at().height()), w.upTo()));
    }
    List<Outlet> outlets = new ArrayList<>(r.outlets());
    outlets.set(
        outlet,
        new Outlet(
            o.name(), spots, o.cables(), o.spare(), o.feed(), o.power(), o.boxDepth(), o.where()));
    return new Request(
        r.cabinet(), outlets, r.runs(), r.wishes(), r.effort(), r.prices(), r.shop());
  }

  private static void same(HollowHouse expected, HollowHouse is) {
    assertEquals(expected.hollows(), is.hollows());
    assertEquals(expected.sites(), is.sites());
    assertEquals(expected.accesses(), is.accesses());
    assertEquals(expected.stands(), is.stands());
    assertEquals(expected.refused(), is.refused());
  }

  private static void same(Routing.Routed expected, Routing.Routed is) {
    assertEquals(expected.refused(), is.refused());
    RouteGraph a = expected.graph();
    RouteGraph b = is.graph();
    assertEquals(a.works(), b.works());
    assertEquals(a.terminals(), b.terminals());
    assertEquals(a.fares(), b.fares());
    assertEquals(a.nodes().size(), b.nodes().size());
    for (int i = 0; i < a.nodes().size(); i++) {
      RouteGraph.Node n = a.nodes().get(i);
      RouteGraph.Node m = b.nodes().get(i);
      assertEquals(n.name(), m.name());
      assertEquals(n.at(), m.at());
      assertArrayEquals(n.works(), m.works(), n.name());
    }
    assertEquals(a.edges().size(), b.edges().size());
    for (int i = 0; i < a.edges().size(); i++) {
      assertEquals(words(a, a.edges().get(i)), words(b, b.edges().get(i)));
    }
    assertEquals(a.holes().size(), b.holes().size());
    for (int i = 0; i < a.holes().size(); i++) {
      assertEquals(words(a, a.holes().get(i)), words(b, b.holes().get(i)));
    }
  }

  /** Arrays are compared by what is in them. */
  private static List<Object> words(RouteGraph g, RouteGraph.Edge e) {
    return List.of(
        e.a(),
        e.b(),
        e.price(),
        e.length(),
        e.visible(),
        list(e.holes()),
        list(e.works()),
        e.ways(),
        e.pieces());
  }

  private static List<Object> words(RouteGraph g, RouteGraph.Hole h) {
    List<Object> methods = new ArrayList<>();
    h.methods()
        .forEach(m -> methods.add(List.of(m.words(), m.stand(), list(m.works()), m.flexible())));
    return List.of(
        h.site(),
        h.kind(),
        h.a(),
        h.b(),
        h.hollowA(),
        h.hollowB(),
        methods,
        h.steps(),
        h.second(),
        h.made(),
        h.assumed(),
        h.ways(),
        h.pierced());
  }

  private static List<Integer> list(int[] all) {
    return java.util.Arrays.stream(all).boxed().toList();
  }
}
