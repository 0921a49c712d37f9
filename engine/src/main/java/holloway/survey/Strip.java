package holloway.survey;

import holloway.geometry.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A stretch of wall in the frame of its heading while walls are being made out of the gaps.
 *
 * @param kind between two rooms, outer, or towards space that nothing accounts for
 * @param s visible stretch
 * @param t whole thickness
 * @param core studs or masonry
 * @param outside 0 or 1 when that side is outside, else -1
 * @param shown what each side shows: faces of rooms with their visible stretch
 */
record Strip(
    Heading heading,
    Kind kind,
    Interval s,
    Interval t,
    Interval core,
    int outside,
    Make make,
    List<Shown> shown) {

  /** What lies on the far side of the room whose face was looked at. */
  enum Kind {
    BETWEEN,
    OUTER,
    SPACE
  }

  /** A stretch of a room's face on side 0 (low t) or 1. */
  record Shown(Edge edge, int side, Interval s) {}

  Strip {
    shown = List.copyOf(shown);
  }

  static final Comparator<Strip> ORDER =
      Comparator.comparingLong((Strip a) -> a.s.lo())
          .thenComparingLong(a -> a.core.lo())
          .thenComparing(a -> a.kind)
          .thenComparing(a -> a.shown.get(0).edge().id());

  /** The longest first; of those as long, by what a mirror keeps: the rooms that they show to. */
  static final Comparator<Strip> LONGEST =
      Comparator.comparingLong((Strip s) -> -Math.round(s.s.length() / 1e6))
          .thenComparing(Strip::rooms)
          .thenComparing(ORDER);

  /** The rooms that it shows to, whichever side they lie on. */
  String rooms() {
    return shown.stream()
        .map(f -> f.edge().room().name())
        .distinct()
        .sorted()
        .collect(Collectors.joining("-"));
  }

  Strip stretched(Interval more, Shown face) {
    List<Shown> faces = new ArrayList<>(shown);
    faces.add(face);
    Interval hull = new Interval(Math.min(s.lo(), more.lo()), Math.max(s.hi(), more.hi()));
    return new Strip(heading, kind, hull, t, core, outside, make, faces);
  }

  Strip withMake(Make other) {
    return new Strip(heading, kind, s, t, core, outside, other, shown);
  }

  Strip withS(Interval other) {
    return new Strip(heading, kind, other, t, core, outside, make, shown);
  }

  /** Names of the first room on each side from west or south. */
  List<String> sides() {
    return List.of(side(0), side(1));
  }

  private String side(int side) {
    Optional<Shown> first =
        shown.stream()
            .filter(f -> f.side() == side)
            .min(
                Comparator.comparingLong((Shown f) -> f.s().lo())
                    .thenComparing(f -> f.edge().id()));
    return first.map(f -> f.edge().room().name()).orElse(outside == side ? "outside" : "space");
  }

  boolean isOuter() {
    return outside >= 0;
  }

  /** Another strip's core seen along this one, when the two are square to each other. */
  Interval acrossOf(Strip o, Interval otherT) {
    return heading.isEastWest() ? new Interval(-otherT.hi(), -otherT.lo()) : otherT;
  }

  /** A stretch along a square strip seen across this one. */
  Interval alongOf(Strip o, Interval otherS) {
    return heading.isEastWest() ? otherS : new Interval(-otherS.hi(), -otherS.lo());
  }

  boolean isSquareTo(Strip o) {
    return heading.isSquare()
        && o.heading.isSquare()
        && heading.isEastWest() != o.heading.isEastWest();
  }
}
