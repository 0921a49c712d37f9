package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.hollow.WorkKind;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.List;

/**
 * On solid walls: a channel cut into the plaster from an outlet up to the ceiling or down to the
 * floor, where a bore leads on.
 */
final class ChannelLinks {
  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final HandNodes handNodes;

  ChannelLinks(HollowHouse house, GraphDraft draft, Prices prices, HandNodes handNodes) {
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.handNodes = handNodes;
  }

  void find(Ends ends) {
    ends.spots()
        .forEach(
            (name, spots) -> {
              for (int k = 0; k < spots.size(); k++) {
                Ends.EndSpot s = spots.get(k);
                if (s.onWall().isPresent() && !s.outside() && !s.onWall().get().wall().isFramed()) {
                  link(k == 0 ? name : name + "@" + (k + 1), s);
                }
              }
            });
  }

  private void link(String id, Ends.EndSpot spot) {
    OnWall s = spot.onWall().orElseThrow();
    Point3 face =
        s.wall()
            .world(s.s(), s.side() == 0 ? -12_000_000 : s.wall().thickness() + 12_000_000, s.z());
    for (Hollow channel : house.hollows()) {
      if (isOwn(channel, s, face)) {
        for (Site site : house.sites()) {
          boolean upOrDown = site.kind() == SiteKind.CEILING || site.kind() == SiteKind.FLOOR;
          int end = handNodes.at(site, spot.room() + "/surface");
          if (upOrDown
              && end >= 0
              && channel.clear().contains(channel.frame().toLocal(site.a()), 1_000_000)) {
            cut(id, face, channel, site, end);
          }
        }
      }
    }
  }

  /** The strip of this outlet's own; one that lies beside it belongs to the outlet it is for. */
  private static boolean isOwn(Hollow channel, OnWall s, Point3 face) {
    return channel.kind() == HollowKind.CHANNEL
        && channel.owner().equals(s.wall().id())
        && Math.abs((channel.clear().x0() + channel.clear().x1()) / 2 - s.s()) <= 5_000_000
        && channel.clear().contains(channel.frame().toLocal(face), 1_000_000);
  }

  /** Each outlet's groove is a work of its own: two of them to one bore are of unlike length. */
  private void cut(String id, Point3 face, Hollow channel, Site site, int end) {
    List<Point3> path = Paths.tidy(List.of(face, face.withZ(site.a().z()), site.a()));
    long length = Laid.lengthOf(path);
    int work =
        draft.work(
            channel.id() + "/to/" + site.id() + "/from/" + id,
            WorkKind.CHANNEL,
            prices.channel(length),
            0,
            0,
            "");
    List<RouteGraph.Piece> pieces = new ArrayList<>();
    pieces.add(
        new RouteGraph.Piece.Leg(
            channel.id(), channel.kind(), path, false, prices.lay("plain", length, false)));
    Integer node =
        draft.nodes.stream()
            .filter(n -> n.name().equals(id) || n.name().equals(id + "/face"))
            .filter(n -> n.at().equals(face))
            .map(RouteGraph.Node::id)
            .findFirst()
            .orElse(null);
    if (node != null) {
      draft.edge(node, end, pieces, new int[0], new int[] {work}, 0, false);
    }
  }
}
