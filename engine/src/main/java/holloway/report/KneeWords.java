package holloway.report;

import holloway.house.Opening;
import holloway.house.Roof;
import holloway.survey.KneeWalls;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.Optional;

/** What was understood of a knee wall and the space behind it. */
final class KneeWords {
  private KneeWords() {}

  /** Words to go on with after those of the wall; none if it is no knee wall. */
  static String of(Placed placed, Wall w, UnitWords units) {
    Optional<Roof.Knee> knee = KneeWalls.find(placed.house(), w);
    if (knee.isEmpty()) {
      return "";
    }
    boolean door =
        w.openings().stream()
            .filter(o -> !w.isGap(o))
            .anyMatch(o -> o.opening().kind() != Opening.Kind.WINDOW);
    boolean gap = w.openings().stream().anyMatch(w::isGap);
    return "; knee wall, the slope begins at %s, behind it the eaves, its back %s, %s%s"
        .formatted(
            units.tape(knee.get().height().value().nm()),
            back(placed, w),
            door ? "entered by an opening in it" : "no way in through it",
            gap ? "; it stops at the cheeks of a dormer" : "");
  }

  private static String back(Placed placed, Wall w) {
    long bare = w.faces().stream().filter(f -> KneeWalls.isBare(placed.house(), w, f.s())).count();
    return bare == w.faces().size()
        ? "bare"
        : bare == 0 ? "boarded: nothing passes it" : "bare in some of these rooms, else boarded";
  }
}
