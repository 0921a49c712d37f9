package holloway.support;

/** The beginning of a small invented house, for tests that add what they ask about. */
public final class TwoRooms {
  /** A den, a study east of it, and an attic of trusses with its hatch over the den. */
  public static final String UNDER_ONE_ROOF =
      """
      house: Two rooms and an attic (invented)
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        den: { level: ground, size: 12 ft x 12 ft }
        study: { level: ground, size: 12 ft x 12 ft, east-of: den, align: south }
      roof:
        - { over: ground, shape: gable, ridge: east-west, pitch: 8/12, frame: trusses,
            hatch: { in: den, at: [west 6 ft, south 6 ft], size: 22 in x 30 in } }
      """;

  private TwoRooms() {}
}
