package holloway.support;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Invented houses of any size as house file text: two storeys, each a hall with a row of rooms on
 * either side, a shaft through both, trusses over all. The same size and seed give the same text.
 */
public final class LargeHouse {
  /** A partition of the default make between two rooms, in half inches. */
  private static final int PARTITION = 9;

  /** Clear width of the shaft that runs up between two rooms, in half inches. */
  private static final int SHAFT = 20;

  /** The three sizes that are measured. */
  public enum Size {
    SMALL(100, 2, 12, 12, 52),
    MEDIUM(250, 5, 30, 13, 60),
    LARGE(600, 10, 60, 15, 72);

    final int squareMetres;
    final int roomsInRow;
    final int runs;
    final int depthFeet;
    final int hallInches;

    Size(int squareMetres, int roomsInRow, int runs, int depthFeet, int hallInches) {
      this.squareMetres = squareMetres;
      this.roomsInRow = roomsInRow;
      this.runs = runs;
      this.depthFeet = depthFeet;
      this.hallInches = hallInches;
    }

    public int squareMetres() {
      return squareMetres;
    }

    public int runs() {
      return runs;
    }

    /** Rooms with the two halls. */
    public int rooms() {
      return 4 * roomsInRow + 2;
    }

    /** Clear length of the halls in half inches, so that rooms and halls have the stated area. */
    private int hallLength() {
      double perStorey = squareMetres / 2.0;
      double deep = 2 * depthFeet * 0.3048 + hallInches * 0.0254;
      return (int) Math.round(perStorey / deep / 0.0127);
    }
  }

  private record Room(String name, String level, boolean north, int from, int width) {
    String outer() {
      return north ? "north" : "south";
    }

    String inner() {
      return north ? "south" : "north";
    }
  }

  private final Size size;
  private final SplittableRandom random;
  private final StringBuilder text = new StringBuilder();
  private final List<Room> rooms = new ArrayList<>();

  private LargeHouse(Size size, long seed) {
    this.size = size;
    this.random = new SplittableRandom(seed * 31 + size.squareMetres);
  }

  public static String text(Size size, long seed) {
    LargeHouse h = new LargeHouse(size, seed);
    h.head();
    h.rooms();
    h.openings();
    h.over();
    h.outlets();
    return h.text.toString();
  }

  private void line(String format, Object... values) {
    text.append(format.formatted(values)).append('\n');
  }

  /** Half inches as the file writes them. */
  private static String in(int halves) {
    return halves % 2 == 0 ? halves / 2 + " in" : halves / 2 + "-1/2 in";
  }

  private void head() {
    line("house: Large %d", size.squareMetres);
    line("place: us");
    line("built: 1994");
    line("outer-walls: { studs: 2x6, every: 16 in, fill: faced-batt }");
    line("inner-walls: { studs: 2x4, every: 16 in }");
    line("levels:");
    line("  ground: { floor: slab, ceiling-height: 8 ft 1 in }");
    line("  upper:");
    line("    above: ground");
    line("    floor: { joists: 2x10, every: 16 in, run: north-south }");
    line("    ceiling-height: 8 ft");
  }

  private void rooms() {
    line("rooms:");
    String hall = in(2 * size.hallInches);
    line("  lower hall: { level: ground, size: %s x %s }", in(size.hallLength()), hall);
    row("ground", false, "lower hall");
    row("ground", true, "lower hall");
    line(
        "  upper hall: { level: upper, size: %s x %s, above: lower hall, align: south-west,"
            + " tied: measured }",
        in(size.hallLength()), hall);
    row("upper", false, "upper hall");
    row("upper", true, "upper hall");
  }

  /** Rooms of unequal width that fill the hall's length; in the north row the shaft takes a gap. */
  private void row(String level, boolean north, String hall) {
    int[] widths = widths(north);
    int at = 0;
    for (int i = 0; i < widths.length; i++) {
      String name = level + (north ? " north " : " south ") + (i + 1);
      rooms.add(new Room(name, level, north, at, widths[i]));
      line(
          "  %s: { level: %s, size: %s x %d ft, %s-of: %s, align: west, shift: %s%s }",
          name,
          level,
          in(widths[i]),
          size.depthFeet,
          north ? "north" : "south",
          hall,
          in(at),
          isGarage(name) ? ", garage: yes" : "");
      at += widths[i] + PARTITION + (north && i == 0 ? SHAFT + PARTITION : 0);
    }
  }

  private static boolean isGarage(String name) {
    return name.equals("ground south 1");
  }

  private int[] widths(boolean north) {
    int n = size.roomsInRow;
    int free = size.hallLength() - (n - 1) * PARTITION - (north ? SHAFT + PARTITION : 0);
    int[] out = new int[n];
    int left = free;
    for (int i = 0; i < n; i++) {
      boolean fixed = north && i == 0;
      int usual = left / (n - i);
      out[i] = i == n - 1 || fixed ? (fixed ? free / n : left) : usual + random.nextInt(-12, 13);
      left -= out[i];
    }
    return out;
  }

  private void openings() {
    line("openings:");
    for (Room r : rooms) {
      int middle = r.width / 2;
      String hall = r.level.equals("ground") ? "lower hall" : "upper hall";
      line("  - { door, between: [%s, %s], from: west 10 in, width: 30 in }", r.name, hall);
      line(
          "  - { window, side: %s %s, from: west %s, width: 40 in, sill: 3 ft, head: 6 ft 8 in }",
          r.name, r.outer(), in(middle - 40));
    }
    line("  - { door, side: lower hall east, from: south 14 in, width: 30 in }");
  }

  /** Roof, shaft and what is seen in the rooms. */
  private void over() {
    Room first = rooms.get(size.roomsInRow);
    line("roof:");
    line("  - over: upper");
    line("    shape: gable");
    line("    ridge: east-west");
    line("    pitch: 6/12");
    line("    eaves: 16 in");
    line("    frame: trusses");
    line("    every: 24 in");
    line("    insulation: 12 in loose");
    line("    hatch: { in: upper hall, at: [west 8 ft, south 14 in], size: 30 in x 22 in }");
    line("hollows:");
    line("  - chase: soil shaft");
    line("    beside: %s east", first.name);
    line("    along: south 3 ft");
    line("    from: ground");
    line("    to: attic");
    line("    size: %d in x 22 in", SHAFT / 2);
    line("    contents: [pipe]");
    line("    floors: { upper: gap, attic: open }");
    line("    known: yes");
    line("things:");
    for (Room r : rooms) {
      line("  - { socket, in: %s, wall: %s, from: west 30 in }", r.name, r.outer());
      line("  - { switch, in: %s, wall: %s, from: west 50 in }", r.name, r.inner());
    }
  }

  /** Desks in the rooms in turn, an access point in each hall, the feed outside. */
  private void outlets() {
    line("cabinet: { in: ground south 1, wall: west, from: south 4 ft, height: 5 ft }");
    line("outlets:");
    line("  - { name: feed, outside: ground south 2 south, from: west 14 in, height: 4 ft,");
    line("      cables: [outdoor-fibre], feed: yes }");
    line("  - { name: lower point, in: lower hall, ceiling: [west 12 ft, south 30 in],");
    line("      cables: [cat6], power: class 4 }");
    line("  - { name: upper point, in: upper hall, ceiling: [west 14 ft, south 30 in],");
    line("      cables: [cat6], power: class 4 }");
    int left = size.runs - 3;
    for (int k = 0; left > 0; k++) {
      Room r = rooms.get((k * 7 + 1) % rooms.size());
      int cables = Math.min(left, k % 4 == 3 ? 3 : 1 + random.nextInt(2));
      String list = String.join(", ", List.of("cat6", "cat6", "om4").subList(0, cables));
      String side = k < rooms.size() ? r.outer() : r.inner();
      String where =
          k < rooms.size() ? "east 20 in" : "east " + (18 + 16 * (k / rooms.size())) + " in";
      line(
          "  - { name: desk %d, in: %s, wall: %s, from: %s, height: 16 in, cables: [%s] }",
          k + 1, r.name, side, where, list);
      left -= cables;
    }
    line("wishes: { hour-is-worth: 40 USD, visible-metre: 30 min }");
    line("crew: 2");
  }
}
