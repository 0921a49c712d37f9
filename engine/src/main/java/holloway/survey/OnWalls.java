package holloway.survey;

import holloway.geometry.Interval;
import holloway.house.Along;
import holloway.house.Fact;
import holloway.house.Found;
import holloway.house.House;
import holloway.house.Opening;
import holloway.house.Origin;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.house.Where;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Puts openings and known studs on walls, and refuses what lies off them. */
final class OnWalls {
  private final House house;

  /** A wall that leaves less than this over it goes up to the ceiling. */
  private static final long LEAST_OVER_LOW = 300_000_000;

  /** Over a lowered ceiling it may leave less, where nobody sees it. */
  private static final long LEAST_UNSEEN = 10_000_000;

  private final WallFinder finder;
  private final List<PlacedRoom> rooms;
  private final Texts texts;
  private final Problems problems;
  private final TreeMap<String, Wall> walls = new TreeMap<>();

  OnWalls(
      House house,
      WallFinder finder,
      List<PlacedRoom> rooms,
      List<Wall> all,
      Texts texts,
      Problems problems) {
    this.rooms = rooms;
    this.house = house;
    this.finder = finder;
    this.texts = texts;
    this.problems = problems;
    all.forEach(w -> walls.put(w.id(), w));
  }

  /** By id, with everything on them. */
  List<Wall> place() {
    house.walls().forEach(this::stated);
    house.found().stream()
        .filter(Found.Stud.class::isInstance)
        .map(Found.Stud.class::cast)
        .sorted(Comparator.comparing(Found.Stud::where))
        .forEach(this::found);
    house.openings().forEach(this::opening);
    DormerGaps.of(house).forEach(this::gap);
    walls.values().forEach(this::checkOpenings);
    return List.copyOf(walls.values());
  }

  private void stated(WallSpec spec) {
    if (spec.ref().isEmpty()) {
      return;
    }
    if (OpenSide.isThrough(spec)) {
      open(spec);
      return;
    }
    List<WallFinder.Stretch> bases =
        finder.bases(spec.ref().get(), spec.studsFrom().map(Along::from));
    if (bases.isEmpty()) {
      problems.add(spec.where(), "there is no wall %s", words(spec.ref().get()));
    } else if (spec.traits().height().isPresent()) {
      low(spec, bases.get(0).wall());
    }
    if (!bases.isEmpty() && spec.studsFrom().isPresent()) {
      stud(bases, spec.studsFrom().get(), Origin.MEASURED, spec.where(), words(spec.ref().get()));
    }
  }

  private void open(WallSpec spec) {
    if (OpenSide.of(rooms, spec).isEmpty()) {
      problems.add(
          spec.where(),
          "nothing is open %s: no side of one lies against a side of the other. Maybe another wall stands between them, or they do not share a level",
          words(spec.ref().get()));
    }
  }

  private void low(WallSpec spec, Wall w) {
    long top = w.frame().origin().z() + w.height() + Makeup.CAP;
    for (Wall.WallFace f : w.faces()) {
      long ceiling = finder.room(f.room()).ceilingZ();
      if (top > ceiling - (isUnseen(f.room(), ceiling, top) ? LEAST_UNSEEN : LEAST_OVER_LOW)) {
        problems.add(
            spec.where(),
            "a wall %s high %s leaves only %s below the ceiling of %s; leave 'height' out where a wall goes up to the ceiling, or state the dropped-ceiling that hides its top",
            texts.length(spec.traits().height().orElseThrow().value().nm()),
            words(spec.ref().get()),
            texts.length(Math.max(0, ceiling - top)),
            f.room());
        return;
      }
    }
  }

  /** True when a lowered ceiling over the whole room hangs below the wall's top. */
  private boolean isUnseen(String room, long ceiling, long top) {
    return house.soffits().stream()
        .filter(s -> s.face().isEmpty() && s.room().equals(room))
        .anyMatch(s -> ceiling - s.drop().value().nm() <= top);
  }

  private void found(Found.Stud stud) {
    WallRef ref = new WallRef(Optional.empty(), Optional.of(stud.face()), stud.where());
    stud(finder.bases(ref), stud.along(), Origin.FOUND, stud.where(), words(ref));
  }

  /** The first found stud wins over later ones, any found one over a stated one. */
  private void stud(
      List<WallFinder.Stretch> bases, Along along, Origin origin, Where where, String words) {
    Optional<WallFinder.Stretch> at = spot(bases, along, 0, where, words);
    if (at.isEmpty()) {
      return;
    }
    Wall w = walls.get(at.get().wall().id());
    if (w.studOrigin().origin() == Origin.FOUND) {
      return;
    }
    Fact<Long> fact = new Fact<>(at.get().s().lo(), along.distance().spread(), origin, where);
    walls.put(w.id(), Walls.withStudOrigin(w, fact));
  }

  private Optional<WallFinder.Stretch> spot(
      List<WallFinder.Stretch> bases, Along along, long width, Where where, String words) {
    if (bases.isEmpty()) {
      problems.add(where, "there is no wall %s", words);
      return Optional.empty();
    }
    if (!WallFinder.hasEnd(bases.get(0).wall(), along.from())) {
      problems.add(where, "the wall %s has no %s end to tape from", words, along.from().word());
      return Optional.empty();
    }
    Optional<WallFinder.Stretch> at = finder.at(bases, along, width);
    if (at.isEmpty()) {
      long most = bases.stream().mapToLong(b -> b.s().length()).max().orElseThrow();
      problems.add(
          where,
          "%s from %s and %s wide is off the wall %s, which shows %s",
          texts.length(along.distance().value().nm()),
          along.from().word(),
          texts.length(width),
          words,
          texts.length(most));
    }
    return at;
  }

  private Optional<WallFinder.Stretch> place(Opening o) {
    return spot(
        finder.bases(o.wall(), Optional.of(o.along().from())),
        o.along(),
        o.width().value().nm(),
        o.where(),
        words(o.wall()));
  }

  /**
   * A knee wall stops at a dormer's cheeks: as high as the room, so that nothing passes over it.
   */
  private void gap(Opening o) {
    place(o)
        .ifPresent(
            at -> {
              Wall w = walls.get(at.wall().id());
              long foot = w.frame().origin().z();
              long top = w.height() + 1;
              for (Wall.WallFace f : w.faces()) {
                top = Math.max(top, finder.room(f.room()).ceilingZ() - foot);
              }
              add(w, o, at.s(), new Interval(0, top));
            });
  }

  private void opening(Opening o) {
    String words = words(o.wall());
    Optional<WallFinder.Stretch> at = place(o);
    if (at.isEmpty()) {
      return;
    }
    Wall w = walls.get(at.get().wall().id());
    if (w.isOpen()) {
      problems.add(o.where(), "the wall %s is an open side: it has no openings", words);
      return;
    }
    Interval z = height(o, at.get().from().floorZ() - w.frame().origin().z());
    if (z.hi() > w.height() - Walls.topPlates(w)) {
      problems.add(
          o.where(),
          "an opening with its head at %s does not fit under the top of the wall %s",
          texts.length(o.head().value().nm()),
          words);
      return;
    }
    add(w, o, at.get().s(), z);
  }

  private void add(Wall w, Opening o, Interval s, Interval z) {
    Interval whole = new Interval(0, w.length());
    Interval rough = new Interval(whole.clamp(s.lo() - beside(o)), whole.clamp(s.hi() + beside(o)));
    List<Wall.WallOpening> all = new ArrayList<>(w.openings());
    all.add(new Wall.WallOpening(o, rough, z));
    all.sort(
        Comparator.comparingLong((Wall.WallOpening x) -> x.s().lo())
            .thenComparingLong(x -> x.z().lo()));
    walls.put(w.id(), Walls.withOpenings(w, all));
  }

  /** Rough opening beyond the stated one on either side. */
  private static long beside(Opening o) {
    return switch (o.kind()) {
      case DOOR -> Makeup.DOOR_WIDER / 2;
      case WINDOW -> Makeup.WINDOW_ROUND;
      case OPENING -> Makeup.BOARD;
    };
  }

  /** Rough sill and head in the wall's frame, the room's floor being at {@code floor} there. */
  private static Interval height(Opening o, long floor) {
    long sill = o.sill().value().nm();
    long over = o.kind() == Opening.Kind.DOOR ? Makeup.DOOR_HIGHER : beside(o);
    long bottom = Math.max(0, floor + sill - (sill > 0 ? beside(o) : 0));
    return new Interval(bottom, Math.max(bottom, floor + o.head().value().nm() + over));
  }

  private void checkOpenings(Wall w) {
    for (int i = 0; i < w.openings().size(); i++) {
      for (int j = i + 1; j < w.openings().size(); j++) {
        Wall.WallOpening a = w.openings().get(i);
        Wall.WallOpening b = w.openings().get(j);
        if (a.s().overlaps(b.s()) && a.z().overlaps(b.z())) {
          problems.add(
              b.opening().where(),
              "two openings share space in the wall %s; the other is at %s",
              w.id(),
              a.opening().where());
        }
      }
    }
  }

  private static String words(WallRef ref) {
    return ref.between()
        .map(
            b ->
                "between "
                    + b.one()
                    + " and "
                    + b.other()
                    + (b.ordinal() == 1 ? "" : " " + b.ordinal()))
        .orElseGet(() -> "behind " + ref.face().orElseThrow());
  }
}
