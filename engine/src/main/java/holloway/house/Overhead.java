package holloway.house;

import java.util.List;
import java.util.Optional;

/**
 * What a room's ceiling is made of where somebody said more than what it shows: its layers from the
 * joists or straps down.
 *
 * @param straps what it hangs on, where that is not the joists themselves
 */
public record Overhead(List<WallTraits.Layer> layers, Optional<Straps> straps) {
  /** A ceiling of which only what it shows is said. */
  public static final Overhead NONE = new Overhead(List.of(), Optional.empty());

  public Overhead {
    layers = List.copyOf(layers);
  }

  /** All layers together, nanometres; none stated: the usual thickness of what it shows. */
  public long layersNm(long usual) {
    return layers.isEmpty()
        ? usual
        : layers.stream().mapToLong(l -> l.thickness().value().nm()).sum();
  }

  /** Nanometres between the joists and the lining. */
  public long strapsNm() {
    return straps.map(s -> s.depth().value().nm()).orElse(0L);
  }
}
