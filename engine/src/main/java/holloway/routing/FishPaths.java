package holloway.routing;

import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Solids;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Where a rod or an arm goes inside a blind hollow, and what that costs. */
record FishPaths(HollowHouse house, Prices prices, Solids solids) {
  /** An arm's way inside a hollow, empty when it does not get there. */
  List<Point3> reach(Hollow h, Point3 from, Point3 to) {
    List<Point3> path = Paths.inside(h, from, to);
    boolean gets = Laid.lengthOf(path) <= HoleBook.ARM && Paths.clear(solids, path);
    return gets ? path : List.of();
  }

  /** The path of a leg, empty when it is too long for a fish or something is in the way. */
  List<Point3> path(Hollow h, Point3 from, Point3 to) {
    if (isDrawn(h)) {
      List<Point3> drawn = Conduits.path(house.framed(), h, from, to);
      return isInReach(h, drawn) ? drawn : List.of();
    }
    List<Point3> path = Paths.inside(h, from, to);
    if (!isInReach(h, path)) {
      return List.of();
    }
    if (Paths.clear(solids, path)) {
      return path;
    }
    // turning at the other corner, as the way back would: or it hung on which end is named first
    List<Point3> other = new ArrayList<>(Paths.inside(h, to, from));
    Collections.reverse(other);
    return Paths.clear(solids, other) && isInReach(h, other) ? other : List.of();
  }

  private boolean isInReach(Hollow h, List<Point3> path) {
    // A tube is as long as its parts, each of which can be drawn through: else it is no space.
    int goes = 1 + Conduits.pullBoxes(house.framed(), h);
    return Laid.lengthOf(path) <= goes * FishLimits.most(h.kind(), h.fill());
  }

  /** Where a tube or an old cable runs nobody knows: its way is drawn, not looked for. */
  private static boolean isDrawn(Hollow h) {
    return h.kind().isDrawn();
  }

  /** From an opening to a bore within an arm's length no rod is needed: the hand is there. */
  RouteGraph.Piece leg(Hollow h, List<Point3> path, boolean open) {
    boolean reached = open && Laid.lengthOf(path) <= HoleBook.ARM;
    long price = leg(h, path) + (reached ? 0 : prices.fishSetUp());
    return new RouteGraph.Piece.Leg(h.id(), h.kind(), path, !reached, price);
  }

  long leg(Hollow h, List<Point3> path) {
    long turns =
        h.kind() == HollowKind.CONDUIT
            ? prices.turns(Conduits.bends(house.framed(), h))
                + Conduits.pullBoxes(house.framed(), h) * prices.handOver()
            : 0;
    return turns + prices.fishLeg(h.kind(), h.fill(), Laid.lengthOf(path));
  }
}
