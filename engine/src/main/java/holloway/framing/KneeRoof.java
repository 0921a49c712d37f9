package holloway.framing;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.KneeWalls;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * A roof that comes down past the knee walls of the rooms under it to the outer walls of the storey
 * below. Its slope is fixed by the stated heights of the knee walls: there the rafters' undersides
 * are taken to lie, the board below them left out of account. Where two sides disagree the lower
 * counts.
 *
 * @param roofline to the outer bearing faces of the storey below
 * @param plateZ world z of the undersides of the joists that the side attics lie on
 * @param joistTopZ world z of their tops
 * @param heelMm as in {@link Attic}
 * @param strips where the side attics lie
 * @param lowestZ world z that the slopes are nowhere under, in the rooms
 * @param trouble why there are no side attics
 * @param fromHigh its rafters are counted from the east or north
 */
public record KneeRoof(
    Roof roof,
    String level,
    Polygon2 roofline,
    long plateZ,
    long joistTopZ,
    double heelMm,
    List<Strip> strips,
    long lowestZ,
    Optional<Deck> deck,
    Optional<String> trouble,
    boolean fromHigh) {
  /** A rafter may come down this much under the joists at the outer face: a birdsmouth. */
  private static final double UNDER_MM = 100;

  /** Beside one eave, behind some knee walls. */
  public record Strip(Side side, Polygon2 outline, List<Wall> walls) {}

  /** Empty for a roof without knee walls. */
  public static Optional<KneeRoof> of(Placed placed, List<Deck> decks, Roof roof) {
    List<PlacedRoom> rooms =
        placed.rooms().stream().filter(r -> RoofFramer.covers(placed, roof, r)).toList();
    if (roof.knees().isEmpty() || rooms.isEmpty()) {
      return Optional.empty();
    }
    String level = rooms.get(0).room().level();
    Optional<Deck> deck =
        decks.stream()
            .filter(d -> d.level().equals(level))
            .filter(d -> rooms.stream().allMatch(r -> within(r, d)))
            .findFirst();
    long lowest = lowest(roof, rooms);
    if (deck.isEmpty()) {
      return Optional.of(
          none(roof, level, lowest, "the rooms do not all stand on one floor of joists"));
    }
    Geometry below = below(placed, level);
    List<KneeLine> lines = lines(placed, roof, below);
    return Optional.of(
        trouble(placed, roof, lines)
            .map(t -> none(roof, level, lowest, t))
            .orElseGet(() -> built(placed, roof, level, rooms, deck.get(), lines, below)));
  }

  private static boolean within(PlacedRoom r, Deck d) {
    return d.outline().toJts().buffer(1).contains(r.outline().toJts());
  }

  private static long lowest(Roof roof, List<PlacedRoom> rooms) {
    long least = roof.knees().stream().mapToLong(k -> k.height().value().nm()).min().orElseThrow();
    return rooms.get(0).floorZ() + least;
  }

  private static KneeRoof none(Roof roof, String level, long lowest, String why) {
    Polygon2 nowhere = Polygon2.rectangle(0, 0, 1, 1);
    return new KneeRoof(
        roof,
        level,
        nowhere,
        0,
        0,
        0,
        List.of(),
        lowest,
        Optional.empty(),
        Optional.of(why),
        false);
  }

  private static Geometry below(Placed placed, String level) {
    PlacedLevel own = placed.getLevel(level);
    return placed.levels().stream()
        .filter(own::isNextOver)
        .findFirst()
        .map(l -> Outlines.of(placed, l.name(), r -> true, true))
        .orElseGet(() -> new GeometryFactory().createPolygon());
  }

  private static List<KneeLine> lines(Placed placed, Roof roof, Geometry below) {
    List<KneeLine> out = new ArrayList<>();
    for (Wall w : placed.walls()) {
      if (w.isFramed() && KneeWalls.isWhole(roof, w)) {
        out.add(KneeLine.of(placed, roof, w, below));
      }
    }
    return out;
  }

  private static Optional<String> trouble(Placed placed, Roof roof, List<KneeLine> lines) {
    for (Roof.Knee k : roof.knees()) {
      boolean there =
          lines.stream()
              .anyMatch(
                  l ->
                      l.side() == k.face().side()
                          && l.wall().faces().stream()
                              .anyMatch(f -> f.room().equals(k.face().room())));
      if (!there) {
        return Optional.of(
            "the wall at '"
                + k.face()
                + "' is not framed, has a room behind it, or goes on along a room that states no"
                + " knee wall there");
      }
    }
    for (KneeLine l : lines) {
      if (l.distance() < 1) {
        return Optional.of(
            "the storey below does not reach straight out to one outer wall behind "
                + l.wall().id());
      }
      if (lines.stream()
          .anyMatch(o -> o.side() == l.side() && Math.abs(o.eave() - l.eave()) > 10)) {
        return Optional.of("the eave on the " + l.side().word() + " side is not one line");
      }
    }
    return Optional.empty();
  }

  private static KneeRoof built(
      Placed placed,
      Roof roof,
      String level,
      List<PlacedRoom> rooms,
      Deck deck,
      List<KneeLine> lines,
      Geometry below) {
    long plate = deck.frame().origin().z() + deck.joistZ().lo();
    long top = deck.frame().origin().z() + deck.joistZ().hi();
    double slope = roof.pitchRise() / (double) roof.pitchRun();
    double cut = roof.chord().value().depth().toMm() * Math.hypot(1, slope);
    double heel = Double.MAX_VALUE;
    for (KneeLine l : lines) {
      double atEave = (l.z() - plate) / 1e6 - l.distance() * slope;
      if (atEave < -UNDER_MM) {
        return none(
            roof,
            level,
            lowest(roof, rooms),
            String.format(
                java.util.Locale.ROOT,
                "behind %s the rafters would come down %.0f mm inside the outer wall of the storey"
                    + " below: height of the knee wall, pitch and plan do not go together",
                l.wall().id(),
                -atEave / slope));
      }
      heel = Math.min(heel, atEave + cut);
    }
    Polygon2 roofline = roofline(placed, level, roof, lines);
    List<Strip> strips = strips(placed, level, lines, below);
    return new KneeRoof(
        roof,
        level,
        roofline,
        plate,
        top,
        heel,
        strips,
        lowest(roof, rooms),
        Optional.of(deck),
        Optional.empty(),
        RoofFramer.isFromHigh(placed, RoofFramer.run(roof)));
  }

  private static Polygon2 roofline(Placed placed, String level, Roof roof, List<KneeLine> lines) {
    Envelope e =
        Outlines.of(placed, level, r -> RoofFramer.covers(placed, roof, r), true)
            .getEnvelopeInternal();
    for (KneeLine l : lines) {
      e.expandToInclude(
          l.side().runsEastWest() ? e.centre().getX() : l.eave(),
          l.side().runsEastWest() ? l.eave() : e.centre().getY());
    }
    return Polygon2.rectangle(nm(e.getMinX()), nm(e.getMinY()), nm(e.getMaxX()), nm(e.getMaxY()));
  }

  private static long nm(double mm) {
    return Math.round(mm * 1e6);
  }

  private static List<Strip> strips(
      Placed placed, String level, List<KneeLine> lines, Geometry below) {
    Geometry storey = Outlines.of(placed, level, r -> true, true);
    Map<Side, List<KneeLine>> bySide = new TreeMap<>();
    lines.forEach(l -> bySide.computeIfAbsent(l.side(), k -> new ArrayList<>()).add(l));
    List<Strip> out = new ArrayList<>();
    bySide.forEach(
        (side, of) -> {
          List<Geometry> bands = new ArrayList<>();
          of.forEach(l -> bands.add(KneeLine.band(side, l.along(), l.face(), l.distance())));
          Geometry all =
              Overlay.difference(Overlay.intersection(Outlines.joined(bands), below), storey);
          for (Geometry shut : KneeDormers.shut(placed, of)) {
            all = Overlay.difference(all, shut);
          }
          for (Polygon2 part : Outlines.parts(all)) {
            Geometry near = part.toJts().buffer(50);
            List<Wall> walls =
                of.stream()
                    .map(KneeLine::wall)
                    .filter(w -> Outlines.strip(w).toJts().intersects(near))
                    .toList();
            out.add(new Strip(side, part, walls));
          }
        });
    return out;
  }

  /**
   * World z of the underside of the rafters over a plan point of a room or side attic; without side
   * attics, of the lowest knee wall.
   */
  public long underside(Point2 p) {
    return trouble.isPresent() ? lowestZ : shell().roofUnderside(p);
  }

  /** True for the rooms under its slopes. */
  public boolean isOver(Placed placed, String room) {
    return RoofFramer.covers(placed, roof, placed.getRoom(room));
  }

  /** Everything under the slopes as one. */
  Attic shell() {
    Direction run = RoofFramer.run(roof);
    Interval along = run == Direction.NORTH_SOUTH ? roofline.xRange() : roofline.yRange();
    return new Attic(
        roof.name(),
        roof,
        roofline,
        plateZ,
        joistTopZ,
        RoofFramer.chords(roof, along, fromHigh),
        run,
        heelMm,
        roofline,
        List.of(),
        List.of());
  }
}
