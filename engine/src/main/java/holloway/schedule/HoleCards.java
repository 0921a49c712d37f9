package holloway.schedule;

import holloway.framing.Member;
import holloway.geometry.Frame.Axis;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.plan.Plan;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A card for every hole of a plan. */
public final class HoleCards {
  /** What stands on a side that shows nothing to measure from (behind-the-board P4). */
  static final String PILOT =
      "nothing to measure from can be seen on this side: the wire of the pilot shows the place";

  private final HollowHouse house;
  private final UnitSystem units;
  private final Sight sight;
  private final Map<String, String> rooms = new TreeMap<>();

  private final DrillSide drill;
  private final Beyond beyond;
  private final Map<String, Pilot> pilots;

  private HoleCards(Plan plan, HollowHouse house, UnitSystem units, Map<String, String> outlets) {
    this.house = house;
    this.drill = new DrillSide(plan, house);
    house.accesses().forEach(a -> rooms.put(a.id(), a.room()));
    this.rooms.putAll(outlets);
    this.units = units;
    this.sight = new Sight(house);
    this.beyond = new Beyond(house, units);
    this.pilots = Pilots.of(plan, house);
  }

  /** By hole id; holes whose crossing the house does not have are left out. */
  public static Map<String, HoleCard> of(Plan plan, HollowHouse house, UnitSystem units) {
    return of(plan, house, units, Map.of());
  }

  /**
   * As {@link #of(Plan, HollowHouse, UnitSystem)}.
   *
   * @param outlets the room of each spot of an outlet, by the name that stands of holes have for it
   */
  public static Map<String, HoleCard> of(
      Plan plan, HollowHouse house, UnitSystem units, Map<String, String> outlets) {
    HoleCards cards = new HoleCards(plan, house, units, outlets);
    Map<String, HoleCard> out = new TreeMap<>();
    for (Plan.PlannedHole hole : plan.holes()) {
      house.findSite(hole.id()).ifPresent(s -> out.put(hole.id(), cards.card(hole, s)));
    }
    return out;
  }

  /** Where the tape lines of the cards lie, by hole id; the same outlets as for the cards. */
  public static Map<String, Tapes> tapes(
      Plan plan, HollowHouse house, Map<String, String> outlets) {
    HoleCards cards = new HoleCards(plan, house, UnitSystem.METRIC, outlets);
    Map<String, Tapes> out = new TreeMap<>();
    for (Plan.PlannedHole hole : plan.holes()) {
      house.findSite(hole.id()).ifPresent(s -> out.put(hole.id(), cards.lines(hole, s)));
    }
    return out;
  }

  private Tapes lines(Plan.PlannedHole hole, Site site) {
    boolean fromA = drill.isA(hole, site);
    return new Tapes(
        hole.id(),
        fromA ? site.a() : site.b(),
        fromA ? site.b() : site.a(),
        lines(site, fromA, room(hole)),
        lines(site, !fromA, sight.farRoom(site, !fromA, room(hole))));
  }

  private Optional<String> room(Plan.PlannedHole hole) {
    return Optional.ofNullable(rooms.get(hole.stand()));
  }

  private List<Tapes.Line> lines(Site site, boolean atA, Optional<String> room) {
    return sight.from(site, atA, room).stream()
        .map(d -> new Tapes.Line(d.at(), d.end(), d.nm(), d.landmark()))
        .toList();
  }

  private HoleCard card(Plan.PlannedHole hole, Site site) {
    boolean fromA = drill.isA(hole, site);
    double tolerance = Math.round(Tolerance.of(site, house) * 10) / 10.0;
    return new HoleCard(
        hole.id(),
        Tools.bit(hole, units),
        Tools.extension(hole, house, units),
        side(site, fromA, room(hole)),
        side(site, !fromA, sight.farRoom(site, !fromA, room(hole))),
        angle(site, fromA),
        Tools.breakthrough(site, fromA, units) + skin(site),
        checkFirst(site, tolerance),
        Optional.ofNullable(pilots.get(hole.id())).map(p -> p.words(units)).orElse(""),
        beyond.words(fromA ? site.hollowB() : site.hollowA(), fromA ? site.b() : site.a()),
        tolerance);
  }

  private String skin(Site site) {
    return RimSkin.of(site, house)
        .map(
            nm ->
                "; outside go on through sheathing and cladding, %s on the wall above it"
                    .formatted(units.format(new Length(nm))))
        .orElse("");
  }

  private List<String> side(Site site, boolean atA, Optional<String> room) {
    List<Dimension> found = sight.from(site, atA, room);
    return found.isEmpty() ? List.of(PILOT) : found.stream().map(d -> d.text(units)).toList();
  }

  /**
   * Empty or up or down when the drill is held square to what it bores; else how far off, and the
   * drip slope.
   */
  private String angle(Site site, boolean fromA) {
    boolean outside =
        List.of(site.hollowA(), site.hollowB()).stream()
            .anyMatch(
                h ->
                    house
                        .findHollow(h)
                        .map(
                            x ->
                                x.kind() == HollowKind.OUTSIDE_FACE
                                    || x.kind() == HollowKind.PORCH_VOID)
                        .orElse(false));
    if (outside && site.kind() != SiteKind.CEILING) {
      return "tilted, so that the hole falls to the outside";
    }
    Axis drill = fromA ? Lines.between(site.a(), site.b()) : Lines.between(site.b(), site.a());
    double best =
        house.framed().members().stream()
            .filter(m -> site.pierces().contains(m.id()))
            .mapToDouble(m -> square(m, drill))
            .max()
            .orElse(1);
    long degrees = Math.round(Math.toDegrees(Math.acos(Math.min(1, best))));
    if (degrees < 1) {
      return Math.abs(drill.z()) < 0.9 ? "" : drill.z() > 0 ? "straight up" : "straight down";
    }
    return degrees + " degrees off square, towards the " + Lines.word(drill);
  }

  /** Cosine of the angle to the nearest axis of the member. */
  private static double square(Member m, Axis drill) {
    double best = 0;
    for (int i = 0; i < 3; i++) {
      best = Math.max(best, Math.abs(Lines.dot(Lines.axis(m.frame(), i), drill)));
    }
    return best;
  }

  private boolean isOverPorch(String hollow) {
    return house.findHollow(hollow).filter(h -> h.kind() == HollowKind.PORCH_VOID).isPresent();
  }

  private String checkFirst(Site site, double tolerance) {
    List<String> out = new ArrayList<>();
    if (site.assumed()) {
      out.add(
          site.kind().word().contains("joist") ? "find the joist first" : "find the stud first");
    }
    if (isOverPorch(site.hollowA()) || isOverPorch(site.hollowB())) {
      out.add("the cable of a porch lamp may lie behind the boards: switch it off, look first");
    }
    if (tolerance > Tolerance.LOCATOR_MM) {
      out.add(
          "the bit may come out "
              + units.format(Length.mm(tolerance))
              + " from its place: leave a locator wire ("
              + Pilot.bit(Pilots.BIT_MM, units)
              + " pilot) before the full bit");
    }
    return String.join("; ", out);
  }
}
