package holloway.survey;

import java.util.Comparator;

/**
 * One measurement or prior of a network: position {@code to} less position {@code from} is {@code
 * value}, with one standard deviation {@code spread}; nanometres.
 *
 * @param label what a person would recognise, with the line of the file
 */
record Observation(int from, int to, long value, long spread, Label label) {
  static final Comparator<Observation> ORDER =
      Comparator.comparingInt(Observation::from)
          .thenComparingInt(Observation::to)
          .thenComparingLong(Observation::value)
          .thenComparingLong(Observation::spread)
          .thenComparing(Observation::text)
          .thenComparing(o -> o.label().where())
          .thenComparing(o -> o.label().sort());

  Observation {
    if (spread <= 0) {
      throw new IllegalArgumentException("spread must be positive: " + label);
    }
  }

  String text() {
    return label.text();
  }

  double variance() {
    double mm = spread / 1e6;
    return mm * mm;
  }
}
