package holloway.survey;

import holloway.geometry.Interval;
import holloway.house.FaceRef;
import holloway.house.Side;
import holloway.house.Tape;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Observations that close loops: extra tapes, and walls between rooms not placed by each other. */
final class Closing {
  /** A gap at most this much off a wall's thickness is taken for that wall; from experience. */
  private static final long WINDOW = 60 * Length.NM_PER_MM;

  /** Faces that overlap by less share no wall. */
  private static final long LEAST_OVERLAP = 60 * Length.NM_PER_MM;

  private final TreeMap<String, RoomShape> shapes;
  private final Network ew;
  private final Network ns;
  private final Texts texts;

  Closing(TreeMap<String, RoomShape> shapes, Network ew, Network ns, Texts texts) {
    this.shapes = shapes;
    this.ew = ew;
    this.ns = ns;
    this.texts = texts;
  }

  void addTapes(List<Tape> tapes, Problems problems) {
    for (Tape t : tapes) {
      Optional<RoomShape.Face> from = find(t.from(), problems);
      Optional<RoomShape.Face> to = find(t.to(), problems);
      if (from.isEmpty() || to.isEmpty()) {
        continue;
      }
      if (Axis.across(from.get().side()) != Axis.across(to.get().side())) {
        problems.add(
            t.where(),
            "a tape from %s to %s: the two do not face along one line",
            t.from(),
            t.to());
        continue;
      }
      String what = "tape %s to %s".formatted(t.from(), t.to());
      network(from.get())
          .observe(
              from.get().unknown(),
              to.get().unknown(),
              t.distance().value().nm(),
              t.distance().spread().nm(),
              Label.taped(texts.measured(what, t.distance()), t.distance().where()));
    }
  }

  private Optional<RoomShape.Face> find(FaceRef ref, Problems problems) {
    RoomShape shape = shapes.get(ref.room());
    List<RoomShape.Face> faces = shape == null ? List.of() : shape.faces(ref.side());
    Optional<RoomShape.Face> face =
        faces.stream().filter(f -> f.ordinal() == ref.ordinal() && f.isSquare()).findFirst();
    if (face.isEmpty()) {
      problems.add(ref.where(), "no straight face %s to tape from", ref);
    }
    return face;
  }

  private Network network(RoomShape.Face face) {
    return Axis.across(face.side()) == Axis.X ? ew : ns;
  }

  /** Where the first adjustment leaves a gap that a wall would fill, that wall is observed too. */
  void addWalls(WallPriors priors, Adjustment x, Adjustment y) {
    for (RoomShape a : shapes.values()) {
      for (RoomShape b : shapes.values()) {
        if (a != b && a.room().level().equals(b.room().level())) {
          addWalls(a, b, Side.EAST, priors, x, y);
          addWalls(a, b, Side.NORTH, priors, x, y);
        }
      }
    }
  }

  private void addWalls(
      RoomShape a, RoomShape b, Side side, WallPriors priors, Adjustment x, Adjustment y) {
    for (RoomShape.Face f : a.squareFaces(side)) {
      for (RoomShape.Face g : b.squareFaces(side.opposite())) {
        Adjustment across = side == Side.EAST ? x : y;
        Adjustment along = side == Side.EAST ? y : x;
        long gap = across.position()[g.unknown()] - across.position()[f.unknown()];
        long least = priors.isOpenThrough(f, g) ? -WINDOW : Makeup.THINNEST_WALL;
        if (gap < least
            || network(f).isObserved(f.unknown(), g.unknown())
            || !overlap(f, g, along)) {
          continue;
        }
        WallPriors.Prior prior = priors.closing(f, g, gap);
        if (Math.abs(gap - prior.thickness()) <= WINDOW) {
          network(f)
              .observe(
                  f.unknown(),
                  g.unknown(),
                  prior.thickness(),
                  prior.spread(),
                  Label.thickness(prior.text(), prior.where()));
        }
      }
    }
  }

  private static boolean overlap(RoomShape.Face f, RoomShape.Face g, Adjustment along) {
    return stretch(f, along)
        .cut(stretch(g, along))
        .filter(i -> i.length() >= LEAST_OVERLAP)
        .isPresent();
  }

  /** The stretch of a face along itself, from the unknowns of its two corners. */
  private static Interval stretch(RoomShape.Face f, Adjustment along) {
    List<Integer> unknowns = f.side().runsEastWest() ? f.shape().x() : f.shape().y();
    long p = along.position()[unknowns.get(f.edge())];
    long q = along.position()[unknowns.get((f.edge() + 1) % unknowns.size())];
    return new Interval(Math.min(p, q), Math.max(p, q));
  }
}
