package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.drawing.FloorSection;
import holloway.pipeline.Answers;
import holloway.plan.Plan;
import holloway.support.PackedSample;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Plumb Corner: a cellar, two floors, a bay of a balloon frame that is open past the upper one. */
class FloorCrossingsTest {
  private final Answers.Packed packed = PackedSample.get("plumb-corner");
  private final Plan plan = packed.planned().plan();
  private final List<FloorCrossing> floors = packed.views().floors();

  /** Levels whose floor a run has to pass, from the heights of its ends alone. */
  private Set<String> passed(Plan.PlannedRun run) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Plan.PlanStep s : run.steps()) {
      for (var p : s.path()) {
        low = Math.min(low, p.z() / 1e6);
        high = Math.max(high, p.z() / 1e6);
      }
    }
    Set<String> out = new TreeSet<>();
    for (var level : packed.planned().placed().levels()) {
      double floor = level.floorZ() / 1e6;
      // Under the boards of a floor nothing is passed yet.
      if (floor > low + 50 && floor < high - 50) {
        out.add(level.level().name());
      }
    }
    return out;
  }

  @Test
  void everyFloorThatARunPassesHasASection() {
    int seen = 0;
    for (Plan.PlannedRun r : plan.runs()) {
      Set<String> drawn = new TreeSet<>();
      floors.stream()
          .filter(f -> f.runs().contains(r.id()) && !f.attic())
          .forEach(f -> drawn.add(f.above()));
      assertEquals(passed(r), drawn, r.id());
      seen += drawn.size();
    }
    assertTrue(seen >= plan.runs().size(), seen + " floors passed");
  }

  /** The span to the garage of Quince Ranch leaves over the wall, as high as the attic's foot. */
  @Test
  void whatRisesOutsidePassesNoFloor() {
    Answers.Packed ranch = PackedSample.get("quince-ranch");
    Set<String> outside = Set.of("outside face", "overhead span");
    assertTrue(
        ranch.planned().plan().runs().stream()
            .flatMap(r -> r.steps().stream())
            .anyMatch(s -> s.hollow().filter("overhead span"::equals).isPresent()));
    for (FloorCrossing f : ranch.views().floors()) {
      assertTrue(!outside.contains(f.below()) || !outside.contains(f.over()), f.toString());
    }
  }

  @Test
  void whereNoHoleIsMadeThereIsASectionToo() {
    List<FloorCrossing> open =
        floors.stream().filter(f -> f.hole().isEmpty() && f.above().equals("upper")).toList();
    assertEquals(1, open.size());
    assertTrue(open.get(0).solids().stream().noneMatch(HoleView.Shape::bored));
    Set<String> holes = new TreeSet<>();
    plan.holes().forEach(h -> holes.add(h.label()));
    List<FloorCrossing> bored = floors.stream().filter(f -> !f.hole().isEmpty()).toList();
    assertTrue(bored.size() >= 2);
    for (FloorCrossing f : bored) {
      assertTrue(holes.contains(f.hole()), f.hole());
      assertTrue(f.solids().stream().anyMatch(HoleView.Shape::bored), f.hole());
    }
  }

  /** Where no hole is made the cable lies in nothing solid; where one is, only in what is bored. */
  @Test
  void theCableGoesThroughWhatIsOpenOrBored() {
    for (FloorCrossing f : floors) {
      assertTrue(f.cable().stream().anyMatch(p -> p[1] < 0), f.above());
      assertTrue(f.cable().stream().anyMatch(p -> p[1] > 0), f.above());
      assertTrue(passesOrigin(f.cable()), f.above());
      for (HoleView.Shape s : f.solids()) {
        boolean holds = inside(s.corners(), 0, -0.5) || inside(s.corners(), 0, 0.5);
        assertTrue(s.bored() || !holds, f.above() + ": " + s.what());
      }
    }
  }

  private static boolean passesOrigin(List<double[]> line) {
    for (int i = 1; i < line.size(); i++) {
      double[] a = line.get(i - 1);
      double[] b = line.get(i);
      if (a[1] * b[1] <= 0 && Math.abs(a[0]) < 0.01 && Math.abs(b[0]) < 0.01) {
        return true;
      }
    }
    return false;
  }

  private static boolean inside(List<double[]> ring, double x, double y) {
    boolean in = false;
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      double[] a = ring.get(i);
      double[] b = ring.get(j);
      if (a[1] > y != b[1] > y && x < (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1]) + a[0]) {
        in = !in;
      }
    }
    return in;
  }

  @Test
  void itIsDrawnToScaleInBlackWhiteAndGrey() {
    FloorCrossing f = floors.stream().filter(x -> !x.hole().isEmpty()).findFirst().get();
    String svg = FloorSection.of(f, "F1", "stud bay", "cellar", UnitSystem.METRIC, t -> t);
    for (String text : List.of("stud bay", "cellar", f.hole(), "200 mm", "→ " + f.right())) {
      assertTrue(svg.contains(">" + text + "</text>"), text);
    }
    Set<String> colours = new TreeSet<>();
    Pattern.compile("#[0-9a-f]{3,6}").matcher(svg).results().forEach(m -> colours.add(m.group()));
    assertEquals(Set.of("#000", "#fff", "#d0d0d0"), colours);
    assertTrue(svg.contains("x1=\"250\" y1=\"615\" x2=\"450\" y2=\"615\""), "a bar of 200 mm");
  }
}
