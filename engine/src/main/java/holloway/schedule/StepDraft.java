package holloway.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** A step while it is put together. */
final class StepDraft {
  private final String id;
  private final Step.Kind kind;
  private final String subject;
  private final WorkPlace at;
  private Optional<WorkPlace> other = Optional.empty();
  private final TreeSet<String> runs = new TreeSet<>();
  private final TreeSet<String> needs = new TreeSet<>();
  private final List<String> makes = new ArrayList<>();
  private final List<Bring> bring = new ArrayList<>();
  private final List<Bring> bringOther = new ArrayList<>();

  StepDraft(String id, Step.Kind kind, String subject, WorkPlace at) {
    this.id = id;
    this.kind = kind;
    this.subject = subject;
    this.at = at;
  }

  StepDraft with(WorkPlace second) {
    other = second.equals(at) ? Optional.empty() : Optional.of(second);
    return this;
  }

  StepDraft runs(List<String> ids) {
    runs.addAll(ids);
    return this;
  }

  StepDraft needs(String... tokens) {
    needs.addAll(List.of(tokens));
    return this;
  }

  StepDraft makes(String... tokens) {
    makes.addAll(List.of(tokens));
    return this;
  }

  StepDraft bring(Bring... things) {
    bring.addAll(List.of(things));
    return this;
  }

  StepDraft bringOther(Bring... things) {
    (other.isPresent() ? bringOther : bring).addAll(List.of(things));
    return this;
  }

  Step done() {
    return new Step(
        id,
        kind,
        subject,
        at,
        other,
        0,
        0,
        0,
        0,
        List.copyOf(runs),
        List.copyOf(needs),
        makes,
        bring,
        bringOther);
  }
}
