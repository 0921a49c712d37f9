package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What a room's ceiling is made of where somebody said more than what it shows: its layers from the
 * joists down, and the straps that hold them off the joists.
 *
 * @param straps depth of battens across the joists, between the joists and the layers
 */
public record Overhead(List<WallTraits.Layer> layers, Optional<Fact<Length>> straps) {
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

  /** Depth of the void between the straps, nanometres; 0 where there are none. */
  public long strapsNm() {
    return straps.map(s -> s.value().nm()).orElse(0L);
  }
}
