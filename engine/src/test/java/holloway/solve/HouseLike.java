package holloway.solve;

import holloway.catalog.Cable;
import holloway.hollow.Way;
import holloway.hollow.WorkKind;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;

/**
 * A graph with the structure of a two-storey house and as large as wanted: wall bays with a patch
 * place each, an attic over the upper bays, a crawlspace under the lower ones, plates between,
 * studs sideways, many fishes through the same hole.
 */
final class HouseLike {
  private static final int BAYS = 12;
  private static final long MINUTE = 10_000;

  final RouteGraph graph;
  final Order order;
  private final GraphBuilder b = new GraphBuilder();
  private final Random random;
  private final int walls;
  private final int attic;
  private final int crawl;
  private final int[][][] bay;
  private final int[][][] patch;
  private final int[][] above;
  private final int[][] below;

  HouseLike(long seed, int walls, int runs, int fan, Profile profile) {
    random = new Random(seed);
    this.walls = walls;
    attic = b.work(WorkKind.ZONE, 25 * MINUTE, 0, "attic");
    crawl = b.work(WorkKind.ZONE, 30 * MINUTE, 0, "crawlspace");
    bay = new int[2][walls][BAYS];
    patch = new int[2][walls][BAYS];
    above = new int[walls][BAYS];
    below = new int[walls][BAYS];
    for (int w = 0; w < walls; w++) {
      for (int i = 0; i < BAYS; i++) {
        places(w, i);
      }
    }
    for (int w = 0; w < walls; w++) {
      studs(0, w);
      studs(1, w);
      for (int i = 0; i < BAYS; i++) {
        columns(w, i, fan);
      }
    }
    handPlaces(above, attic, Way.ATTIC, 8);
    handPlaces(below, crawl, Way.UNDER_FLOOR, 10);
    order = order(runs, profile);
    graph = b.build();
  }

  private void places(int w, int i) {
    long x = 400L * i + 5200L * (w % 4);
    long y = 3600L * (w / 4);
    for (int level = 0; level < 2; level++) {
      patch[level][w][i] = b.work(WorkKind.PATCH, (35 + random.nextInt(20)) * MINUTE, 1, "");
      bay[level][w][i] = b.node(x, y, 2700L * level + 400, patch[level][w][i]);
    }
    above[w][i] = b.node(x, y, 5500);
    below[w][i] = b.node(x, y, -400);
  }

  private int plate(int zone, int level, int w, int i) {
    int fromZone = b.bore((9 + random.nextInt(6)) * MINUTE);
    int fromPatch = b.bore((12 + random.nextInt(6)) * MINUTE);
    return b.hole(
        List.of(new int[] {fromZone, zone}, new int[] {fromPatch, patch[level][w][i]}),
        steps(),
        OptionalLong.of(6 * MINUTE));
  }

  private static List<Step> steps() {
    return List.of(
        new Step(16, 0), new Step(19, 5_000), new Step(22, 10_000), new Step(25, 20_000));
  }

  private void columns(int w, int i, int fan) {
    int top = plate(attic, 1, w, i);
    int bottom = plate(crawl, 0, w, i);
    int stack =
        b.hole(
            List.of(
                new int[] {b.bore((20 + random.nextInt(9)) * MINUTE), patch[1][w][i]},
                new int[] {b.bore((24 + random.nextInt(9)) * MINUTE), patch[0][w][i]}),
            steps(),
            OptionalLong.empty());
    long fish = (4 + random.nextInt(3)) * MINUTE;
    for (int k = 0; k < fan; k++) {
      int other = Math.floorMod(i + k - fan / 2, BAYS);
      b.edge(bay[1][w][i], above[w][other], fish + 2_000L * Math.abs(other - i), top);
      b.edge(bay[0][w][i], below[w][other], fish + 2_000L * Math.abs(other - i), bottom);
    }
    b.edge(bay[0][w][i], bay[1][w][i], fish, stack);
    b.edge(bay[0][w][i], above[w][i], 2 * fish, stack, top);
    b.edge(bay[1][w][i], below[w][i], 2 * fish, stack, bottom);
  }

  private void studs(int level, int w) {
    int[] stud = new int[BAYS - 1];
    for (int i = 0; i + 1 < BAYS; i++) {
      List<int[]> methods = new ArrayList<>();
      methods.add(new int[] {b.bore((8 + random.nextInt(4)) * MINUTE), patch[level][w][i]});
      methods.add(new int[] {b.bore((8 + random.nextInt(4)) * MINUTE), patch[level][w][i + 1]});
      stud[i] = b.hole(methods, steps(), OptionalLong.empty());
      b.edge(bay[level][w][i], bay[level][w][i + 1], 3 * MINUTE, stud[i]);
    }
    for (int i = 0; i + 2 < BAYS; i++) {
      b.edge(bay[level][w][i], bay[level][w][i + 2], 5 * MINUTE, stud[i], stud[i + 1]);
    }
  }

  /** Cable is laid from each place to its nearest ones and to a few further off. */
  private void handPlaces(int[][] at, int zone, Way way, int reach) {
    for (int w = 0; w < walls; w++) {
      for (int i = 0; i < BAYS; i++) {
        for (int k = 1; k <= reach && i + k < BAYS; k++) {
          lay(at[w][i], at[w][i + k], zone, way);
        }
        for (int next : new int[] {w + 1, w + 4}) {
          if (next < walls) {
            for (int k = Math.max(0, i - 2); k < Math.min(BAYS, i + 3); k++) {
              lay(at[w][i], at[next][k], zone, way);
            }
          }
        }
      }
    }
  }

  private void lay(int a, int c, int zone, Way way) {
    long mm = b.nodes.get(a).at().distanceTo(b.nodes.get(c).at()) / GraphBuilder.MM;
    b.edge(a, c, mm * 6, new int[0], new int[] {zone}, way.bit());
  }

  private Order order(int runs, Profile profile) {
    int cabinet = outlet(0, 0, 3);
    b.end("cabinet", cabinet);
    for (int i = 4; runs > 20 && i < BAYS; i++) {
      open(cabinet, i);
    }
    List<Order.Wanted> wanted = new ArrayList<>();
    int outlets = 0;
    while (wanted.size() < runs) {
      String name = "outlet " + outlets++;
      b.end(name, outlet(random.nextInt(2), random.nextInt(walls), random.nextInt(BAYS)));
      int cables = 1 + random.nextInt(3);
      for (int c = 0; c < cables && wanted.size() < runs; c++) {
        Cable cable = Cable.get(c == 2 ? "om4" : "cat6");
        wanted.add(new Order.Wanted(name + "/" + c, "cabinet", name, cable));
      }
    }
    return new Order(wanted, profile, Set.of(), Map.of());
  }

  /** An unlined wall beside the cabinet: its bays are at hand without a patch. */
  private void open(int cabinet, int i) {
    for (RouteGraph.Edge e : List.copyOf(b.edges)) {
      if (e.holes().length > 0 && e.a() == bay[0][0][i]) {
        b.edge(cabinet, e.b(), e.price() + 4_000, e.holes());
      }
    }
  }

  /** A box in a bay: its cut-out gives a hand into that bay. */
  private int outlet(int level, int w, int i) {
    int cut = b.work(WorkKind.CUT_OUT, 12 * MINUTE, 0, "");
    int node = b.node(400L * i + 5200L * (w % 4) + 100, 3600L * (w / 4), 2700L * level + 300, cut);
    b.edge(node, bay[level][w][i], MINUTE, new int[0], new int[0], 0);
    for (RouteGraph.Edge e : List.copyOf(b.edges)) {
      if (e.holes().length > 0 && (e.a() == bay[level][w][i] || e.b() == bay[level][w][i])) {
        b.edge(node, e.other(bay[level][w][i]), e.price(), e.holes());
      }
    }
    return node;
  }
}
