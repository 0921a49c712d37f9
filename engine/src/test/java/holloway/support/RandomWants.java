package holloway.support;

import holloway.support.RoomGrid.Cell;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** What a random house shows in its rooms, and what is wanted of it. */
final class RandomWants {
  static final String[] SIDES = {"north", "east", "south", "west"};
  private static final String[] CABLES = {"cat6", "cat6", "cat6a", "om4", "os2", "rg6", "cat5e"};

  private final Random r;
  private final List<RoomGrid> storeys;
  private final StringBuilder out;
  private int left;

  RandomWants(Random r, List<RoomGrid> storeys, StringBuilder out) {
    this.r = r;
    this.storeys = storeys;
    this.out = out;
  }

  void things() {
    StringBuilder seen = new StringBuilder();
    for (int i = r.nextInt(8); i > 0; i--) {
      String kind = pick("socket", "socket", "switch", "tap", "toilet", "radiator", "register");
      wallSpot(anyGrid(), 5_000).ifPresent(s -> seen.append("  - { " + kind + ", " + s + " }\n"));
    }
    if (seen.length() > 0) {
      out.append("things:\n").append(seen);
    }
  }

  /** The cabinet, outlets until there are so many runs, and the wishes. */
  void wanted(int runs) {
    out.append("cabinet: { ").append(cabinet()).append(", height: 1300 mm }\n");
    out.append("outlets:\n");
    left = runs;
    for (int i = 1; left > 0; i++) {
      out.append("  - { name: outlet ").append(i).append(", ").append(outlet()).append(" }\n");
    }
    out.append("wishes: { attic: ").append(pick("mild", "summer", "never"));
    out.append(", visible-metre: ").append(pick("10", "30", "60")).append(" min");
    out.append(", profile: ").append(pick("least-work", "least-work", "fewest-holes", "shortest"));
    out.append(" }\ncrew: ").append(1 + r.nextInt(2)).append('\n');
  }

  private String cabinet() {
    for (int tries = 0; tries < 50; tries++) {
      Optional<String> spot = wallSpot(storeys.get(0), 5_500);
      if (spot.isPresent()) {
        return spot.get();
      }
    }
    throw new IllegalStateException("no free wall for a cabinet");
  }

  private String outlet() {
    int kind = r.nextInt(10);
    if (kind < 2) {
      left--;
      Cell c = anyCell(anyGrid());
      return "in: %s, ceiling: [west %s, south %s], cables: [cat6], power: class 4"
          .formatted(c.name(), inner(c.width()), inner(c.depth()));
    }
    for (int tries = 0; tries < 60; tries++) {
      RoomGrid g = anyGrid();
      Optional<String> spot = kind == 2 ? outside(g) : wallSpot(g, 3_000);
      if (spot.isPresent()) {
        String height = ", height: " + (250 + 10 * r.nextInt(100)) + " mm";
        return spot.get() + height + ", cables: " + (kind == 2 ? feed() : cables());
      }
    }
    left--;
    return "in: %s, ceiling: [west 800 mm, south 800 mm], cables: [cat6]"
        .formatted(anyCell(storeys.get(0)).name());
  }

  private String feed() {
    left--;
    return "[outdoor-cat6], feed: yes";
  }

  private String cables() {
    left--;
    StringBuilder all = new StringBuilder("[" + pick(CABLES));
    for (int more = Math.min(left, r.nextInt(3)); more > 0; more--) {
      left--;
      all.append(", ").append(pick(CABLES));
    }
    int spare = left > 0 && r.nextInt(4) == 0 ? 1 + r.nextInt(Math.min(left, 2)) : 0;
    left -= spare;
    return all + "]" + (spare > 0 ? ", spare: " + spare : "");
  }

  private String inner(long length) {
    return RandomHouseText.mm(3_000 + r.nextInt((int) (length - 6_000)));
  }

  private Optional<String> outside(RoomGrid g) {
    Cell c = anyCell(g);
    String side = pick(SIDES);
    return g.isOuter(c, side)
        ? along(c, side, 3_000).map(a -> "outside: %s %s, from: %s".formatted(c.name(), side, a))
        : Optional.empty();
  }

  private Optional<String> wallSpot(RoomGrid g, long clear) {
    Cell c = anyCell(g);
    String side = pick(SIDES);
    return along(c, side, clear)
        .map(a -> "in: %s, wall: %s, from: %s".formatted(c.name(), side, a));
  }

  /** A free spot of a side, which is then taken. */
  private Optional<String> along(Cell c, String side, long clear) {
    long length = c.end(side) - c.begin(side);
    long from = clear + r.nextInt((int) (length - 2 * clear));
    long at = c.begin(side) + from;
    if (!c.isFree(side, at, clear)) {
      return Optional.empty();
    }
    c.taken().add(new RoomGrid.Taken(side, new RoomGrid.Stretch(at, at)));
    boolean low = r.nextBoolean();
    String end = RoomGrid.eastWest(side) ? (low ? "west" : "east") : (low ? "south" : "north");
    return Optional.of(end + " " + RandomHouseText.mm(low ? from : length - from));
  }

  private RoomGrid anyGrid() {
    return storeys.get(r.nextInt(storeys.size()));
  }

  private Cell anyCell(RoomGrid g) {
    return g.cells.get(r.nextInt(g.cells.size()));
  }

  private String pick(String... words) {
    return words[r.nextInt(words.length)];
  }
}
