package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.PinOut;
import holloway.pipeline.Toy;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LabelsTest {
  /** Two copper runs on the panel, the spare after the one in use; the lead on no panel. */
  @Test
  void theToysCables() {
    List<Label> labels = Labels.of(Toy.bare(), Toy.request(), Toy.placed());
    assertEquals(List.of("1A-A01", "1A-A02", "1A-B01"), labels.stream().map(Label::id).toList());
    assertEquals(
        List.of("panel A port 1", "panel A port 2", "gear in the cabinet"),
        labels.stream().map(Label::from).toList());
    assertEquals(
        List.of("desk port 1", "desk port 2, blank, coiled", "desk port 3"),
        labels.stream().map(Label::to).toList());
    assertEquals(List.of(false, true, false), labels.stream().map(Label::spare).toList());
    assertEquals(
        List.of("desk/cat6-1", "desk/cat6-2", "desk/om4-1"),
        labels.stream().map(Label::run).toList());
    assertTrue(labels.stream().allMatch(l -> l.id().equals(l.id().toUpperCase())));
  }

  /** A panel has 48 ports: the 49th cable is the first of the next, and fibre comes after that. */
  @Test
  void pastOnePanel() {
    Plan toy = Toy.bare();
    Plan.PlannedRun first = toy.runs().get(0);
    List<Plan.PlannedRun> runs = new ArrayList<>();
    for (int i = 1; i <= 49; i++) {
      String id = "desk/cat6-%03d".formatted(i);
      runs.add(new Plan.PlannedRun(id, "cabinet", "desk", "cat6", 10, 13.3, first.steps()));
    }
    runs.add(new Plan.PlannedRun("desk/om4-1", "desk", "cabinet", "om4", 10, 15, first.steps()));
    List<Label> labels = Labels.of(toy.withRuns(runs, toy.totals()), Toy.request(), Toy.placed());
    assertEquals("1A-A48", labels.get(47).id());
    assertEquals("1A-B01", labels.get(48).id());
    assertEquals("1A-C01", labels.get(49).id());
    assertEquals("gear in the cabinet", labels.get(49).to(), "which end goes where");
    Set<String> all = new HashSet<>(labels.stream().map(Label::id).toList());
    assertEquals(50, all.size());
  }

  /** TIA-568, A7-1 to A7-8: pairs 2 and 3 change places, the other four pins are the same. */
  @Test
  void pins() {
    assertEquals(
        List.of(
            "white/green",
            "green",
            "white/orange",
            "blue",
            "white/blue",
            "orange",
            "white/brown",
            "brown"),
        PinOut.A.pins());
    assertEquals(
        List.of(
            "white/orange",
            "orange",
            "white/green",
            "blue",
            "white/blue",
            "green",
            "white/brown",
            "brown"),
        PinOut.B.pins());
    assertEquals(PinOut.A, PinOut.USUAL, "A7-9: homes use A");
  }
}
