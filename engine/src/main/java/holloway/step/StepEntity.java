package holloway.step;

import java.util.List;

/**
 * One line of the data: a number, a type and values; some entities are of several types at once and
 * have a part for each.
 *
 * @param id without the {@code #}; 0 in the header
 * @param line where it begins
 */
public record StepEntity(long id, List<Part> parts, int line) {
  /** A type in capitals and its values. */
  public record Part(String type, List<StepValue> values) {
    public Part {
      values = List.copyOf(values);
    }
  }

  public StepEntity {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("#" + id + " has no type");
    }
  }

  /** The (first) type. */
  public String type() {
    return parts.get(0).type();
  }

  /** The value at a place from 0 of the (first) type; unset when there are fewer. */
  public StepValue value(int at) {
    List<StepValue> values = parts.get(0).values();
    return at < values.size() ? values.get(at) : StepValue.Absent.UNSET;
  }
}
