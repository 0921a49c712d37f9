package holloway.routing;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.hollow.Solids;
import holloway.routing.RingLine.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cable clipped along a closed line of wall: round a room at its skirting and under its ceiling, or
 * round the house outside. Doors are gone over; each place leads onto the lines straight up or down
 * the wall, and to its neighbours directly.
 */
final class RingNet {
  /** Places this near along the wall are joined without going down to the line. */
  private static final long NEIGHBOURS = 900_000_000;

  /** Cable under the boards of a porch keeps this off them, as it does off a wall. */
  private static final long OFF_BOARDS = 12_000_000;

  /**
   * Who pays what: a key of the effort table, whether it is in sight, ways; and the heights between
   * which cable can lie on the wall, clear of floor and ceiling.
   */
  record Terms(
      String hollow, HollowKind kind, String key, boolean visible, int ways, Interval heights) {}

  /**
   * A stretch of the line, by distance from its first corner, that an opening takes, and the height
   * to go over it.
   *
   * @param fromZ there is a wall below this height
   * @param sort what takes it
   */
  record Gap(Interval at, long overZ, long fromZ, Sort sort) {
    /** The height of an opening that cable is not led over. */
    static final long NOT_PASSED = Long.MAX_VALUE;

    /** True if it lies between two distances, the second counted on past the first corner. */
    boolean shuts(long from, long to, long round) {
      boolean here = at.lo() < to && at.hi() > from;
      return overZ == NOT_PASSED && (here || at.lo() + round < to && at.hi() + round > from);
    }

    /** Of a door: what starts under its head goes over it. */
    Gap(Interval at, long overZ) {
      this(at, overZ, Long.MIN_VALUE, Sort.DOOR);
    }

    boolean bare() {
      return sort == Sort.BARE;
    }

    /** True if it lies on a stretch whose end is counted on past the first corner. */
    boolean touches(Interval stretch, long round) {
      return stretch.overlaps(at)
          || stretch.overlaps(new Interval(at.lo() + round, at.hi() + round));
    }

    boolean takes(long z) {
      return z >= fromZ && (z < overZ || sort == Sort.UNDER);
    }
  }

  /** DOOR: gone over. BARE: no wall, so nothing goes up or down there. UNDER: a beam gone under. */
  enum Sort {
    DOOR,
    BARE,
    UNDER
  }

  private final GraphDraft draft;
  private final Prices prices;
  private final Solids solids;
  private final Terms terms;
  private final RingLine line;
  private final String lap;

  /** Openings that no leg goes over. */
  private final List<Pane> panes = new ArrayList<>();

  private final long round;

  RingNet(GraphDraft draft, Prices prices, Solids solids, Terms terms, List<Point2> corners) {
    this(draft, prices, solids, terms, corners, "");
  }

  /** {@code lap} tells this line from others of the same hollow, one round each building. */
  RingNet(
      GraphDraft draft,
      Prices prices,
      Solids solids,
      Terms terms,
      List<Point2> corners,
      String lap) {
    this.lap = lap;
    this.solids = solids;
    this.draft = draft;
    this.prices = prices;
    this.terms = terms;
    this.line = new RingLine(corners);
    this.round = line.round();
  }

  RingNet keepOff(List<Pane> openings) {
    panes.addAll(openings);
    return this;
  }

  /**
   * Lays one ring at each height and joins the entries to it; gaps count for heights inside them.
   */
  void connect(List<Entry> entries, long[] heights, List<Gap> gaps) {
    List<Stop> stops = new ArrayList<>();
    entries.forEach(e -> stops.addAll(line.stops(e)));
    stops.sort(Comparator.comparingLong(Stop::param).thenComparingInt(s -> s.entry().node()));
    for (long z : heights) {
      ring(stops, z, gaps.stream().filter(g -> g.takes(z)).toList(), gaps);
    }
    neighbours(stops, gaps);
  }

  private void ring(List<Stop> stops, long z, List<Gap> gaps, List<Gap> all) {
    int first = -1;
    int before = -1;
    Stop last = null;
    for (Stop s : stops) {
      long over = heightAt(s.param(), z, gaps);
      int base =
          draft.node(
              terms.hollow() + lap + "/line-" + z / 10_000_000 + "-" + s.param() / 1_000_000,
              s.foot().at(over),
              new int[0]);
      if (!hangs(s, over, all)) {
        leg(base, s.entry().node(), spur(s, over));
      }
      if (last != null && base != before) {
        leg(before, base, last.param(), s.param(), z, gaps);
      }
      first = first < 0 ? base : first;
      before = base;
      last = s;
    }
    if (before != first) {
      leg(before, first, last.param(), stops.get(0).param() + round, z, gaps);
    }
  }

  /** The height of a line at a place: over the door or the bare stretch that it lies in. */
  private static long heightAt(long param, long z, List<Gap> gaps) {
    return gaps.stream()
        .filter(g -> g.overZ() != Gap.NOT_PASSED && g.at().contains(param))
        .mapToLong(Gap::overZ)
        .max()
        .orElse(z);
  }

  /** Would cable go up or down where there is no wall? */
  private boolean hangs(Stop s, long z, List<Gap> gaps) {
    long at = terms.heights().clamp(s.entry().at().z());
    Interval way = new Interval(Math.min(at, z), Math.max(at, z) + 1);
    return gaps.stream()
        .anyMatch(
            g ->
                g.bare()
                    && g.at().contains(s.param())
                    && way.overlaps(new Interval(g.fromZ(), g.overZ() - 1)));
  }

  /** From the line up or down the wall to the height of the place, then to it. */
  private List<Point3> spur(Stop s, long z) {
    List<Point3> path = new ArrayList<>(List.of(s.foot().at(z)));
    path.addAll(last(s));
    return Paths.tidy(path);
  }

  /** From the wall to a place: at its own height, or just off the ceiling or floor it lies in. */
  private List<Point3> last(Stop s) {
    Point3 at = s.entry().at();
    long z = terms.heights().clamp(at.z()) - (s.entry().overhead() ? OFF_BOARDS : 0);
    return List.of(s.foot().at(z), at.withZ(z), at);
  }

  /** Also across the corner where the line begins: it is a ring, wherever its first corner lies. */
  private void neighbours(List<Stop> stops, List<Gap> gaps) {
    int n = stops.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < i + n; j++) {
        Stop b = stops.get(j % n);
        long to = b.param() + (j < n ? 0 : round);
        long apart = to - stops.get(i).param();
        if (apart > NEIGHBOURS) {
          break;
        }
        boolean joinedTheOtherWay = j >= n && round - apart <= NEIGHBOURS;
        if (!joinedTheOtherWay && b.entry() != stops.get(i).entry()) {
          neighbours(stops.get(i), b, to, gaps);
        }
      }
    }
  }

  /** {@code to} is where the second lies, counted on past the first corner. */
  private void neighbours(Stop a, Stop b, long to, List<Gap> gaps) {
    long z = terms.heights().clamp(Math.max(a.entry().at().z(), b.entry().at().z()));
    Interval between = new Interval(a.param(), Math.max(a.param() + 1, to));
    boolean blocked = gaps.stream().anyMatch(g -> g.takes(z) && g.touches(between, round));
    if (!blocked && !hangs(a, z, gaps) && !hangs(b, z, gaps)) {
      List<Point3> path = new ArrayList<>(Paths.reversed(last(a)));
      path.addAll(line(a.param(), to, z, List.of()));
      path.addAll(last(b));
      leg(a.entry().node(), b.entry().node(), Paths.tidy(path));
    }
  }

  /** The line from one distance to another at a height, round corners and over openings. */
  private List<Point3> line(long from, long to, long z, List<Gap> gaps) {
    List<Point3> out = new ArrayList<>();
    out.add(line.pointAt(from).at(heightAt(Math.floorMod(from, round), z, gaps)));
    List<long[]> events = new ArrayList<>();
    for (int turn = 0; turn <= 1; turn++) {
      for (long s : line.starts()) {
        events.add(new long[] {s + turn * round, z, z});
      }
      for (Gap g : gaps) {
        events.add(new long[] {g.at().lo() + turn * round, z, g.overZ()});
        events.add(new long[] {g.at().hi() + turn * round, g.overZ(), z});
      }
    }
    events.sort(Comparator.comparingLong((long[] e) -> e[0]));
    for (long[] e : events) {
      if (e[0] > from && e[0] < to) {
        List<Gap> in =
            gaps.stream()
                .filter(g -> g.at().lo() < e[0] % round && e[0] % round < g.at().hi())
                .toList();
        boolean over = !in.isEmpty();
        long zz = in.stream().mapToLong(Gap::overZ).max().orElse(z);
        out.add(line.pointAt(e[0]).at(over ? zz : e[1]));
        out.add(line.pointAt(e[0]).at(over ? zz : e[2]));
      }
    }
    out.add(line.pointAt(to).at(heightAt(Math.floorMod(to, round), z, gaps)));
    return Paths.tidy(out);
  }

  private void leg(int a, int b, long from, long to, long z, List<Gap> gaps) {
    if (gaps.stream().noneMatch(g -> g.shuts(from, to, round))) {
      leg(a, b, line(from, to, z, gaps));
    }
  }

  /** A leg that would run into something built in, or over an opening, is left out. */
  private void leg(int a, int b, List<Point3> path) {
    if (!Paths.clear(solids, path) || panes.stream().anyMatch(p -> p.crossedBy(path))) {
      return;
    }
    long price = prices.lay(terms.key(), Laid.lengthOf(path), terms.visible());
    RouteGraph.Piece leg =
        new RouteGraph.Piece.Leg(terms.hollow(), terms.kind(), path, false, price);
    draft.edge(a, b, List.of(leg), new int[0], new int[0], terms.ways(), terms.visible());
  }
}
