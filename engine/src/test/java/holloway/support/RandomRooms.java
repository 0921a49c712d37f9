package holloway.support;

import holloway.support.RoomGrid.Cell;
import holloway.support.RoomGrid.Neighbours;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The rooms of a {@link RandomHouseText}, each beside one said before, and its solid walls. */
final class RandomRooms extends RandomLines {
  private final List<RoomGrid> storeys;
  private final String[] names;
  private final boolean cellar;
  private final boolean masonry;

  RandomRooms(
      Random r,
      List<RoomGrid> storeys,
      StringBuilder out,
      String[] names,
      boolean cellar,
      boolean masonry) {
    super(r, out);
    this.storeys = storeys;
    this.names = names;
    this.cellar = cellar;
    this.masonry = masonry;
  }

  void rooms() {
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
  void walls() {
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
}
