package holloway.routing;

import holloway.framing.Attic;
import holloway.framing.Deck;
import holloway.geometry.Point3;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Refused;
import holloway.hollow.Site;
import holloway.hollow.Solids;
import holloway.hollow.Way;
import holloway.hollow.WorkKind;
import holloway.request.Request;
import holloway.request.Wishes;
import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The routing stage: lays a request over the hollow house and gives the graph that the joint plan
 * is made on.
 */
public final class Routing {
  private final HollowHouse house;
  private final Request request;
  private final Wishes wishes;
  private final GraphDraft draft = new GraphDraft();
  private final Prices prices;
  private final Accesses accesses = new Accesses();
  private final Solids solids;
  private final HandStands stands;
  private final HoleBook book;
  private final EndBinder binder;
  private final FaceNets faces;
  private final Map<String, Integer> handNodes = new TreeMap<>();
  private final String ground;

  /** The graph, and what could not be had, for "why not". */
  public record Routed(RouteGraph graph, List<Refused> refused) {}

  private Routing(HollowHouse house, Request request) {
    this.house = house;
    this.request = request;
    this.wishes = request.wishes();
    this.prices = new Prices(request.effort(), wishes);
    this.solids = new Solids(house.framed().members());
    this.ground = groundLevel(house.framed().placed());
    long groundZ = house.framed().placed().getLevel(ground).floorZ();
    this.stands = new HandStands(house, draft, prices, groundZ);
    this.book = new HoleBook(house, draft, prices, accesses, stands, wishes);
    this.binder = new EndBinder(house, draft, prices, accesses, solids);
    this.faces = new FaceNets(house.framed().placed(), ground, draft, prices, solids);
  }

  public static Routed of(HollowHouse house, Ends ends, Request request) {
    Routing r = new Routing(house, request);
    r.build(ends);
    List<Refused> refused = new ArrayList<>(house.refused());
    refused.addAll(r.book.refused());
    refused.addAll(r.binder.refused);
    return new Routed(r.draft.finish(), refused);
  }

  /** The lowest level with a door in an outer wall, else the lowest: what "outside" starts from. */
  private static String groundLevel(Placed placed) {
    return placed.levels().stream()
        .filter(
            l ->
                placed.walls().stream()
                    .anyMatch(
                        w ->
                            w.level().equals(l.name())
                                && w.isOuter()
                                && w.openings().stream()
                                    .anyMatch(
                                        o ->
                                            o.opening().kind()
                                                == holloway.house.Opening.Kind.DOOR)))
        .findFirst()
        .orElse(placed.levels().get(0))
        .name();
  }

  private void build(Ends ends) {
    binder.bind(ends);
    new ConduitEnds(house, draft, accesses, binder.entries).bind();
    patches();
    for (Site s : house.sites()) {
      hand(s, s.hollowA(), s.a());
      hand(s, s.hollowB(), s.b());
    }
    for (Site s : house.sites()) {
      Integer a = handNodes.get(s.id() + "@" + s.hollowA());
      Integer b = handNodes.get(s.id() + "@" + s.hollowB());
      if (a != null && b != null) {
        int hole = book.of(s);
        draft.edge(
            a,
            b,
            List.of(new RouteGraph.Piece.Pass(s.id(), List.of(s.a(), s.b()))),
            hole >= 0 ? new int[] {hole} : new int[0],
            new int[0],
            0,
            false);
      }
    }
    nets();
    new ChannelLinks(house, draft, prices, handNodes).find(ends);
    new Fishes(house, draft, prices, solids, accesses, book).find(handNodes);
  }

  /** Places that could be opened, as nodes whose works are the opening. */
  private void patches() {
    for (AccessPlace a : house.accesses()) {
      if (wishes.avoid().contains(a.room())) {
        continue;
      }
      boolean boards = a.kind() == AccessPlace.Kind.LIFTED_BOARDS;
      int work =
          draft.work(
              a.id(),
              boards ? WorkKind.ACCESS : WorkKind.PATCH,
              prices.open(a),
              boards ? 0 : 1,
              boards ? 0 : 1,
              "");
      int node = draft.node(a.id(), a.at(), work);
      String words =
          boards
              ? "lifted boards in the " + a.room()
              : "a patch in the "
                  + (a.kind() == AccessPlace.Kind.CEILING_PATCH ? "ceiling" : "wall")
                  + " of the "
                  + a.room();
      accesses.add(
          new Accesses.Access(
              node, a.hollow(), a.at(), boards ? "room" : "patch", words, new int[] {work}));
    }
  }

  /** A node where a crossing ends in a hand hollow that may be worked from. */
  private void hand(Site s, String hollow, Point3 end) {
    Hollow h = house.findHollow(hollow).orElseThrow();
    if (h.blind() || HandStands.isOutside(h) && tooLow(end) || book.of(s) == HoleBook.CANNOT) {
      return;
    }
    stands
        .at(h, end, wishes)
        .ifPresent(
            st -> {
              int node = draft.node(s.id() + "@" + hollow, end, st.works());
              handNodes.put(s.id() + "@" + hollow, node);
            });
  }

  /** Earth lies against the wall below the ground floor, save for the rim just under it. */
  private boolean tooLow(Point3 end) {
    return end.z() < house.framed().placed().getLevel(ground).floorZ() - 400_000_000;
  }

  private void nets() {
    Map<String, List<Entry>> entries = new TreeMap<>(binder.entries);
    for (Site s : house.sites()) {
      for (String hollow : List.of(s.hollowA(), s.hollowB())) {
        Integer node = handNodes.get(s.id() + "@" + hollow);
        if (node != null) {
          List<Entry> list = new ArrayList<>(entries.getOrDefault(hollow, List.of()));
          list.add(new Entry(node, draft.nodes.get(node).at(), isHub(s)));
          entries.put(hollow, list);
        }
      }
    }
    entries.forEach((hollow, list) -> net(house.findHollow(hollow).orElseThrow(), list));
  }

  /**
   * A bay without an outlet in it is one among many; everything else gets laying lines of its own.
   */
  private boolean isHub(Site s) {
    return switch (s.kind()) {
      case TOP_PLATE, BOTTOM_PLATE ->
          accesses.in(s.hollowA()).stream().anyMatch(a -> a.stand().equals("cut-out"));
      default -> true;
    };
  }

  private void net(Hollow h, List<Entry> entries) {
    Optional<HandStands.Hand> stand =
        stands.at(h, draft.nodes.get(entries.get(0).node()).at(), wishes);
    if (h.kind() == HollowKind.OUTSIDE_FACE) {
      faces.outside(h, entries);
    } else if (h.kind() == HollowKind.ATTIC
        || h.kind() == HollowKind.CRAWLSPACE
        || h.id().startsWith("under/")) {
      stand.ifPresent(st -> new LayNet(draft, prices, solids, layTerms(h, st)).connect(entries));
    } else if (h.kind() == HollowKind.ROOM_SURFACE && stand.isPresent()) {
      faces.room(h, entries);
    }
  }

  private LayNet.Terms layTerms(Hollow h, HandStands.Hand st) {
    if (h.kind() == HollowKind.ATTIC) {
      Attic a =
          house.framed().attics().stream()
              .filter(x -> ("attic/" + x.id()).equals(h.id()))
              .findFirst()
              .orElseThrow();
      return new LayNet.Terms(
          h,
          "attic",
          a.chordTopZ() + 25_000_000,
          a.plateZ() + 60_000_000,
          st.works(),
          Way.ATTIC.bit());
    }
    Deck d =
        house.framed().decks().stream()
            .filter(x -> x.id().equals(h.owner()))
            .findFirst()
            .orElseThrow();
    long floor = d.frame().origin().z();
    String key = h.kind() == HollowKind.CRAWLSPACE ? "crawlspace" : "cellar";
    return new LayNet.Terms(
        h,
        key,
        floor + d.joistZ().lo() - 25_000_000,
        floor + d.joistZ().mid(),
        st.works(),
        Way.UNDER_FLOOR.bit());
  }
}
