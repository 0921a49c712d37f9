package holloway.house;

import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * Two leaves of masonry with a gap between that keeps the damp out: never a way for cable.
 *
 * @param there false where somebody stated a kind of wall that has none
 * @param leaves outer leaf, gap, inner leaf; empty when nobody measured them
 */
public record Cavity(boolean there, List<Fact<Length>> leaves) {
  /** Stated to be another wall. */
  public static final Cavity NONE = new Cavity(false, List.of());

  public Cavity {
    leaves = List.copyOf(leaves);
  }

  /** Of the outer leaf, if somebody measured it. */
  public Optional<Length> outer() {
    return leaves.stream().findFirst().map(Fact::value);
  }

  /** Of the gap, if somebody measured it. */
  public Optional<Length> gap() {
    return leaves.stream().skip(1).findFirst().map(Fact::value);
  }
}
