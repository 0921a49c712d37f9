package holloway.framing;

import holloway.geometry.Interval;
import holloway.house.Direction;
import holloway.house.Roof;
import java.util.Optional;

/**
 * The underside of an arched roof: a part of a circle from outer bearing face to outer bearing
 * face, at most half of one. Millimetres over the plates.
 *
 * @param span level, from eave to eave
 * @param spring its height over a bearing face
 * @param crown its height in the middle
 */
public record Arch(double span, double spring, double crown) {
  /** Of an attic under such a roof; empty where no part of a circle goes with what was taped. */
  public static Optional<Arch> of(Attic a) {
    return a.roof().shape() == Roof.Shape.ARCHED ? of(a.roof(), a) : Optional.empty();
  }

  private static Optional<Arch> of(Roof roof, Attic a) {
    Interval across =
        roof.ridge() == Direction.EAST_WEST ? a.roofline().yRange() : a.roofline().xRange();
    double chord = roof.chord().value().depth().toMm();
    double rise = roof.rise().map(f -> f.value().toMm()).orElse(0.0);
    Arch arch = new Arch(across.length() / 1e6, a.heelMm() - chord, rise + chord);
    double high = arch.crown - arch.spring;
    return high > 0 && high <= arch.span / 2 ? Optional.of(arch) : Optional.empty();
  }

  double radius() {
    double high = crown - spring;
    return (span * span / 4 + high * high) / (2 * high);
  }

  /** At a level distance from the nearer bearing face. */
  double under(double in) {
    double off = span / 2 - Math.max(0, Math.min(span / 2, in));
    double r = radius();
    return crown - r + Math.sqrt(r * r - off * off);
  }

  /** The level distance from a bearing face at which it is first that high; huge where never. */
  public double first(double high) {
    if (high > crown) {
      return 1e9;
    }
    double r = radius();
    double up = Math.max(0, high - (crown - r));
    return high <= spring ? 0 : Math.max(0, span / 2 - Math.sqrt(r * r - up * up));
  }
}
