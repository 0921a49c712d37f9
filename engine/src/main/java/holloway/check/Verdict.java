package holloway.check;

import java.util.List;

/** What the referee says of a plan: it stands when nothing is refused. */
public record Verdict(List<Refusal> refusals) {
  public Verdict {
    refusals = List.copyOf(refusals);
  }

  public boolean stands() {
    return refusals.isEmpty();
  }
}
