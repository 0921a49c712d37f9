package holloway.routing;

import holloway.geometry.Point3;
import java.util.List;

/**
 * Pieces with their price and length. What they lie in and pass is kept as bits, one of 64 for each
 * name, by which most that differ in it are told apart at a glance; two names may share a bit.
 *
 * @param length nanometres
 * @param hollows bits of the hollows of its legs
 * @param sites bits of what it passes
 */
record Laid(List<RouteGraph.Piece> pieces, long price, long length, long hollows, long sites) {
  static Laid of(List<RouteGraph.Piece> pieces) {
    long price = 0;
    long length = 0;
    long hollows = 0;
    long sites = 0;
    for (RouteGraph.Piece p : pieces) {
      length += lengthOf(p.path());
      if (p instanceof RouteGraph.Piece.Leg leg) {
        price += leg.price();
        hollows |= bit(leg.hollow());
      } else if (p instanceof RouteGraph.Piece.Pass pass) {
        sites |= bit(pass.site());
      }
    }
    return new Laid(List.copyOf(pieces), price, length, hollows, sites);
  }

  /** The bit of a name, by the high bits of a product that all of its hash has a part in. */
  static long bit(String name) {
    return 1L << (name.hashCode() * 0x9E3779B9 >>> 26);
  }

  static long lengthOf(List<Point3> path) {
    long sum = 0;
    for (int i = 0; i + 1 < path.size(); i++) {
      sum += path.get(i).distanceTo(path.get(i + 1));
    }
    return sum;
  }
}
