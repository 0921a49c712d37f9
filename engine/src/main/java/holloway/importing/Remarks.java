package holloway.importing;

import holloway.step.StepEntity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What has to be told to the person: things left out, things to finish. */
final class Remarks {
  /** A model of furniture must not give a file of remarks. */
  private static final int MOST = 120;

  private final List<String> all = new ArrayList<>();
  private int more;

  void add(String remark) {
    if (all.contains(remark)) {
      return;
    }
    if (all.size() < MOST) {
      all.add(remark);
    } else {
      more++;
    }
  }

  List<String> all() {
    List<String> out = new ArrayList<>(all);
    if (more > 0) {
      out.add(more + " more such remarks are not listed");
    }
    return out;
  }

  /** What {@code read} gives; if it cannot be read, that is noted and nothing is given. */
  <T> Optional<T> attempt(String what, StepEntity of, Supplier<T> read) {
    try {
      return Optional.of(read.get());
    } catch (Unreadable e) {
      String name = Model.text(of, 2).map(n -> " '" + n + "'").orElse("");
      add(
          "%s%s (line %d of the model) is left out: %s"
              .formatted(what, name, of.line(), e.getMessage()));
      return Optional.empty();
    }
  }
}
