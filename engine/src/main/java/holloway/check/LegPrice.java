package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.Stand;
import holloway.house.TubeWay;
import holloway.request.Effort;
import holloway.survey.PlacedRoom;

/** Minutes that a leg ought to take by the effort table: metres, set-ups, and dislike of sight. */
final class LegPrice {
  private final Evidence evidence;
  private final Effort effort;

  LegPrice(Evidence evidence) {
    this.evidence = evidence;
    this.effort = evidence.request().effort();
  }

  /** Laid by hand: metres, and for cable in sight the wished dislike of each visible metre. */
  double laid(Walk.At leg, Hollow hollow) {
    return leg.pathMm() / 1000 * perMetre(hollow);
  }

  /** Minutes that one more metre costs in a hollow. */
  double perMetre(Hollow hollow) {
    if (hollow.blind()) {
      return effort.get(fishKey(hollow)) * crew();
    }
    double seen = inSight(hollow) ? evidence.request().wishes().visibleMetre() : 0;
    return effort.get(layKey(hollow)) + seen;
  }

  private double crew() {
    boolean alone = evidence.request().wishes().crew() == 1;
    return alone ? effort.get("crew.one-factor") : 1;
  }

  private String layKey(Hollow hollow) {
    String zone = zone(hollow);
    return switch (hollow.kind()) {
      case ATTIC -> "lay.metre.attic";
      case CRAWLSPACE -> zone.equals("cellar") ? "lay.metre.cellar" : "lay.metre.crawlspace";
      case OUTSIDE_FACE -> zone.equals("ladder") ? "lay.metre.ladder" : "lay.metre.outside";
      case ROOM_SURFACE ->
          isUnderJoists(hollow)
              ? "lay.metre.cellar"
              : inSight(hollow) ? "lay.metre.surface" : "lay.metre.plain";
      case CHANNEL -> "lay.metre.plain"; // cutting it is a work, see ChannelRule
      case TRENCH -> "lay.metre.trench";
      case SPAN -> "lay.metre.span";
      case SKIRTING -> "lay.metre.skirting";
      case LOWERED_CEILING -> "lay.metre.lowered";
      default -> "lay.metre.outside";
    };
  }

  private String zone(Hollow hollow) {
    return hollow.stand().flatMap(evidence::stand).map(Stand::zone).orElse("");
  }

  /** A ceiling that was never closed: cable lies among the joists, worked from below. */
  private boolean isUnderJoists(Hollow hollow) {
    return zone(hollow).equals("cellar");
  }

  /** True on the open surface of a room that is not plain; a cupboard's door hides its cables. */
  boolean inSight(Hollow hollow) {
    boolean cupboard = hollow.id().startsWith("stairs/");
    if (hollow.kind() != HollowKind.ROOM_SURFACE || isUnderJoists(hollow) || cupboard) {
      return false;
    }
    return evidence.house().framed().placed().rooms().stream()
        .filter(r -> r.name().equals(hollow.owner()))
        .map(PlacedRoom::room)
        .noneMatch(r -> r.plain());
  }

  /** Fished: {@code first} pays the set-up, the leg after a hand-over pays that. */
  double fished(Walk.At leg, Hollow hollow, boolean first, boolean handedOver) {
    double minutes = first ? effort.get("fish.set-up") : 0;
    minutes += handedOver ? effort.get("fish.hand-over") : 0;
    if (hollow.kind() == HollowKind.CONDUIT) {
      TubeWay way = evidence.conduit(hollow).orElseThrow().way();
      int quarters = (int) Math.ceil(way.parts().stream().mapToInt(p -> p.degrees()).sum() / 90.0);
      minutes += quarters * effort.get("fish.turn");
      minutes += (way.parts().size() - 1) * effort.get("fish.hand-over");
    }
    return leg.pathMm() / 1000 * perMetre(hollow) + minutes * crew();
  }

  private static String fishKey(Hollow hollow) {
    return switch (hollow.kind()) {
      case CHASE -> "fish.metre.chase";
      case CONDUIT -> "fish.metre.conduit";
      case OLD_CABLE -> "fish.metre.old-cable";
      default ->
          switch (hollow.fill()) {
            case EMPTY -> "fish.metre.empty";
            case FACED_BATT -> "fish.metre.faced";
            default -> "fish.metre.loose";
          };
    };
  }
}
