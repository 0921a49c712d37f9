package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.HollowHouse;
import holloway.house.Conduit;
import holloway.house.WallSpot;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The boxes at both ends of existing tubes: open already, reached from their room's surface. */
final class ConduitEnds {
  private static final long OFF_FACE = 12_000_000;

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Accesses accesses;
  private final Map<String, List<Entry>> entries;

  /**
   * @param entries entries of hand hollows by hollow id; the boxes' faces are added
   */
  ConduitEnds(
      HollowHouse house, GraphDraft draft, Accesses accesses, Map<String, List<Entry>> entries) {
    this.house = house;
    this.draft = draft;
    this.accesses = accesses;
    this.entries = entries;
  }

  void bind() {
    for (Conduit c : house.framed().placed().house().conduits()) {
      if (c.outdoor().isEmpty() && house.findHollow("conduit/" + c.name()).isPresent()) {
        end(c, c.from(), "from");
        end(c, c.to(), "to");
      }
    }
  }

  private void end(Conduit c, WallSpot at, String which) {
    Optional<OnWall> spot =
        house.framed().placed().findSpot(at.face(), at.along(), at.height().value().nm());
    if (spot.isEmpty()) {
      return;
    }
    OnWall s = spot.get();
    String hollow = "conduit/" + c.name();
    String id = hollow + "/" + which;
    Point3 mouth = s.wall().world(s.s(), s.wall().core().mid(), s.z());
    long off = s.side() == 0 ? -OFF_FACE : s.wall().thickness() + OFF_FACE;
    Point3 face = s.wall().world(s.s(), off, s.z());
    int inside = draft.node(id, mouth);
    int front = draft.node(id + "/face", face);
    accesses.add(
        new Accesses.Access(
            inside,
            hollow,
            mouth,
            "cut-out",
            "the box of "
                + (c.kind() == Conduit.Kind.TUBE ? "the conduit " : "the old cable ")
                + c.name(),
            new int[0]));
    draft.edge(
        front,
        inside,
        List.of(new RouteGraph.Piece.Pass(id + "/cut-out", List.of(face, mouth))),
        new int[0],
        new int[0],
        0,
        false);
    entries
        .computeIfAbsent(at.face().room() + "/surface", k -> new ArrayList<>())
        .add(new Entry(front, face, true));
  }
}
