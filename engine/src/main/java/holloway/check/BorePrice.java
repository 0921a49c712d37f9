package holloway.check;

import holloway.catalog.Fit;
import holloway.framing.MemberKind;
import holloway.hollow.AccessPlace;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.Stand;
import holloway.plan.Plan;
import holloway.request.Effort;
import java.util.Optional;

/**
 * Minutes that a bore ought to take: set-up and what the bit goes through, the bit's size, all
 * times the factor of the stand, and the seal.
 */
final class BorePrice {
  private static final double PLY_MM = 38;

  private final Evidence evidence;
  private final Effort effort;

  BorePrice(Evidence evidence) {
    this.evidence = evidence;
    this.effort = evidence.request().effort();
  }

  /** What the bore work itself costs: the smallest bit, once. */
  double bore(Plan.PlannedHole hole, Site site) {
    double through = effort.get("bore.set-up");
    for (Site.Layer layer : site.layers()) {
      through += layer(layer, site);
    }
    return through * effort.get("stand." + standKind(hole, site)) + effort.get("seal.hole");
  }

  /** Only a flexible-shaft bit gets there, which is not made in every size. */
  boolean flexible(Plan.PlannedHole hole, Site site) {
    return standKind(hole, site).equals("cut-out");
  }

  /** A wider bit: so much a size above the smallest, wherever one stands. */
  double widerBit(int diameterMm) {
    return Math.max(0, Fit.BITS_MM.indexOf(diameterMm)) * effort.get("bore.bit-step");
  }

  private double layer(Site.Layer layer, Site site) {
    double mm = layer.thickness() / 1e6;
    if (layer.what().equals("void") || layer.what().equals("opening")) {
      return effort.get("bore.void");
    }
    if (layer.what().equals("closing board")) {
      return effort.get("bore.board");
    }
    MemberKind kind = kindOf(layer.what());
    return switch (kind) {
      case TOP_PLATE, BOTTOM_PLATE -> Math.ceil(mm / PLY_MM - 0.01) * effort.get("bore.plate-ply");
      case JOIST, CEILING_JOIST, BLOCKING -> effort.get("bore.joist");
      case RIM, LEDGER -> effort.get("bore.rim");
      case SUBFLOOR -> effort.get(oldBoards(site) ? "bore.boards-old" : "bore.subfloor");
      case LINING -> effort.get("bore.board");
      case CLADDING -> effort.get("bore.cladding");
      case MASONRY, SLAB -> mm / 100 * effort.get("bore.masonry-100mm");
      default -> effort.get("bore.stud");
    };
  }

  private static MemberKind kindOf(String word) {
    for (MemberKind k : MemberKind.values()) {
      if (k.word().equals(word)) {
        return k;
      }
    }
    return MemberKind.OBSTACLE;
  }

  private boolean oldBoards(Site site) {
    return evidence.house().framed().decks().stream()
        .filter(d -> d.spec().boards())
        .anyMatch(d -> site.pierces().stream().anyMatch(p -> p.startsWith(d.id() + "/subfloor")));
  }

  /** The word of the effort table for where the person stands. */
  private String standKind(Plan.PlannedHole hole, Site site) {
    Optional<Stand> stand = evidence.stand(hole.stand());
    if (stand.isEmpty()) {
      return throughOpening(hole, site);
    }
    if (hole.stand().equals("outside")) {
      return "outside";
    }
    String zone = stand.get().zone();
    return zone.startsWith("attic") ? "attic" : zone.isEmpty() ? "room" : zone;
  }

  /** Near an opening one works through it; farther off a flexible bit goes in blind. */
  private String throughOpening(Plan.PlannedHole hole, Site site) {
    for (AccessPlace a : evidence.house().accesses()) {
      if (a.id().equals(hole.stand())) {
        boolean near = along(a.hollow(), Mm.of(a.at()), site) <= FishLimits.ARM_MM;
        boolean boards = a.kind() == AccessPlace.Kind.LIFTED_BOARDS;
        boolean box =
            a.kind() == AccessPlace.Kind.DATA_BOX || a.kind() == AccessPlace.Kind.REGISTER;
        return !near || box ? "cut-out" : boards ? "room" : "patch";
      }
    }
    return hole.stand().startsWith("chase/") ? "chase" : "cut-out";
  }

  /**
   * Distance along a hollow's length from a place in it to the end of a crossing there; straight
   * where a void hangs, in which an arm goes any way.
   */
  private double along(String hollow, Mm from, Site site) {
    Optional<Hollow> h = evidence.house().findHollow(hollow);
    Mm end = Mm.of(site.hollowA().equals(hollow) ? site.a() : site.b());
    if (h.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    if (h.get().kind() == HollowKind.SOFFIT) {
      return from.to(end);
    }
    Solid clear = new Solid(h.get().frame(), h.get().clear());
    int axis =
        switch (h.get().kind()) {
          case JOIST_BAY, BATTEN_VOID, SERVICE_VOID, PORCH_VOID -> 0;
          default -> 2;
        };
    return Math.abs(clear.local(from)[axis] - clear.local(end)[axis]);
  }
}
