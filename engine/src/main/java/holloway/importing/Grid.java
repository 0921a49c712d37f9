package holloway.importing;

import holloway.units.Length;
import holloway.units.LengthText;

/**
 * What positions are rounded to: 0.1 mm, or 1/64 in where the model is in feet or inches, so that
 * each can be written as a tape shows it.
 */
record Grid(boolean metric) {
  private static final long TENTH_MM = Length.NM_PER_MM / 10;
  private static final long SIXTY_FOURTH = Length.NM_PER_INCH / 64;

  long step() {
    return metric ? TENTH_MM : SIXTY_FOURTH;
  }

  /** Nanometres. */
  long of(double mm) {
    return Math.round(mm * Length.NM_PER_MM / step()) * step();
  }

  /** For a person, in the model's units. */
  String words(double mm) {
    Length length = Length.mm(mm);
    return metric ? LengthText.metric(length) : LengthText.feetInches(length);
  }

  Length length(double mm) {
    return new Length(of(mm));
  }

  long round(long nm) {
    return Math.round((double) nm / step()) * step();
  }
}
