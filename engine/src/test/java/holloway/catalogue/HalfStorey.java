package holloway.catalogue;

/**
 * The house of those features that are at home under a slope: a storey and a half, three rooms in a
 * row, knee walls north and south, a door into the side attic from the west room and a desk on the
 * knee wall of the east one.
 */
final class HalfStorey {
  private static final String HOUSE =
      """
      house: Half Storey
      place: us
      built: 1990
      outer-walls: { studs: 2x4, every: 16 in, fill: faced-batt }
      inner-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { ceiling-height: 8 ft, floor: slab }
        upper: { above: ground, ceiling-height: 2.3 m, floor: { joists: 2x10, every: 16 in, run: north-south } }
      rooms:
        hall: { level: ground, size: 12 m x 8 m }
        west: { level: upper, size: 4 m x 4 m, above: hall, align: south-west, shift-north: 2 m, tied: measured, ceiling: vaulted }
        middle: { level: upper, size: 3771.4 mm x 4 m, east-of: west, align: south, ceiling: vaulted }
        east: { level: upper, size: 4 m x 4 m, east-of: middle, align: south, ceiling: vaulted }
      openings:
        - { opening, side: west north, from: west 1 m, width: 600 mm, sill: 50 mm, head: 450 mm }
        - { door, between: [west, middle], from: south 1.5 m, width: 762 mm }
      roof:
        - { name: top roof, over: upper, shape: gable, ridge: east-west, pitch: 8/12, frame: rafters, chord: 2x6, every: 24 in,
            knee-walls: [
              { side: west north, height: HEIGHT, behind: bare }, { side: middle north, height: 1.2 m },
              { side: east north, height: 1.2 m, behind: BEHIND }, { side: west south, height: 1.2 m },
              { side: middle south, height: 1.2 m }, { side: east south, height: 1.2 m } ]DORMERS }
      cabinet: { in: west, wall: north, from: west 3 m, height: 500 mm }
      outlets:
        - { name: desk, in: east, wall: north, from: east 2 m, height: 400 mm, cables: [cat6] }
      """;

  private HalfStorey() {}

  /**
   * @param height of the west room's north knee wall
   * @param behind what the back of the east room's is closed with
   * @param dormers further keys of the roof, with a comma before them, or nothing
   */
  static String text(String height, String behind, String dormers) {
    return HOUSE.replace("HEIGHT", height).replace("BEHIND", behind).replace("DORMERS", dormers);
  }
}
