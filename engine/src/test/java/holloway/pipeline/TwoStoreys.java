package holloway.pipeline;

/** An invented two-storey house that tests change word by word. */
public final class TwoStoreys {
  private TwoStoreys() {}

  /**
   * Garage and den below, office and bedroom above, the walls between them in line. The framing's
   * south-west corner lies 101.6 mm (4 in) outside the rooms.
   */
  public static final String TEXT =
      """
      house: Two Storeys
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft 1 in }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west, from: south 16 in }, ceiling-height: 8 ft }
      rooms:
        garage: { level: ground, size: 12 ft x 12 ft, garage: yes }
        den: { level: ground, size: 11 ft 7-1/2 in x 12 ft, east-of: garage, align: south }
        office: { level: upper, size: 12 ft x 12 ft, above: garage, align: south-west }
        bedroom: { level: upper, size: 11 ft 7-1/2 in x 12 ft, east-of: office, align: south }
      walls:
        - { between: [garage, den], name: low wall, bearing: yes, studs-from: south 8 in }
        - { between: [office, bedroom], name: high wall, studs-from: south 8 in }
      roof:
        - { over: upper, shape: gable, ridge: north-south, pitch: 6/12, eaves: 16 in, frame: trusses, every: 24 in,
            hatch: { in: bedroom, at: [west 2 ft, south 6 ft], size: 22 in x 30 in } }
      hollows:
        - { chase: shaft, beside: garage north, inside: yes, along: west 4 ft, from: ground, to: attic, size: 22 in x 10 in, known: yes, floors: { upper: closed, attic: open } }
      cabinet: { in: garage, wall: east, from: south 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: office, wall: east, from: south 6 ft, height: 16 in, cables: [cat6] }
      """;

  /** The text with each even word group replaced by the one after it; each must be there. */
  public static String with(String... changes) {
    String text = TEXT;
    for (int i = 0; i < changes.length; i += 2) {
      if (!text.contains(changes[i])) {
        throw new IllegalArgumentException("no '" + changes[i] + "' in the house");
      }
      text = text.replace(changes[i], changes[i + 1]);
    }
    return text;
  }
}
