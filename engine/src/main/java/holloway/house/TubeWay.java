package holloway.house;

import holloway.units.Length;
import java.util.Collections;
import java.util.List;

/**
 * How a tube goes from one end to the other, and what lies in it.
 *
 * @param parts from pull box to pull box, as cable is drawn from the first end; one without any
 * @param holds cable kinds that lie in it already
 */
public record TubeWay(List<Part> parts, List<String> holds) {
  /** One stretch between two places where a hand has the cable; angles in whole degrees. */
  public record Part(Length length, List<Integer> angles) {
    public Part {
      angles = List.copyOf(angles);
    }

    /** All its turns together. */
    public int degrees() {
      return angles.stream().mapToInt(Integer::intValue).sum();
    }

    /** The same in quarter turns. */
    public double quarters() {
      return degrees() / 90.0;
    }
  }

  public TubeWay {
    parts = List.copyOf(parts);
    holds = List.copyOf(holds);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a tube has at least one part");
    }
  }

  /** One stretch with so many quarter turns, nothing in it. */
  static TubeWay of(Length length, int quarters) {
    return new TubeWay(List.of(new Part(length, Collections.nCopies(quarters, 90))), List.of());
  }

  /** What turning costs is counted in quarter turns, begun ones whole. */
  public int quarters() {
    return (parts.stream().mapToInt(Part::degrees).sum() + 89) / 90;
  }

  /** Places between its ends where a hand has the cable. */
  public int pullBoxes() {
    return parts.size() - 1;
  }
}
