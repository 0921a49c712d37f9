package holloway.pipeline;

/** An invented single storey on a slab: one wall between two rooms, a walkable attic over it. */
public final class ToyAttic {
  private ToyAttic() {}

  /** Cabinet on one side of the middle wall, a desk 8 ft further along on the other. */
  public static final String TEXT =
      """
      house: Attic Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        south room: { level: ground, size: 20 ft x 12 ft }
        north room: { level: ground, size: 20 ft x 12 ft, north-of: south room, align: west }
      walls:
        - { between: [south room, north room], name: middle }
      roof:
        - { over: ground, shape: gable, ridge: east-west, pitch: 4/12, eaves: 16 in, frame: trusses, every: 24 in,
            hatch: { in: north room, at: [west 10 ft, south 2 ft], size: 22 in x 30 in } }
      cabinet: { in: south room, wall: north, from: west 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: north room, wall: south, from: west 12 ft, height: 16 in, cables: [cat6] }
      """;
}
