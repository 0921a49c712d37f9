package holloway.support;

import holloway.support.RoomGrid.Cell;
import holloway.support.RoomGrid.Neighbours;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The doors and windows of a {@link RandomHouseText}; each takes its stretch of the wall. */
final class RandomOpenings extends RandomLines {
  private final List<RoomGrid> storeys;

  RandomOpenings(Random r, List<RoomGrid> storeys, StringBuilder out) {
    super(r, out);
    this.storeys = storeys;
  }

  void openings() {
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
}
