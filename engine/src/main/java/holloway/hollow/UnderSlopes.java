package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.KneeRoof;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;

/**
 * How high walls and rooms reach under a roof with knee walls: they are stated with the height
 * under the ridge, and the slope cuts them off.
 */
final class UnderSlopes {
  /** Board, and what is lost where a stud is cut to the slope; from experience. */
  private static final long BELOW = 50_000_000;

  private final Framed framed;
  private final List<KneeRoof> roofs;

  UnderSlopes(Framed framed) {
    this.framed = framed;
    roofs =
        framed.placed().house().roofs().stream()
            .flatMap(r -> KneeRoof.of(framed.placed(), framed.decks(), r).stream())
            .toList();
  }

  /** The height, in a wall's own frame, that its bays keep under along a stretch of it. */
  long top(Wall w, Interval s) {
    long top = Long.MAX_VALUE;
    for (Wall.WallFace f : w.faces()) {
      Optional<KneeRoof> roof = over(f.room());
      for (long at : new long[] {s.lo(), s.hi()}) {
        for (long t : new long[] {w.core().lo(), w.core().hi()}) {
          Point2 p = w.world(at, t, 0).plan();
          long z = roof.map(r -> r.underside(p) - BELOW).orElse(Long.MAX_VALUE);
          top = Math.min(top, z == Long.MAX_VALUE ? z : z - w.frame().origin().z());
        }
      }
    }
    return top;
  }

  /** World z under which cable on a room's walls is under its slope wherever it runs. */
  long over(PlacedRoom r) {
    return over(r.name())
        .map(
            roof ->
                Math.max(
                    r.floorZ() + 2 * BELOW,
                    r.outline().corners().stream().mapToLong(roof::underside).min().orElseThrow()
                        - BELOW))
        .orElse(Long.MAX_VALUE);
  }

  private Optional<KneeRoof> over(String room) {
    return roofs.stream().filter(r -> r.isOver(framed.placed(), room)).findFirst();
  }
}
