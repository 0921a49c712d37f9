package holloway.hollow;

import holloway.framing.Deck;
import holloway.framing.Framed;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.Lining;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Floors that are worked from below: crawlspaces with a way in, and rooms whose ceiling is open.
 */
final class UnderFloors {
  /** Clear height a body needs under the joists: 18 in, from experience. */
  static final long BODY = 457_000_000;

  private static final long WAY_IN_LEAST = 380_000_000;
  private static final double RIM_MM = 40;

  /**
   * How far joists run on over the head of a masonry wall, where a hand still reaches between them.
   */
  private static final double OVER_WALL_MM = 320;

  private final Framed framed;
  private final List<Refused> refused;

  UnderFloors(Framed framed, List<Refused> refused) {
    this.framed = framed;
    this.refused = refused;
  }

  List<Hollow> hollows() {
    List<Hollow> out = new ArrayList<>();
    for (Deck d : framed.decks()) {
      d.spec().crawlspace().ifPresent(c -> crawlspace(d, c).ifPresent(out::add));
    }
    for (PlacedRoom r : framed.placed().rooms()) {
      if (r.room().ceiling() == Lining.OPEN && r.room().standing().isOpen()) {
        out.addAll(openCeiling(r));
      }
    }
    return out;
  }

  /** Of each floor that reaches over the room, the largest first. */
  private List<Hollow> openCeiling(PlacedRoom r) {
    List<Hollow> out = new ArrayList<>();
    for (Deck d : framed.decks()) {
      if (d.spec().crawlspace().isEmpty() && JoistBays.roomsBelow(framed, d).contains(r)) {
        openCeiling(d, r).ifPresent(out::add);
      }
    }
    out.sort(
        Comparator.comparingDouble((Hollow h) -> -Math.abs(h.area().orElseThrow().signedAreaMm2()))
            .thenComparing(Hollow::owner));
    for (int i = 1; i < out.size(); i++) {
      out.set(i, UnderJoists.part(out.get(i), i + 1));
    }
    return out;
  }

  private Optional<Hollow> crawlspace(Deck d, FloorSpec.Crawlspace c) {
    long floor = d.frame().origin().z();
    Point3 middle =
        new Point2(d.outline().xRange().mid(), d.outline().yRange().mid())
            .at(floor + d.joistZ().lo());
    Optional<String> why = cannotEnter(c);
    if (why.isPresent()) {
      refused.add(
          new Refused(
              "crawlspace under " + d.id(),
              middle,
              why.get(),
              "from experience; IRC R408.4 asks 18 x 24 in"));
      return Optional.empty();
    }
    Optional<Polygon2> area =
        Spaces.largest(
            Neighbours.without(
                framed, Spaces.grow(d.outline().toJts(), -RIM_MM), floor + d.joistZ().lo() - 1));
    Optional<Polygon2> reached = area.flatMap(a -> new CrawlReach(framed, d, c).of(a));
    if (area.isPresent() && reached.isEmpty()) {
      refused.add(
          new Refused(
              "crawlspace under " + d.id(),
              middle,
              "piers or what hangs there leave no way for a body from its way in",
              "from experience"));
    }
    return reached.map(
        a ->
            under(
                d,
                "crawlspace/" + d.id().replace("/floor", ""),
                HollowKind.CRAWLSPACE,
                a,
                floor + d.joistZ().lo() - c.clearance().value().nm()));
  }

  private Optional<String> cannotEnter(FloorSpec.Crawlspace c) {
    if (c.clearance().value().nm() < BODY) {
      return Optional.of(
          "only " + c.clearance().value() + " under the joists: a body needs 457 mm");
    }
    if (c.access().isEmpty()) {
      return Optional.of("no way in is stated (access: floor-hatch or outside-door)");
    }
    FloorSpec.WayIn w = c.access().get();
    if (w.floorHatch().isPresent()
        && !framed.placed().getRoom(w.floorHatch().get().room()).room().standing().isOpen()) {
      return Optional.of("its hatch is in a room that nobody works in");
    }
    boolean small = Math.min(w.width().nm(), w.height().nm()) < WAY_IN_LEAST;
    return small ? Optional.of("the way in is too small for a body") : Optional.empty();
  }

  private Optional<Hollow> openCeiling(Deck d, PlacedRoom r) {
    var over =
        Overlay.intersection(Spaces.grow(r.outline().toJts(), OVER_WALL_MM), d.outline().toJts());
    return Spaces.largest(over)
        .map(
            a ->
                under(
                    d,
                    UnderJoists.id(r.name()),
                    HollowKind.ROOM_SURFACE,
                    a,
                    d.frame().origin().z() + d.joistZ().lo() - 400_000_000));
  }

  private Hollow under(Deck d, String id, HollowKind kind, Polygon2 area, long bottom) {
    long top = d.frame().origin().z() + d.subfloorZ().lo();
    Box box =
        new Box(
            area.xRange().lo(),
            area.xRange().hi(),
            area.yRange().lo(),
            area.yRange().hi(),
            bottom,
            top);
    return new Hollow(
        id, kind, Frame.WORLD, box, Optional.of(area), Fill.EMPTY, d.id(), Optional.of(id));
  }
}
