package holloway.survey;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Side;
import holloway.house.WallRef;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the wall that a person means, and where along it. */
final class WallFinder {
  private final List<PlacedRoom> rooms;
  private final List<Wall> walls;

  WallFinder(List<PlacedRoom> rooms, List<Wall> walls) {
    this.rooms = rooms;
    this.walls = walls;
  }

  /**
   * A stretch of a wall that one may tape along, in the wall's frame, and the room it is seen from.
   */
  record Stretch(Wall wall, Interval s, PlacedRoom from) {}

  /** All stretches that the reference means: several when its line is cut by a crossing wall. */
  List<Stretch> bases(WallRef ref) {
    return bases(ref, Optional.empty());
  }

  /**
   * The same, for taping from an end on that side: of several walls between two rooms only those
   * that have such an end are counted.
   */
  List<Stretch> bases(WallRef ref, Optional<Side> end) {
    return ref.between()
        .map(b -> between(b, end))
        .orElseGet(() -> behind(ref.face().orElseThrow()));
  }

  private List<Stretch> behind(FaceRef face) {
    List<Stretch> out = new ArrayList<>();
    for (Wall w : walls) {
      for (Wall.WallFace f : w.faces()) {
        if (Specs.is(face, f.room(), f.roomSide(), f.ordinal())) {
          out.add(new Stretch(w, whole(w, face), room(f.room())));
        }
      }
    }
    return out;
  }

  /** The whole face in the wall's frame; it may go on past the wall's end. */
  private Interval whole(Wall w, FaceRef face) {
    Placed.Segment f = Faces.of(room(face.room()).outline(), face.side()).get(face.ordinal() - 1);
    long a = w.frame().toLocal(f.start().at(0)).x();
    long b = w.frame().toLocal(f.end().at(0)).x();
    return new Interval(Math.min(a, b), Math.max(a, b));
  }

  private List<Stretch> between(WallRef.Between ref, Optional<Side> end) {
    List<Stretch> all = new ArrayList<>();
    for (Wall w : walls) {
      for (Wall.WallFace f : w.faces()) {
        for (Wall.WallFace g : w.faces()) {
          if (f.room().equals(ref.one()) && g.room().equals(ref.other()) && f.side() != g.side()) {
            f.s()
                .cut(g.s())
                .filter(i -> i.length() > 0)
                .ifPresent(i -> all.add(new Stretch(w, i, room(ref.one()))));
          }
        }
      }
    }
    all.sort(Comparator.comparing(WallFinder::southWest).thenComparing(b -> b.wall.id()));
    List<List<Stretch>> lines = new ArrayList<>();
    for (Stretch b : all) {
      lines.stream()
          .filter(l -> isInLine(l.get(0).wall, b.wall))
          .findFirst()
          .ifPresentOrElse(l -> l.add(b), () -> lines.add(new ArrayList<>(List.of(b))));
    }
    boolean some =
        end.isPresent() && lines.stream().anyMatch(l -> hasEnd(l.get(0).wall, end.get()));
    if (some) {
      lines.removeIf(l -> !hasEnd(l.get(0).wall, end.get()));
    }
    return ref.ordinal() <= lines.size() ? lines.get(ref.ordinal() - 1) : List.of();
  }

  PlacedRoom room(String name) {
    return rooms.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  private static Point2 southWest(Stretch b) {
    Point2 p = b.wall.world(b.s.lo(), 0, 0).plan();
    Point2 q = b.wall.world(b.s.hi(), b.wall.thickness(), 0).plan();
    return new Point2(Math.min(p.x(), q.x()), Math.min(p.y(), q.y()));
  }

  private static boolean isInLine(Wall a, Wall b) {
    return a.frame().u().equals(b.frame().u())
        && Math.abs(offset(a, false) - offset(b, false)) <= StripMakes.SAME_LINE;
  }

  /** Of the wall's origin along (or across) its own direction. */
  private static long offset(Wall w, boolean alongS) {
    Frame f = w.frame();
    Point3 p = new Frame(new Point3(0, 0, 0), f.u(), f.v(), f.w()).toLocal(f.origin());
    return alongS ? p.x() : p.y();
  }

  /** A distance along the stretches from the end on the stated side; empty when off their walls. */
  Optional<Stretch> at(List<Stretch> bases, Along along, long width) {
    if (bases.isEmpty()) {
      return Optional.empty();
    }
    long lo = bases.stream().mapToLong(b -> b.s.lo() + offset(b.wall, true)).min().orElseThrow();
    long hi = bases.stream().mapToLong(b -> b.s.hi() + offset(b.wall, true)).max().orElseThrow();
    long d = along.distance().value().nm();
    long from = isFromStart(bases.get(0).wall, along.from()) ? lo + d : hi - d - width;
    for (Stretch b : bases) {
      long s = from - offset(b.wall, true);
      Interval most = new Interval(Math.max(b.s.lo(), 0), Math.min(b.s.hi(), b.wall.length()));
      if (s >= most.lo() - SLACK && s + width <= most.hi() + SLACK) {
        return Optional.of(new Stretch(b.wall, new Interval(s, s + width), b.from));
      }
    }
    return Optional.empty();
  }

  /** Three tape spreads: what is off its wall by less is at its end. */
  private static final long SLACK = 3 * holloway.house.Fact.TAPE.nm();

  /** Can one tape along this wall from that side? */
  static boolean hasEnd(Wall w, Side from) {
    double along = from.runsEastWest() ? w.frame().u().y() : w.frame().u().x();
    return Math.abs(along) > 1e-3;
  }

  private static boolean isFromStart(Wall w, Side from) {
    return switch (from) {
      case WEST -> true;
      case EAST -> false;
      case SOUTH -> w.frame().u().y() >= 0;
      case NORTH -> w.frame().u().y() < 0;
    };
  }
}
