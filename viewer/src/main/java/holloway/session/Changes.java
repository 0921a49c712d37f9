package holloway.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was changed, oldest first, and what was undone and can be done again. A value.
 *
 * @param undone the one that comes back first is the last
 */
public record Changes(List<Change> done, List<Change> undone) {
  public static final Changes NONE = new Changes(List.of(), List.of());

  public Changes {
    done = List.copyOf(done);
    undone = List.copyOf(undone);
  }

  /** With one more; what was undone is forgotten. */
  public Changes then(Change c) {
    List<Change> next = new ArrayList<>(done);
    next.add(c);
    return new Changes(next, List.of());
  }

  /** Without the last; empty when there is none. */
  public Optional<Changes> undo() {
    if (done.isEmpty()) {
      return Optional.empty();
    }
    List<Change> back = new ArrayList<>(undone);
    back.add(done.get(done.size() - 1));
    return Optional.of(new Changes(done.subList(0, done.size() - 1), back));
  }

  /** With the last that was undone; empty when there is none. */
  public Optional<Changes> redo() {
    if (undone.isEmpty()) {
      return Optional.empty();
    }
    List<Change> next = new ArrayList<>(done);
    next.add(undone.get(undone.size() - 1));
    return Optional.of(new Changes(next, undone.subList(0, undone.size() - 1)));
  }
}
