package holloway.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A stage's value together with what it found on the way. */
public record Outcome<T>(T value, List<Finding> findings) {
  public Outcome {
    findings = List.copyOf(findings);
  }

  public <R> Outcome<R> then(Function<T, Outcome<R>> stage) {
    Outcome<R> next = stage.apply(value);
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(next.findings);
    return new Outcome<>(next.value, all);
  }
}
