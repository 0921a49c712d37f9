package holloway.scene;

import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Where runs lie beside each other in a picture. */
final class Fan {
  private Fan() {}

  /** The least slot that no earlier run with a hollow or crossing in common has. */
  static Map<String, Integer> slots(List<Plan.PlannedRun> runs) {
    Map<String, Integer> out = new TreeMap<>();
    List<Set<String>> taken = new ArrayList<>();
    for (Plan.PlannedRun run : runs) {
      List<String> ids = run.steps().stream().map(Plan.PlanStep::id).toList();
      int slot = 0;
      while (slot < taken.size() && ids.stream().anyMatch(taken.get(slot)::contains)) {
        slot++;
      }
      if (slot == taken.size()) {
        taken.add(new HashSet<>());
      }
      taken.get(slot).addAll(ids);
      out.put(run.id(), slot);
    }
    return out;
  }

  /**
   * Slots go to alternate sides of the true way: 0, 1, -1, 2 ... widths. East, north and up differ
   * all three, so two slots stay a width apart however the way runs along the axes.
   */
  static Vec aside(int slot, double widest) {
    int side = slot % 2 == 1 ? (slot + 1) / 2 : -slot / 2;
    double by = side * widest * 1.2;
    return new Vec(by, by, by);
  }
}
