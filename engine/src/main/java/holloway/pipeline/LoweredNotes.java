package holloway.pipeline;

import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What was taken for granted over lowered ceilings, for {@code check HOUSE}. */
final class LoweredNotes {
  private LoweredNotes() {}

  /** One for each two rooms with whole lowered ceilings on both sides of a wall. */
  static List<Plan.FindingLine> of(Placed placed) {
    Set<String> lowered =
        placed.house().soffits().stream()
            .filter(s -> s.face().isEmpty())
            .map(s -> s.room())
            .collect(Collectors.toSet());
    Set<String> texts = new TreeSet<>();
    for (Wall w : placed.walls()) {
      for (Wall.WallFace f : w.faces()) {
        for (Wall.WallFace g : w.faces()) {
          boolean across = w.isFramed() && !w.isLow() && f.side() == 0 && g.side() == 1;
          if (across && lowered.contains(f.room()) && lowered.contains(g.room())) {
            texts.add(text(f.room(), g.room()));
          }
        }
      }
    }
    return texts.stream().map(LoweredNotes::line).toList();
  }

  private static String text(String one, String other) {
    String a = one.compareTo(other) < 0 ? one : other;
    String b = one.compareTo(other) < 0 ? other : one;
    return "The wall between '"
        + a
        + "' and '"
        + b
        + "' is taken to go on up through the void over their lowered ceilings, to the ceiling above:"
        + " a cable passes it by a bore. Lift a tile and look before boring; where the wall stops"
        + " short, say how high it is (walls: height), and the cable passes over it without a hole.";
  }

  private static Plan.FindingLine line(String text) {
    return new Plan.FindingLine(
        "over-the-ceiling", "note", Optional.empty(), "assumed, usual practice", text);
  }
}
