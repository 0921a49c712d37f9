package holloway.routing;

import holloway.catalog.Fit;
import holloway.geometry.Box;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.Away;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Refused;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.hollow.Way;
import holloway.hollow.WorkKind;
import holloway.house.Found;
import holloway.request.Wishes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * Holes with their methods: who could bore each crossing, from which stand or through which access,
 * and what that needs.
 */
final class HoleBook {
  /** A crossing that is open already needs no hole. */
  static final int NONE = -1;

  static final int CANNOT = -2;

  /**
   * How far a flexible bit works from a cut-out or patch along a bay, and how far an arm with a
   * drill does; from experience.
   */
  private static final long FLEX = 1_500_000_000;

  static final long ARM = 450_000_000;
  private static final int MOST_METHODS = 6;

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses;
  private final HandStands stands;
  private final Wishes wishes;

  /** How the ids of boards begin in floors that are boarded. */
  private final List<String> boarded;

  private final Map<String, Integer> bySite = new HashMap<>();
  private final Map<Integer, List<RouteGraph.Step>> alike = new HashMap<>();
  private final List<Refused> refused = new ArrayList<>();

  HoleBook(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Accesses accesses,
      HandStands stands,
      Wishes wishes) {
    this.house = house;
    this.boarded =
        house.framed().decks().stream()
            .filter(d -> d.spec().boards())
            .map(d -> d.id() + "/subfloor")
            .toList();
    this.draft = draft;
    this.prices = prices;
    this.accesses = accesses;
    this.stands = stands;
    this.wishes = wishes;
  }

  List<Refused> refused() {
    return refused;
  }

  /**
   * The hole's id, {@link #NONE} for an existing opening, {@link #CANNOT} when nobody can make it.
   */
  int of(Site s) {
    return bySite.computeIfAbsent(s.id(), k -> make(s));
  }

  /** An existing tube takes cables like a bore of its inside diameter; {@link #NONE} for others. */
  int tube(Hollow h) {
    if (h.kind() != HollowKind.CONDUIT && h.kind() != HollowKind.OLD_CABLE) {
      return NONE;
    }
    return bySite.computeIfAbsent(h.id(), k -> tubeOf(h));
  }

  private int tubeOf(Hollow h) {
    int inside =
        house.framed().placed().house().conduits().stream()
            .filter(c -> h.id().equals("conduit/" + c.name()))
            .mapToInt(c -> TubeRoom.of(c))
            .findFirst()
            .orElseThrow();
    Point3 at = h.frame().toWorld(h.clear().centre());
    int id = draft.holes.size();
    draft.holes.add(
        new RouteGraph.Hole(
            id,
            h.id(),
            h.kind().word(),
            at,
            at,
            h.id(),
            h.id(),
            List.of(),
            List.of(new RouteGraph.Step(inside, 0)),
            OptionalLong.empty(),
            true,
            false,
            0,
            List.of()));
    return id;
  }

  private int make(Site s) {
    if (s.made() && s.pierces().isEmpty()) {
      return NONE;
    }
    OptionalInt made = alreadyThere(s);
    List<RouteGraph.Method> methods = made.isPresent() ? List.of() : methods(s);
    if (made.isEmpty() && methods.isEmpty()) {
      refused.add(
          new Refused(
              s.kind().word() + " at " + s.id(),
              s.middle(),
              "no stand or access within reach of either side to bore it from",
              "from experience"));
      return CANNOT;
    }
    List<RouteGraph.Step> steps =
        made.isPresent() ? List.of(new RouteGraph.Step(made.getAsInt(), 0)) : steps(s, methods);
    List<String> pierced =
        s.layers().stream()
            .map(l -> l.what() + " " + Math.round(l.thickness() / 1e6) + " mm")
            .toList();
    int id = draft.holes.size();
    draft.holes.add(
        new RouteGraph.Hole(
            id,
            s.id(),
            s.kind().word(),
            s.a(),
            s.b(),
            s.hollowA(),
            s.hollowB(),
            methods,
            steps,
            second(s),
            made.isPresent(),
            s.assumed(),
            ways(s),
            pierced));
    return id;
  }

  /** Millimetres of a hole that the work uncovered, or of the opening punched in a steel stud. */
  private OptionalInt alreadyThere(Site s) {
    if (s.made()) {
      return OptionalInt.of(s.largestBit());
    }
    return house.framed().placed().house().found().stream()
        .filter(f -> f instanceof Found.HoleMade m && m.id().equals(s.id()))
        .mapToInt(f -> (int) (((Found.HoleMade) f).diameter().nm() / 1_000_000))
        .findFirst();
  }

  /** What some method can bore. Where steel costs nothing, all that take the same bits share it. */
  private List<RouteGraph.Step> steps(Site s, List<RouteGraph.Method> methods) {
    boolean flexible = methods.stream().allMatch(RouteGraph.Method::flexible);
    return prices.money().paysForSteel()
        ? steps(s, flexible)
        : alike.computeIfAbsent(flexible ? -s.platedBit() : s.platedBit(), k -> steps(s, flexible));
  }

  private List<RouteGraph.Step> steps(Site s, boolean flexible) {
    List<RouteGraph.Step> out = new ArrayList<>();
    for (int step = 0; step < Fit.BITS_MM.size(); step++) {
      int bit = Fit.BITS_MM.get(step);
      if (bit <= s.platedBit() && (!flexible || Fit.FLEXIBLE_MM.contains(bit))) {
        out.add(new RouteGraph.Step(bit, step * prices.bitStep() + prices.money().plates(s, bit)));
      }
    }
    return List.copyOf(out);
  }

  /**
   * Room for a second bore beside the first: plates, floors and boards whose hollows are wide
   * enough on both sides.
   */
  private OptionalLong second(Site s) {
    boolean may =
        switch (s.kind()) {
          case TOP_PLATE,
                  BOTTOM_PLATE,
                  CEILING,
                  FLOOR,
                  CEILING_AND_FLOOR,
                  WALL_THROUGH,
                  OUTER_THROUGH ->
              true;
          default -> false;
        };
    for (String id : List.of(s.hollowA(), s.hollowB())) {
      Hollow h = house.findHollow(id).orElseThrow();
      may &= h.kind() != HollowKind.STUD_BAY || h.clear().x().length() >= 250_000_000;
    }
    return may ? OptionalLong.of(prices.second()) : OptionalLong.empty();
  }

  private int ways(Site s) {
    return s.hollowA().startsWith("outside/") || s.hollowB().startsWith("outside/")
        ? Way.OUTSIDE.bit()
        : 0;
  }

  /**
   * The cheapest few. Of those that cost and are called the same the nearest are among them: which
   * are left out is not for ids to say, since they are counted from one side.
   */
  private List<RouteGraph.Method> methods(Site s) {
    List<Reach> all = new ArrayList<>();
    double minutes = prices.boring(s, throughBoards(s));
    from(s, minutes, s.hollowA(), s.a(), all);
    from(s, minutes, s.hollowB(), s.b(), all);
    Comparator<RouteGraph.Method> cheap =
        Comparator.comparingLong(this::price).thenComparing(RouteGraph.Method::words);
    Comparator<Point2> away = new Away(house.framed().placed().house().layout()).order();
    all.sort(
        Comparator.comparing(Reach::method, cheap)
            .thenComparingLong(r -> Math.round(r.at.distanceTo(s.middle()) / 1e6))
            .thenComparing(r -> r.at.plan(), away)
            .thenComparingLong(r -> r.at.z()));
    return all.stream()
        .limit(MOST_METHODS)
        .map(Reach::method)
        .sorted(cheap.thenComparing(RouteGraph.Method::stand))
        .toList();
  }

  /** A method, and where a hand is then. */
  private record Reach(RouteGraph.Method method, Point3 at) {}

  private long price(RouteGraph.Method m) {
    long sum = 0;
    for (int w : m.works()) {
      sum += draft.works.get(w).price();
    }
    return sum;
  }

  private boolean throughBoards(Site s) {
    return boarded.stream().anyMatch(b -> s.pierces().stream().anyMatch(p -> p.startsWith(b)));
  }

  /**
   * @param minutes of the bore itself
   */
  private void from(Site s, double minutes, String hollow, Point3 end, List<Reach> out) {
    Hollow h = house.findHollow(hollow).orElseThrow();
    if (!h.blind()) {
      stands
          .at(h, end, wishes)
          .ifPresent(
              st ->
                  out.add(
                      new Reach(
                          method(s, minutes, st.stand(), "from " + st.words(), st.id(), st.works()),
                          end)));
      return;
    }
    for (Accesses.Access a : accesses.in(hollow)) {
      long d = distance(h, a.at(), end, s.kind());
      if (d >= 0) {
        String stand = d <= ARM ? a.stand() : "cut-out";
        String id = draft.nodes.get(a.node()).name();
        out.add(new Reach(method(s, minutes, stand, "from " + a.words(), id, a.works()), a.at()));
      }
    }
  }

  /**
   * How far the bit reaches from an access to this end of the axis, or −1 when it does not get
   * there.
   */
  private static long distance(Hollow h, Point3 from, Point3 to, SiteKind kind) {
    Point3 a = h.frame().toLocal(from);
    Point3 b = h.frame().toLocal(to);
    Box c = h.clear();
    if (h.kind().isLying()) {
      long d = Math.abs(a.x() - b.x());
      return d <= ARM ? d : -1;
    }
    // Under stairs and over a soffit an arm reaches any way, and no bit finds its own.
    if (h.id().startsWith("stairs/") || h.kind() == HollowKind.SOFFIT) {
      long d = a.distanceTo(b);
      return d <= ARM ? d : -1;
    }
    boolean endOfBay = b.z() <= c.z0() + 20_000_000 || b.z() >= c.z1() - 20_000_000;
    long d = Math.abs(a.z() - b.z());
    return d <= (endOfBay ? FLEX : 160_000_000) ? d : -1;
  }

  private RouteGraph.Method method(
      Site s, double minutes, String stand, String words, String standId, int[] needs) {
    long price = prices.bore(s, minutes, stand);
    int bore = draft.work(s.id() + "/bore/" + standId, WorkKind.BORE, price, 1, 0, "");
    int[] works = new int[needs.length + 1];
    System.arraycopy(needs, 0, works, 0, needs.length);
    works[needs.length] = bore;
    return new RouteGraph.Method(words, standId, works, stand.equals("cut-out"));
  }
}
