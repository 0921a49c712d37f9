package holloway.solve;

/**
 * A plan kept aside.
 *
 * @param method index of the method of each hole, meaningful where a path passes it
 */
record Solution(Path[] paths, int[] method, int routed, long price) {
  /** More runs first, then a lower price. */
  boolean betterThan(Solution other) {
    return other == null || routed > other.routed || routed == other.routed && price < other.price;
  }
}
