package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.OutdoorLinks;
import holloway.hollow.Stand;
import holloway.hollow.Way;
import holloway.hollow.WorkKind;
import holloway.house.Conduit;
import holloway.house.WallSpot;
import holloway.request.Wishes;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Links from building to building: both ends are on the outside, where a hand is. A duct is fished
 * like any tube; in a trench and along a span cable is laid. What has to be dug or strung first is
 * a work, paid once.
 */
final class OutdoorNet {
  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses;
  private final HandStands stands;
  private final Wishes wishes;
  private final Map<String, List<Entry>> entries;

  OutdoorNet(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Accesses accesses,
      HandStands stands,
      Wishes wishes,
      Map<String, List<Entry>> entries) {
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.accesses = accesses;
    this.stands = stands;
    this.wishes = wishes;
    this.entries = entries;
  }

  void bind() {
    for (Conduit c : house.framed().placed().house().conduits()) {
      Optional<Hollow> h = house.findHollow("conduit/" + c.name());
      if (c.outdoor().isPresent() && h.isPresent()) {
        int from = end(c, h.get(), c.from(), "from");
        int to = end(c, h.get(), c.to(), "to");
        if (c.kind().laid()) {
          lay(c, h.get(), from, to);
        }
      }
    }
  }

  /** The node at the link's own end, joined to the outside face in front of it. */
  private int end(Conduit c, Hollow h, WallSpot at, String which) {
    OnWall s = OutdoorLinks.spot(house.framed(), at).orElseThrow();
    Hollow outside =
        house.hollows().stream()
            .filter(o -> o.kind() == HollowKind.OUTSIDE_FACE && o.area().isEmpty())
            .findFirst()
            .orElseThrow();
    Point3 face = OutdoorLinks.face(s);
    Point3 mouth = OutdoorLinks.mouth(s);
    String id = h.id() + "/outdoor-" + which;
    int inside = draft.node(id, mouth);
    int front =
        draft.node(id + "/face", face, stands.at(outside, face, wishes).orElseThrow().works());
    draft.edge(
        front,
        inside,
        List.of(new RouteGraph.Piece.Pass(id + "/cut-out", List.of(face, mouth))),
        new int[0],
        new int[0],
        Way.OUTSIDE.bit(),
        false);
    entries.computeIfAbsent(outside.id(), k -> new ArrayList<>()).add(new Entry(front, face, true));
    if (h.blind()) {
      accesses.add(
          new Accesses.Access(
              inside, h.id(), mouth, "cut-out", "the end of the duct " + c.name(), new int[0]));
    }
    return inside;
  }

  private void lay(Conduit c, Hollow h, int from, int to) {
    List<Point3> path =
        Conduits.path(house.framed(), h, draft.nodes.get(from).at(), draft.nodes.get(to).at());
    long length = Laid.lengthOf(path);
    long price = prices.lay(c.kind() == Conduit.Kind.SPAN ? "span" : "trench", length, false);
    draft.edge(
        from,
        to,
        List.of(new RouteGraph.Piece.Leg(h.id(), h.kind(), path, false, price)),
        new int[0],
        c.kind() == Conduit.Kind.SPAN ? strung(h) : dug(house, draft, prices, h),
        Way.OUTSIDE.bit(),
        false);
  }

  private int[] strung(Hollow h) {
    Stand ladder =
        house.stands().stream().filter(s -> s.id().equals("ladder")).findFirst().orElseThrow();
    return new int[] {
      draft.work("set-up/ladder", WorkKind.ZONE, prices.zone(ladder.zone()), 0, 0, ladder.zone()),
      draft.work(h.id() + "/strung", WorkKind.ACCESS, prices.span(), 0, 0, "")
    };
  }

  /** The digging of a trench or of a duct that is not there yet; nothing for any other hollow. */
  static int[] dug(HollowHouse house, GraphDraft draft, Prices prices, Hollow h) {
    return house.framed().placed().house().conduits().stream()
        .filter(c -> h.id().equals("conduit/" + c.name()) && c.dug())
        .mapToInt(
            c ->
                draft.work(
                    h.id() + "/dug",
                    WorkKind.ACCESS,
                    prices.trench(c.length().value().nm()),
                    0,
                    0,
                    ""))
        .toArray();
  }
}
