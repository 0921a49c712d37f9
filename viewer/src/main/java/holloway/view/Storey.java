package holloway.view;

/**
 * A level's share of the height, metres: from below its floor to below the floor of the next over
 * it.
 *
 * @param part of a split-level house; parts stand beside each other
 * @param floor the finished floor, {@code ceiling} the underside of the ceiling
 */
public record Storey(
    String name, int order, int part, float floor, float ceiling, float low, float high) {
  boolean holds(float z) {
    return z >= low && z < high;
  }
}
