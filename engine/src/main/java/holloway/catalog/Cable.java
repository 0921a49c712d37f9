package holloway.catalog;

import holloway.units.Length;
import java.util.Optional;

/**
 * A cable kind.
 *
 * @param outside outer diameter of the jacket
 * @param pullHead diameter that must pass a hole: wider than the jacket for factory-made fibre
 *     ends, else the jacket
 * @param bend least inside bend radius while pulled
 * @param factoryEnds sold in ready-made lengths
 */
public record Cable(
    String kind,
    Length outside,
    Length pullHead,
    Length bend,
    boolean fibre,
    boolean factoryEnds,
    boolean outdoor,
    String source) {
  public static Optional<Cable> find(String kind) {
    return Cables.ALL.stream().filter(c -> c.kind().equals(kind)).findFirst();
  }

  public static Cable get(String kind) {
    return find(kind).orElseThrow(() -> new IllegalArgumentException("no cable kind " + kind));
  }
}
