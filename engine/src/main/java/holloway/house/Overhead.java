package holloway.house;

import java.util.List;

/**
 * What a room's ceiling is made of where somebody said more than what it shows: its layers from the
 * joists down.
 */
public record Overhead(List<WallTraits.Layer> layers) {
  /** A ceiling of which only what it shows is said. */
  public static final Overhead NONE = new Overhead(List.of());

  public Overhead {
    layers = List.copyOf(layers);
  }

  /** All layers together, nanometres; none stated: the usual thickness of what it shows. */
  public long layersNm(long usual) {
    return layers.isEmpty()
        ? usual
        : layers.stream().mapToLong(l -> l.thickness().value().nm()).sum();
  }
}
