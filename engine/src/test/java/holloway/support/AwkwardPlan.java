package holloway.support;

import java.util.ArrayList;
import java.util.List;

/** The storeys and rooms of an awkward house: one or two rows of rooms a storey, all in mm. */
final class AwkwardPlan {

  /** A wall between two rooms of one row, west and east of it. */
  record Between(AwkwardRoom west, AwkwardRoom east, int shared) {}

  final List<AwkwardRoom> ground = new ArrayList<>();
  final List<AwkwardRoom> upper = new ArrayList<>();
  final List<AwkwardRoom> closets = new ArrayList<>();
  final List<Between> walls = new ArrayList<>();

  /** The first row's rooms of the ground floor. */
  final List<AwkwardRoom> front = new ArrayList<>();

  AwkwardRoom hut;
  boolean storeyAndAHalf;
  boolean garage;
  private final AwkwardDraw d;
  private final int wall;

  AwkwardPlan(AwkwardDraw d, int wall) {
    this.d = d;
    this.wall = wall;
  }

  List<AwkwardRoom> storey(String level) {
    return level.equals("ground") ? ground : upper;
  }

  List<AwkwardRoom> all() {
    List<AwkwardRoom> out = new ArrayList<>(ground);
    out.addAll(upper);
    return out;
  }

  /** Rooms right under a roof. */
  List<AwkwardRoom> top() {
    return upper.isEmpty() ? ground : upper;
  }

  void draw() {
    int rows = 1 + d.upTo(2);
    row(ground, "ground", "g", 2 + d.upTo(2), "", true);
    front.addAll(ground);
    if (rows == 2) {
      row(ground, "ground", "b", 1 + d.upTo(3), ", north-of: g1, align: west", false);
    }
    outside(ground, rows);
    if (d.chance(50)) {
      above();
    }
    shapes();
    kinds();
    if (d.maybe(12, "detached building")) {
      hut = new AwkwardRoom("ground", "hut", 0, 0, 2400, 2200);
      hut.keys.append(", apart: yes, floor: slab, plain: yes");
    }
    levels();
    rooms();
  }

  private void row(
      List<AwkwardRoom> to, String level, String prefix, int count, String first, boolean front) {
    int depth = 2600 + 10 * d.upTo(240);
    int west = 0;
    AwkwardRoom last = null;
    for (int i = 1; i <= count; i++) {
      int deep = d.chance(70) || i == 1 ? depth : Math.max(2300, depth - 10 * d.upTo(90));
      AwkwardRoom room = new AwkwardRoom(level, prefix + i, west, 0, 2300 + 10 * d.upTo(300), deep);
      room.placed = last == null ? first : ", east-of: %s, align: south".formatted(last.name);
      to.add(room);
      if (last != null) {
        walls.add(new Between(last, room, Math.min(last.depth, deep)));
      }
      last = room;
      west += room.width + wall;
    }
    to.get(to.size() - count).outer.add("west");
    last.outer.add("east");
    if (front) {
      to.forEach(r -> r.outer.add("south"));
    }
  }

  /** The sides of the last row that look north. */
  private static void outside(List<AwkwardRoom> storey, int rows) {
    if (rows == 1) {
      storey.forEach(r -> r.outer.add("north"));
    } else {
      storey.stream().filter(r -> r.name.startsWith("b")).forEach(r -> r.outer.add("north"));
    }
  }

  private void above() {
    storeyAndAHalf = front.get(0).depth > 4400 && d.maybe(60, "storey and a half");
    int east = front.stream().mapToInt(r -> r.width + wall).sum() - wall;
    int first = 2300 + 10 * d.upTo(80);
    String tied = d.chance(60) ? ", tied: measured" : "";
    String shift = storeyAndAHalf ? ", shift-north: 900 mm" : shift();
    String at = ", above: g1, align: south-west" + shift + tied;
    int depth = storeyAndAHalf ? front.get(0).depth - 1800 : front.get(0).depth;
    AwkwardRoom one = new AwkwardRoom("upper", "u1", 0, 0, first, depth);
    one.placed = at;
    one.outer.addAll(List.of("west", "south", "north"));
    upper.add(one);
    int rest = east - first - wall;
    if (rest > 2300) {
      AwkwardRoom two = new AwkwardRoom("upper", "u2", first + wall, 0, rest, depth);
      two.placed = ", east-of: u1, align: south";
      two.outer.addAll(List.of("east", "south", "north"));
      upper.add(two);
      walls.add(new Between(one, two, depth));
    }
  }

  private String shift() {
    if (d.maybe(20, "overhang")) {
      return ", shift-north: -%d mm".formatted(300 + 10 * d.upTo(30));
    }
    if (front.size() == ground.size() && d.maybe(25, "set back")) {
      return ", shift-north: %d mm".formatted(400 + 10 * d.upTo(60));
    }
    return "";
  }

  private void shapes() {
    for (AwkwardRoom r : all()) {
      if (storeyAndAHalf && r.level.equals("upper") || !d.chance(30)) {
        continue;
      }
      r.notch = 900 + 10 * d.upTo(30);
      boolean wide = r.width - 2 * r.notch > 1000;
      if (wide && d.maybe(25, "T-shaped room")) {
        r.shape = AwkwardRoom.Shape.T;
      } else if (d.maybe(35, "angled wall")) {
        r.shape = AwkwardRoom.Shape.ANGLED;
      } else {
        r.shape = AwkwardRoom.Shape.L;
        d.has("L-shaped room");
        if (d.maybe(60, "closet")) {
          closet(r);
        }
      }
      r.outer.retainAll(r.wholeSides());
    }
  }

  private void closet(AwkwardRoom in) {
    int side = in.notch - wall;
    AwkwardRoom c = new AwkwardRoom(in.level, in.name + " closet", 0, 0, side, side);
    c.placed = ", east-of: %s, align: north".formatted(in.name);
    c.bare = true;
    closets.add(c);
  }

  private void kinds() {
    AwkwardRoom last = front.get(front.size() - 1);
    if (d.maybe(25, "garage")) {
      garage = true;
      last.keys.append(", garage: yes, plain: yes, floor: slab, elevation: -150 mm");
      last.keys.append(", ceiling-height: 2600 mm");
    } else if (upper.isEmpty() && d.maybe(12, "room not surveyed")) {
      last.keys.append(", surveyed: no");
      last.bare = true;
    } else if (d.maybe(10, "neighbour's room")) {
      last.keys.append(", ours: no");
      last.bare = true;
    }
    for (AwkwardRoom r : all()) {
      if (!r.bare && d.chance(25)) {
        r.keys.append(", finish: ").append(d.pick("plaster", "lath-and-plaster", "panel", "tile"));
        d.has("finishes");
      }
      boolean low = r.level.equals("ground");
      if (low && !r.bare && !(r == last && garage) && d.maybe(8, "open ceiling")) {
        r.keys.append(", ceiling: open");
        r.plainCeiling = false;
      }
      if (top().contains(r) && !r.bare && !storeyAndAHalf && d.maybe(10, "vaulted ceiling")) {
        r.vaulted = true;
        r.plainCeiling = false;
        if (r.keys.indexOf("ceiling:") < 0) {
          r.keys.append(", ceiling: vaulted");
        }
      }
      if (!low && !r.bare && d.maybe(12, "joists that change direction")) {
        r.keys.append(", floor: { joists: 2x10, every: 16 in, run: ");
        r.keys.append(d.pick("east-west", "north-south")).append(" }");
      }
    }
  }

  private void levels() {
    d.line("levels:");
    String height = "%d mm".formatted(2350 + 10 * d.upTo(40));
    d.line("  ground: { ceiling-height: %s, floor: %s }", height, low());
    if (!upper.isEmpty()) {
      d.line("  upper: { above: ground, ceiling-height: 2300 mm, floor: { %s } }", joists());
    }
  }

  private String low() {
    if (d.chance(45)) {
      return "slab";
    }
    int clear = d.maybe(25, "low crawlspace") ? 250 + d.upTo(150) : 450 + d.upTo(500);
    d.has("crawlspace");
    return "{ joists: 2x10, every: 16 in, run: %s, over: { crawlspace: { clearance: %d mm%s } } }"
        .formatted(
            d.pick("east-west", "north-south"),
            clear,
            d.chance(75)
                ? ", access: { floor-hatch: { in: g1, at: [west 900 mm, south 900 mm], size: 600 mm x 600 mm } }"
                : "");
  }

  private String joists() {
    String kind = d.pick("solid", "solid", "solid", "i-joist", "open-web");
    d.has(kind + " joists");
    String more = d.maybe(25, "floorboards") ? ", boards: yes" : "";
    more += d.maybe(20, "blocking row") ? ", blocks-at: [1500 mm]" : "";
    more += d.maybe(15, "no blocks over walls") ? ", blocks-over-walls: no" : "";
    more += d.maybe(15, "filled floor") ? ", fill: unfaced-batt" : "";
    String run = more.contains("blocks-at") ? "north-south" : d.pick("east-west", "north-south");
    return "joists: 2x10, every: %s, run: %s, kind: %s%s".formatted(d.spacing(), run, kind, more);
  }

  private void rooms() {
    if (storeyAndAHalf) {
      upper.forEach(r -> r.keys.append(", ceiling: vaulted"));
      upper.forEach(r -> r.plainCeiling = false);
    }
    d.line("rooms:");
    all().forEach(r -> d.line("%s", r.line()));
    closets.forEach(r -> d.line("%s", r.line()));
    if (hut != null) {
      d.line("%s", hut.line());
    }
  }
}
