package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What only some walls are: shared with somebody else, punched at the works, lined with several
 * layers.
 *
 * @param party a wall shared with a neighbour: nothing is bored, cut into, fixed in or led through
 * @param knockouts heights of the openings punched in steel studs, from the foot of the stud; empty
 *     when nobody said
 * @param layers linings of several layers, by the side they are stated for
 */
public record WallTraits(
    Optional<Boolean> party, List<Fact<Length>> knockouts, List<Layers> layers) {
  /** The layers on one side, from the studs outward; no side: on both. */
  public record Layers(Optional<Side> side, List<Fact<Length>> thicknesses) {
    public Layers {
      thicknesses = List.copyOf(thicknesses);
    }

    /** All layers together, nanometres. */
    public long nm() {
      return thicknesses.stream().mapToLong(t -> t.value().nm()).sum();
    }
  }

  /** A wall of which none of it is said. */
  public static final WallTraits NONE = new WallTraits(Optional.empty(), List.of(), List.of());

  public WallTraits {
    knockouts = List.copyOf(knockouts);
    layers = List.copyOf(layers);
  }

  public boolean isParty() {
    return party.orElse(false);
  }

  /** What either says, this first. */
  public WallTraits or(WallTraits o) {
    return new WallTraits(
        party.or(o::party),
        knockouts.isEmpty() ? o.knockouts : knockouts,
        layers.isEmpty() ? o.layers : layers);
  }

  /** The layers stated for a side: those of the side itself before those of both. */
  public Optional<Layers> findLayers(Side side) {
    return layers.stream()
        .filter(l -> l.side().equals(Optional.of(side)))
        .findFirst()
        .or(() -> layers.stream().filter(l -> l.side().isEmpty()).findFirst());
  }
}
