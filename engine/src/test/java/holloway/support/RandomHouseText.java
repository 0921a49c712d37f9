package holloway.support;

import holloway.support.RoomGrid.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A valid house file as text, the same for the same shape and seed: a rectangle a storey, cut into
 * rooms, framed or solid, over a slab, joists, a crawlspace or a cellar.
 */
public final class RandomHouseText extends RandomLines {
  /**
   * How large a house and what is wanted of it. A cellar takes the place of the lowest of two or
   * three levels.
   *
   * @param levels 1 to 3
   * @param rooms at least one a level; fewer come out where the cuts leave no room for more
   * @param runs at least 1, spares included
   */
  public record Shape(int levels, int rooms, int runs, boolean cellar, long seed) {
    /** The shape that a seed alone gives. */
    public static Shape of(long seed) {
      Random r = new Random(seed * 6_151 + 3);
      int levels = 1 + r.nextInt(3);
      return new Shape(levels, 3 + r.nextInt(18), 1 + r.nextInt(30), r.nextInt(4) == 0, seed);
    }

    private boolean hasCellar() {
      return cellar && levels > 1;
    }
  }

  private static final String[] PLAIN = {"ground", "upper", "top"};
  private static final String[] OVER_CELLAR = {"cellar", "ground", "upper"};

  private final List<RoomGrid> storeys = new ArrayList<>();
  private final String place;
  private final boolean masonry;
  private final boolean cellar;
  private final String[] names;

  private RandomHouseText(Shape shape) {
    super(new Random(shape.seed * 7_919 + 13), new StringBuilder());
    place = pick("us", "us", "uk", "none");
    masonry = place.equals("uk") ? !chance(25) : chance(15);
    cellar = shape.hasCellar();
    names = cellar ? OVER_CELLAR : PLAIN;
    int most = (shape.rooms + shape.levels - 1) / shape.levels;
    double area = most * (7 + 7 * r.nextDouble()) * 1e8;
    double aspect = 0.7 + 0.8 * r.nextDouble();
    long width = Math.max(45_000, 10 * Math.round(Math.sqrt(area * aspect) / 10));
    long depth = Math.max(40_000, 10 * Math.round(Math.sqrt(area / aspect) / 10));
    long wall = place.equals("us") ? 1_143 : 1_260;
    for (int i = 0; i < shape.levels; i++) {
      int rooms = shape.rooms / shape.levels + (i < shape.rooms % shape.levels ? 1 : 0);
      storeys.add(new RoomGrid(names[i].charAt(0) + "", width, depth, wall, rooms, r));
    }
  }

  /** The text of the house of a seed; it is an invented house that nobody lives in. */
  public static String of(long seed) {
    return of(Shape.of(seed));
  }

  /** The text of a house of that shape. */
  public static String of(Shape shape) {
    RandomHouseText t = new RandomHouseText(shape);
    t.head(shape.seed);
    t.levels();
    RandomRooms rooms = new RandomRooms(t.r, t.storeys, t.out, t.names, t.cellar, t.masonry);
    rooms.rooms();
    rooms.walls();
    new RandomOpenings(t.r, t.storeys, t.out).openings();
    t.roof();
    t.extras();
    RandomWants wants = new RandomWants(t.r, t.storeys, t.out);
    wants.things();
    wants.wanted(shape.runs);
    return t.out.toString();
  }

  private void head(long seed) {
    line("house: House %d", seed);
    line("place: %s", place);
    line("built: %d", 1890 + r.nextInt(130));
    boolean balloon = !masonry && chance(20);
    line("framing: %s", balloon ? "balloon" : "platform");
    if (masonry) {
      line("outer-walls: { kind: masonry, thickness: %s }", mm(2_200 + 100 * r.nextInt(12)));
    } else {
      line(
          "outer-walls: { studs: %s, every: %s, fill: %s }", pick("2x4", "2x6"), spacing(), fill());
    }
    String thick = mm(storeys.get(0).wall);
    if (masonry && chance(30)) {
      line("inner-walls: { kind: masonry, thickness: %s }", thick);
      return;
    }
    line(
        "inner-walls: { studs: %s, every: %s, thickness: %s, fill: %s }",
        place.equals("us") ? "2x4" : "50x100", spacing(), thick, chance(80) ? "empty" : fill());
  }

  private void levels() {
    line("levels:");
    for (int i = 0; i < storeys.size(); i++) {
      String above = i == 0 ? "" : "above: " + names[i - 1] + ", ";
      String height = mm(23_000 + 100 * r.nextInt(50));
      line("  %s: { %sceiling-height: %s, floor: %s }", names[i], above, height, floor(i));
    }
  }

  private String floor(int level) {
    if (level == 0 && (cellar || chance(40))) {
      return "slab";
    }
    String joists =
        "joists: %s, every: %s, run: %s"
            .formatted(pick("2x8", "2x10", "50x200"), spacing(), pick("east-west", "north-south"));
    String boards = chance(40) ? ", boards: yes" : "";
    String under = level == 0 && chance(75) ? ", over: { crawlspace: " + crawlspace() + " }" : "";
    return "{ " + joists + boards + (chance(20) ? ", fill: " + fill() : "") + under + " }";
  }

  private String crawlspace() {
    Cell c = storeys.get(0).cells.get(r.nextInt(storeys.get(0).cells.size()));
    String clear = mm(3_500 + 100 * r.nextInt(60));
    return chance(80)
        ? "{ clearance: %s, access: { floor-hatch: %s } }".formatted(clear, hatch(c))
        : "{ clearance: %s }".formatted(clear);
  }

  private String hatch(Cell c) {
    return "{ in: %s, at: [west %s, south %s], size: 600 mm x 600 mm }"
        .formatted(c.name(), mm(c.width() / 2), mm(c.depth() / 2));
  }

  private void roof() {
    RoomGrid top = storeys.get(storeys.size() - 1);
    String shape = pick("gable", "hip", "shed");
    line("roof:");
    line("  - over: %s", names[storeys.size() - 1]);
    line("    shape: %s", shape);
    String way = top.width >= top.depth ? "east-west" : "north-south";
    line(shape.equals("shed") ? "    low-side: " + pick(RandomWants.SIDES) : "    ridge: " + way);
    line("    pitch: %d/12", 4 + r.nextInt(7));
    line("    eaves: %s", mm(2_000 + 100 * r.nextInt(40)));
    line("    frame: %s", pick("trusses", "rafters"));
    line("    every: %s", pick("610 mm", "400 mm"));
    line(
        "    insulation: %s", pick("none", "200 mm loose", "150 mm unfaced-batt", "90 mm unknown"));
    if (chance(85)) {
      line("    hatch: %s", hatch(top.cells.get(r.nextInt(top.cells.size()))));
    }
  }

  private void extras() {
    int level = r.nextInt(storeys.size());
    List<Cell> cells = storeys.get(level).cells;
    Cell c = cells.get(r.nextInt(cells.size()));
    String side = pick(RandomWants.SIDES);
    long middle = (c.begin(side) + c.end(side)) / 2;
    if (chance(40) && c.isFree(side, middle, 4_000)) {
      c.taken().add(new RoomGrid.Taken(side, new RoomGrid.Stretch(middle - 2_500, middle + 2_500)));
      String end = RoomGrid.eastWest(side) ? "west" : "south";
      line("hollows:");
      line("  - chase: shaft");
      line("    beside: %s %s", c.name(), side);
      line("    along: %s %s", end, mm(middle - c.begin(side) - 2_000));
      line("    inside: yes");
      line("    from: %s", names[level]);
      line("    to: %s", level == storeys.size() - 1 ? "attic" : names[level + 1]);
      line("    size: 400 mm x 250 mm");
      line("    contents: [%s]", pick("vent", "pipe", "flue"));
      line("    known: yes");
    }
    if (chance(50)) {
      Cell o = cells.get(r.nextInt(cells.size()));
      String at = "[west %s, south %s]".formatted(mm(o.width() / 2), mm(o.depth() / 2));
      line("obstacles:");
      line(
          "  - { duct, above-ceiling-of: %s, at: %s, size: 1 m x 300 mm, height: 150 mm }",
          o.name(), at);
      line(
          "  - { fire-block, side: %s %s, from: %s 500 mm, width: 380 mm, bottom: 1200 mm, top: 1250 mm }",
          o.name(), side, RoomGrid.eastWest(side) ? "west" : "south");
    }
  }
}
