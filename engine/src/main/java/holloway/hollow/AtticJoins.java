package holloway.hollow;

import holloway.framing.Attic;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.house.Along;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Stated openings from one roof's attic into another's. Without one, two attics that rest on the
 * same wall are parted by the boarded or bricked end over it. An opening stands on the higher of
 * the two ceilings and under both slopes; where it cannot, it is refused.
 */
final class AtticJoins {
  /** How far within each attic a cable through the opening has come out of the wall's width. */
  private static final long BEYOND = 50_000_000;

  /** Cable lies this high over the joists. */
  private static final long LAID = 25_000_000;

  /** From experience: a hand kneeling on joists feeds a cable through at this height. */
  private static final long STEP = 1_000_000_000;

  private static final String NO_WALL =
      "the two attics have no wall in common that is long enough, or the stated end is not one of"
          + " its ends";

  /**
   * An opening between two attics: its place in either, and what was stated of it.
   *
   * @param sill world z of its lower edge, on the higher of the two ceilings' joists
   */
  record Place(
      Attic a, Attic b, Point2 inA, Point2 inB, long sill, long wide, long high, Roof.Join join) {}

  private AtticJoins() {}

  /** Those that can be placed; the others are refused with the reason. */
  static List<Place> places(List<Attic> attics, List<Refused> refused) {
    List<Place> out = new ArrayList<>();
    for (Attic a : attics) {
      for (Roof.Join j : open(a)) {
        for (Attic b : attics) {
          if (b.roof().name().equals(j.to())) {
            out.addAll(placed(a, b, j));
          }
        }
      }
    }
    for (Attic a : attics) {
      for (Roof.Join j : open(a)) {
        if (out.stream().noneMatch(p -> p.join().equals(j))) {
          Point2 mid = new Point2(a.outline().xRange().mid(), a.outline().yRange().mid());
          refused.add(
              new Refused(
                  "opening from attic " + a.id() + " into " + j.to(),
                  mid.at(a.chordTopZ()),
                  why(a, j, attics),
                  "survey"));
        }
      }
    }
    return out;
  }

  /** One opening, or in a valley one between each two rafters. */
  private static List<Place> placed(Attic a, Attic b, Roof.Join j) {
    Optional<Place> wall = place(a, b, j);
    if (j.valley().isEmpty()) {
      return wall.filter(p -> unfit(p).isEmpty()).stream().toList();
    }
    return wall.filter(p -> high(p).isEmpty())
        .map(p -> Valleys.places(p, stretch(p)))
        .orElse(List.of());
  }

  /** What of the common wall the opening takes: in a valley that was cut through, all of it. */
  private static Interval stretch(Place p) {
    boolean northSouth = p.inA().y() == p.inB().y();
    long mid = northSouth ? p.inA().y() : p.inA().x();
    return new Interval(mid - p.wide() / 2, mid + p.wide() / 2);
  }

  private static List<Roof.Join> open(Attic a) {
    return a.roof().joins().stream().filter(j -> !j.shut()).toList();
  }

  private static String why(Attic a, Roof.Join join, List<Attic> attics) {
    return attics.stream()
        .filter(b -> b.roof().name().equals(join.to()))
        .flatMap(b -> place(a, b, join).stream())
        .flatMap(p -> (join.valley().isPresent() ? noValley(p) : unfit(p)).stream())
        .findFirst()
        .orElse(NO_WALL);
  }

  private static Optional<String> noValley(Place p) {
    return high(p).or(() -> Valleys.unfit(p)).or(() -> Optional.of(Valleys.tight(p, stretch(p))));
  }

  /** Why a hand on the lower joists does not get to it. */
  private static Optional<String> high(Place p) {
    long step = p.sill() - Math.min(p.a().chordTopZ(), p.b().chordTopZ());
    if (step > STEP) {
      return Optional.of(
          "its lower edge lies " + mm(step) + " mm over the joists on one side, out of reach");
    }
    return Optional.empty();
  }

  /** Why no opening of that height stands there, if none does. */
  private static Optional<String> unfit(Place p) {
    if (high(p).isPresent()) {
      return high(p);
    }
    long room = Math.min(room(p.a(), p.inA(), p), room(p.b(), p.inB(), p));
    if (room < p.join().high().nm()) {
      return Optional.of(
          "the slope leaves "
              + mm(Math.max(0, room))
              + " mm over the higher joists there, the opening is stated "
              + mm(p.join().high().nm())
              + " mm high");
    }
    return Optional.empty();
  }

  /** Least height from the lower edge to an attic's slope over the opening's width. */
  private static long room(Attic attic, Point2 at, Place p) {
    long half = p.join().wide().nm() / 2;
    boolean wallNorthSouth = p.inA().y() == p.inB().y();
    long x = wallNorthSouth ? 0 : half;
    long y = wallNorthSouth ? half : 0;
    return Math.min(attic.slopeUnderside(at.plus(x, y)), attic.slopeUnderside(at.plus(-x, -y)))
        - p.sill();
  }

  private static long mm(long nm) {
    return Math.round(nm / 1e6);
  }

  private static Optional<Place> place(Attic a, Attic b, Roof.Join join) {
    Optional<Polygon2> shared =
        Spaces.largest(Overlay.intersection(a.outline().toJts(), b.outline().toJts()));
    if (shared.isEmpty()) {
      return Optional.empty();
    }
    Interval x = shared.get().xRange();
    Interval y = shared.get().yRange();
    boolean northSouth = y.length() > x.length();
    boolean whole = join.valley().isPresent() && join.wide().nm() == 0;
    long wide = whole ? (northSouth ? y : x).length() : join.wide().nm();
    Optional<Long> at = middle(northSouth ? y : x, northSouth, join);
    long off = (northSouth ? x.length() : y.length()) / 2 + BEYOND;
    for (int sign : new int[] {1, -1}) {
      if (at.isPresent()) {
        Point2 mid = northSouth ? new Point2(x.mid(), at.get()) : new Point2(at.get(), y.mid());
        Point2 p = northSouth ? mid.plus(-sign * off, 0) : mid.plus(0, -sign * off);
        Point2 q = northSouth ? mid.plus(sign * off, 0) : mid.plus(0, sign * off);
        if (a.outline().contains(p) && b.outline().contains(q)) {
          long sill = Math.max(a.chordTopZ(), b.chordTopZ());
          return Optional.of(new Place(a, b, p, q, sill, wide, join.high().nm(), join));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Long> middle(Interval wall, boolean northSouth, Roof.Join join) {
    long wide = join.wide().nm();
    if (wide > wall.length()) {
      return Optional.empty();
    }
    if (join.from().isEmpty()) {
      return Optional.of(wall.mid());
    }
    Along from = join.from().get();
    long near = from.distance().value().nm();
    if (from.from().runsEastWest() != northSouth || near + wide > wall.length()) {
      return Optional.empty();
    }
    boolean low = from.from() == Side.SOUTH || from.from() == Side.WEST;
    return Optional.of(low ? wall.lo() + near + wide / 2 : wall.hi() - near - wide / 2);
  }

  /** The openings both of whose ends a person reaches. */
  static void find(Draft draft) {
    List<Place> places = places(draft.framed.attics(), new ArrayList<>());
    for (Place p : places) {
      Optional<Hollow> a = draft.find("attic/" + p.a().id());
      Optional<Hollow> b = draft.find("attic/" + p.b().id());
      Point3 from = p.inA().at(p.sill() + LAID);
      Point3 to = p.inB().at(p.sill() + LAID);
      String id = id(p);
      if (a.isEmpty() || b.isEmpty()) {
        draft.refuse(
            "opening " + id, from, "nobody can stand in one of the two attics", "see its refusal");
      } else if (!a.get().area().orElseThrow().contains(p.inA())
          || !b.get().area().orElseThrow().contains(p.inB())) {
        boolean other =
            places.stream()
                .anyMatch(
                    o ->
                        o.join().equals(p.join())
                            && a.get().area().orElseThrow().contains(o.inA())
                            && b.get().area().orElseThrow().contains(o.inB()));
        if (other) {
          continue; // between other rafters of the same valley somebody reaches
        }
        draft.refuse("opening " + id, from, "out of arm's reach on one side", "from experience");
      } else if (!draft.has(id)) {
        draft.keep(
            new Site(
                id,
                SiteKind.OPENING,
                from,
                to,
                a.get().id(),
                b.get().id(),
                List.of(),
                List.of(),
                51,
                51,
                true,
                false));
      }
    }
  }

  /** Those of a valley by the middle of their gap. */
  private static String id(Place p) {
    String way = "attic/" + p.a().id() + "/way-to-" + p.b().id();
    boolean northSouth = p.inA().y() == p.inB().y();
    return p.join().valley().isEmpty()
        ? way
        : way + "/" + mm(northSouth ? p.inA().y() : p.inA().x()) / 10;
  }
}
