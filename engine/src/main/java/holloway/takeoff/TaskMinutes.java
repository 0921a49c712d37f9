package holloway.takeoff;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Minutes by kind of task; they add up to the plan's minutes (to the rounding of a leg's). What a
 * person dislikes of cable in sight is part of a leg's minutes.
 *
 * @param count works, or legs of fishing and laying
 */
public record TaskMinutes(String task, int count, double minutes) {
  /** In the order of their names. */
  public static List<TaskMinutes> of(Plan plan) {
    Map<String, TaskMinutes> out = new TreeMap<>();
    for (Plan.PlannedWork w : plan.works()) {
      add(out, word(w.kind()), w.minutes());
    }
    for (Plan.PlannedRun r : plan.runs()) {
      for (Plan.PlanStep s : r.steps()) {
        if (s.kind().equals("leg")) {
          boolean blind = s.feed().orElse("").equals("blind");
          add(out, blind ? "fishing" : "laying by hand", s.minutes().orElse(0.0));
        }
      }
    }
    return new ArrayList<>(out.values());
  }

  private static void add(Map<String, TaskMinutes> out, String task, double minutes) {
    out.merge(
        task,
        new TaskMinutes(task, 1, minutes),
        (a, b) -> new TaskMinutes(task, a.count() + 1, a.minutes() + b.minutes()));
  }

  private static String word(String kind) {
    return switch (kind) {
      case "bore" -> "boring";
      case "cut-out" -> "cutting out for outlets";
      case "patch" -> "opening and making good";
      case "zone" -> "getting set up";
      case "access" -> "opening what comes off";
      case "channel" -> "cutting channels";
      default -> "other works";
    };
  }
}
