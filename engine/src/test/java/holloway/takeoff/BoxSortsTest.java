package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.plan.Plan;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which box an outlet gets, what is not bought again, and what a link is made of. */
class BoxSortsTest {
  private static final String HOUSE =
      """
      house: Two rooms and an attic (invented)
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
      rooms:
        den: { level: ground, size: 12 ft x 12 ft }
        study: { level: ground, size: 12 ft x 12 ft, east-of: den, align: south }
      roof:
        - { over: ground, shape: gable, ridge: east-west, pitch: 8/12, frame: trusses,
            hatch: { in: den, at: [west 6 ft, south 6 ft], size: 22 in x 30 in } }
      cabinet: { in: den, wall: east, from: south 2 ft, height: 5 ft }
      outlets:
        - { name: desk, in: study, wall: west, from: south 9 ft, height: 16 in, cables: [cat6] }
      """;

  private final Map<String, Double> works = new TreeMap<>();
  @TempDir Path folder;

  private Map<String, Double> bought(String more) throws Exception {
    Path house = Files.writeString(folder.resolve("house.yaml"), HOUSE + more);
    var answer = new Pipeline(Progress.SILENT).plan(house, PlanSettings.USUAL);
    assertEquals(java.util.List.of(), answer.refusals());
    Plan plan = answer.plan();
    assertEquals(1, plan.runs().size(), plan.unrouted().toString());
    plan.works().forEach(w -> works.put(w.id(), w.minutes()));
    return plan.materials().stream()
        .collect(Collectors.toMap(Plan.Material::item, Plan.Material::quantity));
  }

  private static double count(Map<String, Double> list, String begins) {
    return list.entrySet().stream()
        .filter(e -> e.getKey().startsWith(begins))
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  @Test
  void inAUsualWallABracket() throws Exception {
    Map<String, Double> list = bought("");
    assertEquals(1, count(list, "low-voltage bracket for a finished wall, single gang"));
    assertEquals(0, count(list, "shallow") + count(list, "box "));
  }

  @Test
  void inAThinWallAShallowOne() throws Exception {
    // 12.7 mm of board and 38 mm of stud are less than 64 mm
    Map<String, Double> list =
        bought("walls: [{ between: [den, study], studs: 38x38 mm, thickness: 63 mm }]\n");
    assertEquals(1, count(list, "shallow low-voltage bracket"));
    assertEquals(0, count(list, "low-voltage bracket"));
  }

  @Test
  void theBoxThatHangsThereServes() throws Exception {
    Map<String, Double> list =
        bought("things: [{ data-box, in: study, wall: west, from: south 9 ft, height: 16 in }]\n");
    assertEquals(1, count(list, "keystone plate"), list.toString());
    assertEquals(0, count(list, "low-voltage bracket"), list.toString());
  }

  @Test
  void takingItsPlateOffIsPaidAndNoCutOut() throws Exception {
    // effort-default.yaml: open.box 4, cut-out.board 10; the referee asks the same (refusals)
    bought("things: [{ data-box, in: study, wall: west, from: south 9 ft, height: 16 in }]\n");
    assertEquals(4, works.get("desk/cut-out"));
    bought("things: [{ data-box, in: study, wall: west, from: south 7 ft, height: 16 in }]\n");
    assertEquals(10, works.get("desk/cut-out"));
  }

  @Test
  void inMasonryABoxOfItsOwn() throws Exception {
    Map<String, Double> list =
        bought(
            "walls: [{ between: [den, study], kind: masonry, thickness: 125 mm }]\n"
                + "usual: { finish: plaster }\n");
    assertEquals(1, count(list, "box to set into masonry") + count(list, "box to screw onto"));
    assertEquals(0, count(list, "low-voltage bracket"), list.toString());
  }

  @Test
  void whatIsInTheWorkshopIsNotBought() throws Exception {
    assertEquals(1, count(bought(""), "step ladder"));
    Map<String, Double> list = bought("have: [step-ladder, respirator]\n");
    assertEquals(0, count(list, "step ladder") + count(list, "respirator"), list.toString());
    assertTrue(count(list, "work gloves") > 0);
  }
}
