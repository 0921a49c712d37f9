package holloway.pipeline;

/**
 * An invented single storey on a slab with solid outer walls: two rooms of 5 m by 3.5 m, one north
 * of the other, under a walkable attic. The wall between them is framed and holds the cabinet; a
 * desk and a bench stand on the solid east wall, so a channel up to the ceiling is how they are
 * reached out of sight.
 */
public final class StoneHouse {
  private StoneHouse() {}

  public static final String TEXT =
      """
      house: Stone Toy
      place: uk
      built: 1920
      outer-walls: { kind: masonry, thickness: 240 mm }
      inner-walls: { studs: 50x100, every: 400 mm }
      levels:
        ground: { floor: slab, ceiling-height: 2400 mm }
      rooms:
        south room: { level: ground, size: 5 m x 3500 mm }
        north room: { level: ground, size: 5 m x 3500 mm, north-of: south room, align: west }
      walls:
        - { between: [south room, north room], name: middle }
      roof:
        - { over: ground, shape: gable, ridge: east-west, pitch: 40 deg, eaves: 300 mm, frame: trusses, every: 600 mm,
            hatch: { in: north room, at: [west 2500 mm, south 800 mm], size: 600 mm x 600 mm } }
      cabinet: { in: south room, wall: north, from: west 1 m, height: 1500 mm }
      outlets:
        - { name: desk, in: north room, wall: east, from: south 1 m, height: 400 mm, cables: [cat6] }
        - { name: bench, in: south room, wall: east, from: north 1 m, height: 900 mm, cables: [cat6] }
      """;
}
