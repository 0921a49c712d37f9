package holloway.report;

import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was assumed, gathered so that each wall is one line with what to look for. */
final class WallDoubts {
  private final Placed placed;

  private final Plan plan;

  WallDoubts(Plan plan, Placed placed) {
    this.plan = plan;
    this.placed = placed;
  }

  /** The wall that an assumption of the survey is about. */
  Optional<Wall> wall(String assumption) {
    return placed.walls().stream().filter(w -> assumption.startsWith(w.id() + ":")).findFirst();
  }

  /** One line a wall; what is about no wall stays as it is. */
  List<String> lines(List<String> assumptions) {
    Map<String, List<String>> byWall = new LinkedHashMap<>();
    List<String> out = new ArrayList<>();
    for (String a : assumptions) {
      Optional<Wall> w = wall(a);
      if (w.isPresent()) {
        byWall.computeIfAbsent(w.get().id(), k -> new ArrayList<>()).add(a);
      } else {
        out.add("assumed: " + a);
      }
    }
    byWall.forEach((id, about) -> out.add(line(placed.getWall(id), about)));
    return out;
  }

  private String line(Wall w, List<String> about) {
    List<String> what = new ArrayList<>();
    List<String> how = new ArrayList<>();
    String all = String.join("\n", about);
    if (all.contains("studs taken to be laid out")) {
      what.add("where its studs stand");
      how.add("find a stud");
    }
    if (all.contains("stud spacing") || all.contains("studs taken for")) {
      what.add("the size or spacing of its studs");
      how.add("find the next stud too");
    }
    if (all.contains("battens taken")) {
      what.add("where the battens before it are");
      how.add("find one, and where the next one is");
    }
    if (all.contains("fill taken")) {
      what.add("that its fill is " + w.fill().value().word());
      how.add("look beside a box with the power off");
    }
    if (all.contains("bearing")) {
      what.add("that it is " + (w.bearing().value() ? "" : "not ") + "bearing");
      how.add("see which way the joists over it run");
    }
    String name = w.level() + " level, " + WallNames.at(w, used(w));
    if (what.isEmpty()) {
      return "assumed: " + String.join("; ", about);
    }
    return "%s: assumed %s. %s."
        .formatted(name, String.join(", ", what), capital(String.join("; ", how)));
  }

  /** Where along a wall the first route goes in: a long wall is seen from many rooms. */
  private long used(Wall w) {
    return plan.runs().stream()
        .flatMap(r -> r.steps().stream())
        .filter(s -> s.id().startsWith(w.id() + "/"))
        .map(s -> w.frame().toLocal(s.path().get(0)).x())
        .findFirst()
        .orElse(w.length() / 2);
  }

  private static String capital(String s) {
    return Character.toUpperCase(s.charAt(0)) + s.substring(1);
  }
}
