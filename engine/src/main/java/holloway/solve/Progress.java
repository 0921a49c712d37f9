package holloway.solve;

/** Hears how far the planner is. Calls come in the planner's own thread. */
@FunctionalInterface
public interface Progress {
  Progress SILENT = (what, done, of) -> {};

  /** {@code done} of {@code of} rounds of {@code what} are finished. */
  void at(String what, int done, int of);
}
