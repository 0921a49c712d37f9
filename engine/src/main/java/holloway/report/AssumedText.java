package holloway.report;

import holloway.house.Assumption;
import holloway.house.House;
import holloway.survey.Placed;
import java.util.TreeSet;

/**
 * What place and era decided because the person did not say, with the line that says otherwise;
 * then what the survey assumed of single walls.
 */
final class AssumedText {
  /** How many rooms or openings one line names. */
  private static final int SHOWN = 4;

  private final Placed placed;
  private final Page page;
  private int count;

  AssumedText(Placed placed, Page page) {
    this.placed = placed;
    this.page = page;
  }

  void put() {
    House h = placed.house();
    if (h.built().isAssumed()) {
      say("the year, taken as " + h.built().value(), "built: 1985");
    }
    for (Assumption a : Assumption.gathered(placed.defaults())) {
      say(a.shortened(SHOWN).says(), a.instead());
    }
    for (String line : new TreeSet<>(placed.assumed())) {
      if (!line.startsWith(Assumption.LEAD)) {
        page.put("  - ", line);
        count++;
      }
    }
    if (count == 0) {
      page.put("  ", "Nothing.");
    } else {
      page.put(
          "  ",
          "One wall alone: walls: - { side: ROOM SIDE, studs: ..., every: ..., thickness: ...,"
              + " studs-from: SIDE DISTANCE, bearing: yes or no, fill: ... }. One room alone:"
              + " finish, ceiling, ceiling-height and floor in its own entry. One level: usual,"
              + " outer-walls and inner-walls in its own entry.");
    }
  }

  private void say(String what, String instead) {
    page.put("  - ", what + (instead.isEmpty() ? "" : "; say " + instead));
    count++;
  }
}
