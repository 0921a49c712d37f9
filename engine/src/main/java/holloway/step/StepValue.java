package holloway.step;

import java.util.List;

/** One value of an entity. */
public sealed interface StepValue {
  /** A string, decoded. */
  record Text(String text) implements StepValue {}

  /** An integer or a real. */
  record Number(double value) implements StepValue {}

  /** An enumeration, without its dots: {@code .T.} is {@code T}. */
  record Word(String name) implements StepValue {}

  /** A binary, as it is written: the count of unused bits, then hexadecimal digits. */
  record Bits(String digits) implements StepValue {}

  /** {@code #12}. */
  record Ref(long id) implements StepValue {}

  /** {@code IFCLENGTHMEASURE(0.3048)}. */
  record Typed(String type, List<StepValue> values) implements StepValue {
    public Typed {
      values = List.copyOf(values);
    }
  }

  /** A list, a set, or what else stands in brackets. */
  record Many(List<StepValue> items) implements StepValue {
    public Many {
      items = List.copyOf(items);
    }
  }

  /** What is not given: {@code $}, or {@code *} where it follows from something else. */
  enum Absent implements StepValue {
    UNSET,
    DERIVED
  }
}
