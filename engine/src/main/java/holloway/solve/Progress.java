package holloway.solve;

/** Hears how far the planner is. Calls come in the planner's own thread. */
@FunctionalInterface
public interface Progress {
  Progress SILENT = (what, done, of) -> {};

  /** {@code done} of {@code of} rounds of {@code what} are finished. */
  void at(String what, int done, int of);

  /** A plan of this price is in hand, and no plan costs less than the bound; units both. */
  default void closing(long price, long bound) {}
}
