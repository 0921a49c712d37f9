package holloway.support;

import holloway.support.RoomGrid.Cell;
import holloway.support.RoomGrid.Neighbours;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A valid house file as text, the same for the same shape and seed: a rectangle a storey, cut into
 * rooms, framed or solid, over a slab, joists, a crawlspace or a cellar.
 */
public final class RandomHouseText {
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
  private static final String[] FILLS = {
    "empty", "faced-batt", "unfaced-batt", "loose", "dense-packed", "foam", "unknown"
  };

  private final Random r;
  private final StringBuilder out = new StringBuilder();
  private final List<RoomGrid> storeys = new ArrayList<>();
  private final String place;
  private final boolean masonry;
  private final boolean cellar;
  private final String[] names;

  private RandomHouseText(Shape shape) {
    r = new Random(shape.seed * 7_919 + 13);
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
    t.rooms();
    t.walls();
    t.openings();
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

  private void rooms() {
    line("rooms:");
    for (int i = 0; i < storeys.size(); i++) {
      List<Neighbours> all = storeys.get(i).neighbours();
      List<Cell> said = new ArrayList<>();
      for (Cell c : storeys.get(i).cells) {
        String size = mm(c.width()) + " x " + mm(c.depth());
        String at = said.isEmpty() ? first(i) : beside(c, said, all);
        String plain = i == 0 && chance(cellar ? 70 : 20) ? ", plain: yes" : "";
        if (i == 0 && cellar && chance(60)) {
          plain += ", ceiling: open";
        }
        line("  %s: { level: %s, size: %s%s%s }", c.name(), names[i], size, at, plain);
        said.add(c);
      }
    }
  }

  /** Solid walls in a framed house: round the cellar, and a few inside. */
  private void walls() {
    List<String> found = new ArrayList<>();
    RoomGrid low = storeys.get(0);
    for (Cell c : low.cells) {
      for (String side : RandomWants.SIDES) {
        if (cellar && !masonry && low.isOuter(c, side)) {
          found.add("{ side: %s %s, kind: masonry, thickness: 240 mm }".formatted(c.name(), side));
        }
      }
    }
    for (RoomGrid g : storeys) {
      for (Neighbours n : g.neighbours()) {
        if (chance(6)) {
          found.add(
              "{ between: [%s, %s], kind: masonry, thickness: %s }"
                  .formatted(n.one().name(), n.other().name(), mm(g.wall)));
        }
      }
    }
    if (!found.isEmpty()) {
      line("walls:");
      found.forEach(w -> line("  - %s", w));
    }
  }

  private String first(int level) {
    return level == 0
        ? ""
        : ", above: "
            + storeys.get(level - 1).cells.get(0).name()
            + ", align: south-west"
            + (chance(50) ? ", tied: measured" : "");
  }

  private String beside(Cell c, List<Cell> said, List<Neighbours> all) {
    for (Neighbours n : all) {
      if (n.other() == c && said.contains(n.one())) {
        boolean east = n.side().equals("east");
        long shift = east ? c.south() - n.one().south() : c.west() - n.one().west();
        String align = east ? "south" : "west";
        return ", %s-of: %s, align: %s, shift: %s"
            .formatted(n.side(), n.one().name(), align, mm(shift));
      }
    }
    return ", at: [%s, %s]".formatted(mm(c.west()), mm(c.south()));
  }

  private void openings() {
    List<String> found = new ArrayList<>();
    for (RoomGrid g : storeys) {
      g.neighbours().stream().filter(n -> chance(75)).forEach(n -> door(n, found));
      for (Cell c : g.cells) {
        for (String side : RandomWants.SIDES) {
          if (g.isOuter(c, side) && chance(60)) {
            window(c, side, found);
          }
        }
      }
    }
    if (!found.isEmpty()) {
      line("openings:");
      found.forEach(o -> line("  - %s", o));
    }
  }

  private void door(Neighbours n, List<String> found) {
    long wide = 6_000 + 100 * r.nextInt(25);
    long room = n.shared().to() - n.shared().from() - wide - 3_000;
    if (room > 0) {
      long at = n.shared().from() + 1_500 + r.nextInt((int) room);
      RoomGrid.Stretch s = new RoomGrid.Stretch(at, at + wide);
      n.one().taken().add(new RoomGrid.Taken(n.side(), s));
      n.other().taken().add(new RoomGrid.Taken(RoomGrid.opposite(n.side()), s));
      String kind = chance(80) ? "door" : "opening";
      String pair = n.one().name() + ", " + n.other().name();
      String end = RoomGrid.eastWest(n.side()) ? "west" : "south";
      String from = mm(at - n.shared().from());
      found.add(
          "{ %s, between: [%s], from: %s %s, width: %s }"
              .formatted(kind, pair, end, from, mm(wide)));
    }
  }

  private void window(Cell c, String side, List<String> found) {
    long wide = 5_000 + 100 * r.nextInt(140);
    long room = c.end(side) - c.begin(side) - wide - 4_000;
    if (room > 0) {
      long from = 2_000 + r.nextInt((int) room);
      long at = c.begin(side) + from;
      c.taken().add(new RoomGrid.Taken(side, new RoomGrid.Stretch(at, at + wide)));
      String end = RoomGrid.eastWest(side) ? "west" : "south";
      found.add(
          "{ window, side: %s %s, from: %s %s, width: %s, sill: %s, head: 2050 mm }"
              .formatted(c.name(), side, end, mm(from), mm(wide), mm(6_000 + 100 * r.nextInt(60))));
    }
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

  private String spacing() {
    return pick("16 in", "24 in", "400 mm", "600 mm", "16 in");
  }

  private String fill() {
    return pick(FILLS);
  }

  private String pick(String... words) {
    return words[r.nextInt(words.length)];
  }

  private boolean chance(int percent) {
    return r.nextInt(100) < percent;
  }

  static String mm(long tenths) {
    return "%s%d.%d mm"
        .formatted(tenths < 0 ? "-" : "", Math.abs(tenths) / 10, Math.abs(tenths) % 10);
  }

  private void line(String words, Object... parts) {
    out.append(words.formatted(parts)).append('\n');
  }
}
