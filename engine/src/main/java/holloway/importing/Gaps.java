package holloway.importing;

import holloway.geometry.Interval;
import holloway.house.Side;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The walls between rooms, as the gaps that their faces leave. */
final class Gaps {
  /** Wider than this is a space; as the survey has it. */
  static final long MOST = 450 * Length.NM_PER_MM;

  /** Shorter stretches are a corner, not a wall. */
  private static final long LEAST_STRETCH = 60 * Length.NM_PER_MM;

  private Gaps() {}

  /**
   * Two faces that look at each other, the west or south one first.
   *
   * @param wide between them, nanometres
   * @param stretch how long they do, nanometres
   */
  record Gap(Face low, Face high, long wide, long stretch) {}

  static List<Gap> of(Floors floors) {
    List<Gap> out = new ArrayList<>();
    for (int level = 0; level < floors.levels().size(); level++) {
      for (Side side : List.of(Side.EAST, Side.NORTH)) {
        List<Face> low = square(floors.rooms(level), side);
        List<Face> high = square(floors.rooms(level), side.opposite());
        low.forEach(f -> look(f, high, out));
      }
    }
    return out;
  }

  private static List<Face> square(List<PlanRoom> rooms, Side side) {
    return rooms.stream().flatMap(r -> r.faces(side).stream()).filter(Face::isSquare).toList();
  }

  /** The nearest face in front of each stretch. */
  private static void look(Face f, List<Face> high, List<Gap> out) {
    List<Face> ahead =
        high.stream()
            .filter(g -> g.room() != f.room())
            .filter(g -> g.across() >= f.across() && g.across() - f.across() <= MOST)
            .sorted(Comparator.comparingLong(Face::across).thenComparing(g -> g.room().name()))
            .toList();
    List<Interval> left = List.of(f.stretch());
    for (Face g : ahead) {
      List<Interval> taken = new ArrayList<>();
      left.forEach(
          l -> l.cut(g.stretch()).filter(i -> i.length() >= LEAST_STRETCH).ifPresent(taken::add));
      long length = taken.stream().mapToLong(Interval::length).sum();
      if (length > 0) {
        out.add(new Gap(f, g, g.across() - f.across(), length));
        left = left.stream().flatMap(l -> l.without(taken, 1).stream()).toList();
      }
    }
  }
}
