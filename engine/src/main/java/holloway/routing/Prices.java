package holloway.routing;

import holloway.hollow.AccessPlace;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.request.Effort;
import holloway.request.Wishes;

/**
 * What everything costs in objective units, from the effort table; formulas are in DEVELOPERS.md.
 */
final class Prices {
  private final Effort effort;
  private final Wishes wishes;
  private final Spending money;

  Prices(Effort effort, Wishes wishes, Spending money) {
    this.effort = effort;
    this.wishes = wishes;
    this.money = money;
  }

  /** What money adds to all this. */
  Spending money() {
    return money;
  }

  /** Minutes of one bore with the smallest bit, by whoever stands best. */
  double boring(Site site, boolean boards) {
    double minutes = effort.get("bore.set-up");
    for (Site.Layer l : site.layers()) {
      minutes += layer(l, boards);
    }
    return minutes;
  }

  /**
   * The same bore from a stand; {@code stand} is the last part of a {@code stand.*} key.
   *
   * @param minutes of {@link #boring}
   */
  long bore(Site site, double minutes, String stand) {
    return units(minutes * effort.get("stand." + stand) + effort.get("seal.hole"))
        + money.seal(site);
  }

  private double layer(Site.Layer l, boolean boards) {
    double mm = l.thickness() / 1e6;
    return switch (l.what()) {
      case "bottom plate", "top plate" ->
          effort.get("bore.plate-ply") * Math.max(1, Math.ceil(mm / 38.5));
      case "joist", "blocking" -> effort.get("bore.joist");
      case "rim", "ledger" -> effort.get("bore.rim");
      case "subfloor" -> effort.get(boards ? "bore.boards-old" : "bore.subfloor");
      case "cladding" -> effort.get("bore.cladding");
      case "masonry", "slab" -> effort.get("bore.masonry-100mm") * mm / 100;
      case "lining", "closing board" -> effort.get("bore.board");
      case "void", "opening" -> effort.get("bore.void");
      default -> effort.get("bore.stud");
    };
  }

  long bitStep() {
    return effort.units("bore.bit-step");
  }

  long second() {
    return effort.units("bore.second");
  }

  long zone(String zone) {
    double minutes = effort.get("zone." + zone);
    if (zone.startsWith("attic") && wishes.attic() == Wishes.Season.SUMMER) {
      minutes += effort.get("zone.attic-summer-extra");
    }
    return units(minutes);
  }

  /** Through several layers, for a box that has to be a shallow one or not. */
  long cutOut(Lining lining, int layers, boolean shallow) {
    return cutOut(lining, false, false)
        + (layers - 1) * effort.units("cut-out.layer")
        + (shallow ? effort.units("cut-out.shallow") : 0);
  }

  /** In a ceiling, each layer after the first as in a wall. */
  long ceilingCutOut(int layers) {
    return cutOut(Lining.BOARD, true, false) + (layers - 1) * effort.units("cut-out.layer");
  }

  long cutOut(Lining lining, boolean ceiling, boolean outside) {
    if (outside) {
      return effort.units("cut-out.outside");
    }
    return effort.units(
        ceiling
            ? "cut-out.ceiling"
            : lining == Lining.PLASTER || lining == Lining.LATH_AND_PLASTER
                ? "cut-out.plaster"
                : "cut-out.board");
  }

  long open(AccessPlace a) {
    return switch (a.kind()) {
      case LIFTED_BOARDS -> effort.units("lift.boards");
      case DATA_BOX -> effort.units("open.box");
      case REGISTER -> effort.units("open.register");
      case WALL_PATCH, CEILING_PATCH -> patch(a);
    };
  }

  /** A box that is there: its plate off and on again. */
  long openBox() {
    return effort.units("open.box");
  }

  private long patch(AccessPlace a) {
    return switch (a.lining()) {
      case TILE -> effort.units("patch.tile");
      case PLASTER, LATH_AND_PLASTER -> effort.units("patch.plaster");
      default ->
          effort.units(
              a.kind() == AccessPlace.Kind.CEILING_PATCH
                  ? "patch.ceiling-board"
                  : "patch.wall-board");
    };
  }

  /** Tiles or the panel on the way out and in again, once for each lowered ceiling. */
  long tiles() {
    return effort.units("open.tiles");
  }

  /** Getting set up to take skirting off in a room. */
  long skirtingRoom() {
    return effort.units("skirting.room");
  }

  /** A stretch of skirting off and on again. */
  long skirting(long nm) {
    return units(effort.get("skirting.metre") * nm / 1e9);
  }

  /** Fishing one leg, without the set-up of its fish. */
  long fishLeg(HollowKind kind, Fill fill, long nm) {
    String key =
        switch (kind) {
          case CHASE -> "chase";
          case CONDUIT -> "conduit";
          case OLD_CABLE -> "old-cable";
          default ->
              switch (fill) {
                case EMPTY -> "empty";
                case FACED_BATT -> "faced";
                default -> "loose";
              };
        };
    return units(effort.get("fish.metre." + key) * nm / 1e9 * crew());
  }

  /** Quarter turns inside a conduit. */
  long turns(int quarters) {
    return units(quarters * effort.get("fish.turn") * crew());
  }

  long fishSetUp() {
    return units(effort.get("fish.set-up") * crew());
  }

  long handOver() {
    return units(effort.get("fish.hand-over") * crew());
  }

  private double crew() {
    return wishes.crew() == 1 ? effort.get("crew.one-factor") : 1;
  }

  /**
   * Laying by hand; {@code key} is the last part of a {@code lay.metre.*} key; dislike is added
   * where the cable is in sight.
   */
  long lay(String key, long nm, boolean visible) {
    double perMetre = effort.get("lay.metre." + key) + (visible ? wishes.visibleMetre() : 0);
    return units(perMetre * nm / 1e9);
  }

  /** A trench dug and filled again, once however many cables lie in it. */
  long trench(long nm) {
    return units(effort.get("trench.metre") * nm / 1e9);
  }

  /** Eyes, wire and strainers of an overhead span. */
  long span() {
    return effort.units("span.set-up");
  }

  long channel(long nm) {
    return units(effort.get("channel.metre") * nm / 1e9);
  }

  private static long units(double minutes) {
    return Math.round(minutes * Effort.PER_MINUTE);
  }
}
