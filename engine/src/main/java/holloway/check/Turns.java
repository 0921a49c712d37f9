package holloway.check;

import java.util.List;

/** How much a path turns. */
final class Turns {
  private Turns() {}

  /** Sum of the angles between consecutive stretches, degrees. */
  static double degrees(Walk.At leg) {
    double degrees = 0;
    List<Span> spans = leg.spans().stream().filter(s -> s.length() > 0.5).toList();
    for (int i = 0; i + 1 < spans.size(); i++) {
      Mm a = spans.get(i).b().minus(spans.get(i).a()).unit();
      Mm b = spans.get(i + 1).b().minus(spans.get(i + 1).a()).unit();
      degrees += Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, a.dot(b)))));
    }
    return degrees;
  }

  static long quarters(Walk.At leg) {
    return Math.round(degrees(leg) / 90);
  }
}
