package holloway.check;

import holloway.catalog.Fit;
import holloway.framing.Deck;
import holloway.framing.MemberKind;
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

  double of(Plan.PlannedHole hole, Site site) {
    double through = effort.get("bore.set-up");
    for (Site.Layer layer : site.layers()) {
      through += layer(layer);
    }
    int steps = Math.max(0, Fit.BITS_MM.indexOf(hole.diameterMm()));
    through += steps * effort.get("bore.bit-step");
    return through * effort.get("stand." + standKind(hole)) + effort.get("seal.hole");
  }

  private double layer(Site.Layer layer) {
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
      case RIM -> effort.get("bore.rim");
      case SUBFLOOR -> effort.get(oldBoards() ? "bore.boards-old" : "bore.subfloor");
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

  private boolean oldBoards() {
    return evidence.house().framed().decks().stream().map(Deck::spec).anyMatch(s -> s.boards());
  }

  /** The word of the effort table for where the person stands. */
  private String standKind(Plan.PlannedHole hole) {
    Optional<Stand> stand = evidence.stand(hole.stand());
    if (stand.isEmpty()) {
      return hole.stand().contains("cut-out")
          ? "cut-out"
          : hole.stand().contains("chase") ? "chase" : "patch";
    }
    String zone = Zones.kind(stand.get().zone());
    if (zone.startsWith("attic")) {
      return "attic";
    }
    if (!zone.isEmpty()) {
      return zone;
    }
    boolean outside =
        evidence.house().hollows().stream()
            .anyMatch(
                h ->
                    h.kind() == HollowKind.OUTSIDE_FACE
                        && h.stand().equals(Optional.of(hole.stand())));
    return outside ? "outside" : "room";
  }
}
