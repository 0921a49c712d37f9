package holloway.house;

import holloway.units.Length;

/**
 * A quantity with its pedigree.
 *
 * @param spread one standard deviation for a length; zero for choices
 */
public record Fact<T>(T value, Length spread, Origin origin, Where where) {
  /** Tape spread unless the person says otherwise: 5 mm a measurement (behind-the-board L7). */
  public static final Length TAPE = Length.mm(5);

  public static Fact<Length> measured(Length value, Where where) {
    return new Fact<>(value, TAPE, Origin.MEASURED, where);
  }

  public static <T> Fact<T> stated(T value, Where where) {
    return new Fact<>(value, Length.ZERO, Origin.STATED, where);
  }

  public static <T> Fact<T> assumed(T value, Length spread) {
    return new Fact<>(value, spread, Origin.ASSUMED, Where.NOWHERE);
  }

  public static <T> Fact<T> assumed(T value) {
    return assumed(value, Length.ZERO);
  }

  public boolean isAssumed() {
    return origin == Origin.ASSUMED;
  }
}
