package holloway.view;

/**
 * A level's part of the height, metres: from below its floor to below the floor of the next.
 *
 * @param floor the finished floor, {@code ceiling} the underside of the ceiling
 */
public record Storey(String name, int order, float floor, float ceiling, float low, float high) {}
