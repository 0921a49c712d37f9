package holloway.hollow;

import holloway.framing.Attic;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Polygon2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two attics that rest on one wall at one height, of which nobody said whether one leads into the
 * other: through an opening in the end between them, or where one roof runs onto the other and the
 * lower one's sheathing was cut out below it. They are taken as shut.
 *
 * @param along the stretch of the wall that they have in common, world y where it runs north-south,
 *     else world x
 */
public record AtticsBeside(Attic a, Attic b, Interval along, boolean northSouth) {
  /** Joists of one ceiling: more apart, the wall of a room stands between the attics. */
  private static final long LEVEL = 100_000_000;

  /** From experience: an arm passes a hole of this width. */
  private static final long LEAST = 150_000_000;

  /** Each two once, in the order of the roofs' names. */
  public static List<AtticsBeside> unstated(List<Attic> attics) {
    List<AtticsBeside> out = new ArrayList<>();
    for (Attic a : attics) {
      for (Attic b : attics) {
        boolean once = a.roof().name().compareTo(b.roof().name()) < 0;
        boolean level = Math.abs(a.chordTopZ() - b.chordTopZ()) <= LEVEL;
        if (once && level && !isStated(a, b) && !isStated(b, a)) {
          shared(a, b).ifPresent(out::add);
        }
      }
    }
    return out;
  }

  /** Stated openings that have no place in this house, each with the reason. */
  public static List<Refused> disbelieved(List<Attic> attics) {
    List<Refused> out = new ArrayList<>();
    AtticJoins.places(attics, out);
    return out;
  }

  private static boolean isStated(Attic a, Attic b) {
    return a.roof().joins().stream().anyMatch(j -> j.to().equals(b.roof().name()));
  }

  private static Optional<AtticsBeside> shared(Attic a, Attic b) {
    Optional<Polygon2> common =
        Spaces.largest(Overlay.shared(a.outline().toJts(), b.outline().toJts()));
    return common
        .map(
            c -> {
              boolean northSouth = c.yRange().length() > c.xRange().length();
              return new AtticsBeside(a, b, northSouth ? c.yRange() : c.xRange(), northSouth);
            })
        .filter(s -> s.along().length() >= LEAST);
  }
}
