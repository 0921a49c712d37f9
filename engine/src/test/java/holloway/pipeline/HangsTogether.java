package holloway.pipeline;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Whether a printed plan hangs together: sums, steps that alternate and join, bound and price. */
final class HangsTogether {
  private HangsTogether() {}

  static List<String> faults(JsonNode plan) {
    List<String> faults = new ArrayList<>();
    JsonNode totals = plan.get("totals");
    if (totals.get("bound").asLong() > totals.get("objective").asLong()) {
      faults.add("the bound is over the objective");
    }
    double minutes = 0;
    for (JsonNode w : plan.get("works")) {
      minutes += w.get("minutes").asDouble();
    }
    for (JsonNode run : plan.get("runs")) {
      chain(run, faults);
      for (JsonNode s : run.get("steps")) {
        minutes += s.path("minutes").asDouble(0);
      }
    }
    if (Math.abs(minutes - totals.get("minutes").asDouble()) > 0.01) {
      faults.add("works and legs take " + minutes + ", said " + totals.get("minutes"));
    }
    return faults;
  }

  private static void chain(JsonNode run, List<String> faults) {
    String id = run.get("id").asText();
    JsonNode steps = run.get("steps");
    double metres = 0;
    for (int i = 0; i < steps.size(); i++) {
      metres += steps.get(i).get("m").asDouble();
      if (i > 0 && gap(steps.get(i - 1), steps.get(i)) > 1) {
        faults.add(id + ": step " + i + " does not begin where the last ends");
      }
      boolean alike = i > 0 && kind(steps, i).equals(kind(steps, i - 1));
      if (alike || !List.of("leg", "crossing").contains(kind(steps, i))) {
        faults.add(id + ": step " + i + " does not alternate");
      }
    }
    if (Math.abs(metres - run.get("route-m").asDouble()) > 0.02) {
      faults.add(id + ": steps add up to " + metres + ", said " + run.get("route-m"));
    }
  }

  private static String kind(JsonNode steps, int i) {
    return steps.get(i).get("kind").asText();
  }

  private static double gap(JsonNode before, JsonNode after) {
    JsonNode path = before.get("path");
    JsonNode end = path.get(path.size() - 1);
    JsonNode begin = after.at("/path/0");
    double square = 0;
    for (int i = 0; i < 3; i++) {
      square += Math.pow(end.get(i).asDouble() - begin.get(i).asDouble(), 2);
    }
    return Math.sqrt(square);
  }
}
