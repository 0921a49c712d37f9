package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.Refused;
import holloway.hollow.Site;
import holloway.hollow.Solids;
import holloway.request.Request;
import holloway.request.Wishes;
import java.util.ArrayList;
import java.util.List;

/**
 * The routing stage: lays a request over the hollow house and gives the graph that the joint plan
 * is made on.
 */
public final class Routing {
  private final HollowHouse house;
  private final Request request;
  private final Wishes wishes;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses = new Accesses();
  private final Solids solids;
  private final HandStands stands;
  private final HoleBook book;
  private final EndBinder binder;
  private final FaceNets faces;
  private final HandNodes handNodes = new HandNodes();
  private final String ground;

  /** The graph, and what could not be had, for "why not". */
  public record Routed(RouteGraph graph, List<Refused> refused, Spending money) {}

  private final RoutingMemory memory;

  private Routing(HollowHouse house, Request request, RoutingMemory memory) {
    this.memory = memory;
    this.house = house;
    this.request = request;
    this.wishes = request.wishes();
    Spending money = new Spending(request, house.framed().placed().walls());
    this.draft = new GraphDraft(money);
    this.prices = new Prices(request.effort(), wishes, money);
    RoutingMemory.House known = memory.house(house.framed());
    this.solids = known.solids();
    this.ground = known.ground();
    long groundZ = house.framed().placed().getLevel(ground).floorZ();
    this.stands = new HandStands(house, draft, prices, groundZ);
    this.book = new HoleBook(house, draft, prices, accesses, stands, wishes);
    this.binder = new EndBinder(house, draft, prices, accesses, solids, stands, wishes);
    this.faces =
        new FaceNets(house.framed().placed(), ground, draft, prices, solids, known.lines());
  }

  public static Routed of(HollowHouse house, Ends ends, Request request) {
    return of(house, ends, request, new RoutingMemory(request));
  }

  /** As without {@code memory}, and the very same; what is remembered is not looked for again. */
  public static Routed of(HollowHouse house, Ends ends, Request request, RoutingMemory memory) {
    if (!memory.isOf(request)) {
      throw new IllegalArgumentException("ways are remembered at other prices");
    }
    Routing r = new Routing(house, request, memory);
    r.build(ends);
    List<Refused> refused = new ArrayList<>(house.refused());
    refused.addAll(r.book.refused());
    refused.addAll(r.binder.refused);
    OwnSpaces own = new OwnSpaces(house.framed().placed().house().ownRules(), request);
    RouteGraph graph = own.over(r.draft.finish());
    refused.addAll(own.refused);
    graph = new ThinVoids(house, request, refused).over(graph);
    return new Routed(graph, refused, r.prices.money());
  }

  private void build(Ends ends) {
    binder.bind(ends);
    new ConduitEnds(house, draft, accesses, binder.entries).bind();
    new OutdoorNet(house, draft, prices, accesses, stands, wishes, binder.entries).bind();
    new OpenedPlaces(house, draft, prices, accesses, wishes).bind();
    for (Site s : house.sites()) {
      hand(s, s.hollowA(), s.a());
      hand(s, s.hollowB(), s.b());
    }
    for (Site s : house.sites()) {
      int a = handNodes.at(s, s.hollowA());
      int b = handNodes.at(s, s.hollowB());
      if (a >= 0 && b >= 0) {
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
    new HandNets(house, draft, prices, solids, accesses, stands, wishes, faces, memory.nets)
        .connect(binder.entries, handNodes);
    new ChannelLinks(house, draft, prices, handNodes).find(ends);
    new Fishes(house, draft, prices, solids, accesses, book, memory.fishes).find(handNodes);
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
              handNodes.put(s, hollow, node);
            });
  }

  /** Earth lies against the wall below the ground floor, save for the rim just under it. */
  private boolean tooLow(Point3 end) {
    return end.z() < house.framed().placed().getLevel(ground).floorZ() - 400_000_000;
  }
}
