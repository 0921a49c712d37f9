package holloway.house;

import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
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
 * @param height of a wall that ends below the ceiling, over the floor, its cap included
 * @param rows of studs one behind the other; one unless said
 * @param hollow depth of the void behind board on battens or dabs
 * @param split between parts of the house with floors at other heights: party too, since nobody
 *     knows what stands in it
 * @param header how far the beam over an open side hangs below the ceiling
 * @param battens service layers before a framed wall, by the side they are stated for
 * @param cavity of masonry in two leaves
 */
public record WallTraits(
    Optional<Boolean> party,
    List<Fact<Length>> knockouts,
    List<Layers> layers,
    Optional<Fact<Length>> height,
    Optional<Fact<Length>> header,
    Optional<Integer> rows,
    Optional<Fact<Length>> hollow,
    boolean split,
    List<Battens> battens,
    Optional<Cavity> cavity) {
  /** Of a wall between rooms of one level, or an outer one. */
  public WallTraits(
      Optional<Boolean> party,
      List<Fact<Length>> knockouts,
      List<Layers> layers,
      Optional<Fact<Length>> height,
      Optional<Fact<Length>> header,
      Optional<Integer> rows,
      Optional<Fact<Length>> hollow) {
    this(
        party, knockouts, layers, height, header, rows, hollow, false, List.of(), Optional.empty());
  }

  /** Of a wall whose void nobody measured. */
  public WallTraits(
      Optional<Boolean> party,
      List<Fact<Length>> knockouts,
      List<Layers> layers,
      Optional<Fact<Length>> height,
      Optional<Fact<Length>> header,
      Optional<Integer> rows) {
    this(party, knockouts, layers, height, header, rows, Optional.empty());
  }

  /** Of a wall up to the ceiling. */
  public WallTraits(Optional<Boolean> party, List<Fact<Length>> knockouts, List<Layers> layers) {
    this(party, knockouts, layers, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * The layers towards the rooms whose side this is, from the studs outward; no side: towards the
   * rooms of both.
   */
  public record Layers(Optional<Side> side, List<Layer> layers) {
    public Layers {
      layers = List.copyOf(layers);
    }

    /** All layers together, nanometres. */
    public long nm() {
      return layers.stream().mapToLong(l -> l.thickness().value().nm()).sum();
    }

    /** What is hardest to open and to make good: words of {@link Lining} stand in that order. */
    public Lining hardest() {
      return layers.stream()
          .map(Layer::what)
          .filter(l -> l != Lining.PANEL)
          .max(Comparator.naturalOrder())
          .orElse(Lining.PANEL);
    }
  }

  /** One layer of a lining; never {@link Lining#OPEN}. */
  public record Layer(Lining what, Fact<Length> thickness) {}

  /** A wall of which none of it is said. */
  public static final WallTraits NONE = new WallTraits(Optional.empty(), List.of(), List.of());

  public WallTraits {
    knockouts = List.copyOf(knockouts);
    layers = List.copyOf(layers);
    battens = List.copyOf(battens);
  }

  public boolean isDouble() {
    return rows.orElse(1) == 2;
  }

  public boolean isParty() {
    return party.orElse(false);
  }

  public boolean isSplit() {
    return split;
  }

  /** As between parts of a split-level house. */
  public WallTraits withSplit() {
    return new WallTraits(
        Optional.of(true), knockouts, layers, height, header, rows, hollow, true, battens, cavity);
  }

  /** What either says, this first. */
  public WallTraits or(WallTraits o) {
    return new WallTraits(
        party.or(o::party),
        knockouts.isEmpty() ? o.knockouts : knockouts,
        union(layers, o.layers),
        height.or(o::height),
        header.or(o::header),
        rows.or(o::rows),
        hollow.or(o::hollow),
        split || o.split,
        both(battens, o.battens),
        cavity.or(o::cavity));
  }

  public WallTraits withBattens(List<Battens> before) {
    return new WallTraits(
        party, knockouts, layers, height, header, rows, hollow, split, before, cavity);
  }

  public WallTraits withCavity(Optional<Cavity> stated) {
    return new WallTraits(
        party, knockouts, layers, height, header, rows, hollow, split, battens, stated);
  }

  public WallTraits withParty(boolean shared) {
    return new WallTraits(
        Optional.of(shared),
        knockouts,
        layers,
        height,
        header,
        rows,
        hollow,
        split,
        battens,
        cavity);
  }

  public WallTraits withKnockouts(List<Fact<Length>> heights) {
    return new WallTraits(
        party, heights, layers, height, header, rows, hollow, split, battens, cavity);
  }

  /** Layers of either, those of the first where both speak of one side. */
  private static List<Layers> union(List<Layers> mine, List<Layers> others) {
    List<Layers> out = new ArrayList<>(mine);
    for (Layers l : others) {
      if (out.stream().noneMatch(m -> m.side().equals(l.side()))) {
        out.add(l);
      }
    }
    return out;
  }

  private static List<Battens> both(List<Battens> mine, List<Battens> others) {
    List<Battens> out = new ArrayList<>(mine);
    for (Battens b : others) {
      if (out.stream().noneMatch(m -> m.side().equals(b.side()))) {
        out.add(b);
      }
    }
    return out;
  }

  /** The layers stated for a side: those of the side itself before those of both. */
  public Optional<Layers> findLayers(Side side) {
    return layers.stream()
        .filter(l -> l.side().equals(Optional.of(side)))
        .findFirst()
        .or(() -> layers.stream().filter(l -> l.side().isEmpty()).findFirst());
  }

  /** The service layer towards rooms whose side this is: its own statement before that of both. */
  public Optional<Battens> findBattens(Side side) {
    return battens.stream()
        .filter(b -> b.side().equals(Optional.of(side)))
        .findFirst()
        .or(() -> battens.stream().filter(b -> b.side().isEmpty()).findFirst());
  }

  /** What a service layer takes up before the studs towards such a room; 0 where there is none. */
  public long battensNm(Side side) {
    return findBattens(side).map(Battens::nm).orElse(0L);
  }
}
