package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.plan.Plan;
import holloway.report.SeenWords;
import holloway.support.TwoRooms;
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
      TwoRooms.UNDER_ONE_ROOF
          + """
cabinet: { in: den, wall: east, from: south 2 ft, height: 5 ft }
outlets:
  - { name: desk, in: study, wall: west, from: south 9 ft, height: 16 in, cables: [cat6] }
""";

  private String told = "";

  private final Map<String, Double> works = new TreeMap<>();
  @TempDir Path folder;

  private Map<String, Double> bought(String more) throws Exception {
    Path house = Files.writeString(folder.resolve("house.yaml"), HOUSE + more);
    var answer = new Pipeline(Progress.SILENT).plan(house, PlanSettings.USUAL);
    assertEquals(java.util.List.of(), answer.refusals());
    Plan plan = answer.plan();
    assertEquals(1, plan.runs().size(), plan.unrouted().toString());
    told =
        new SeenWords(answer.placed(), answer.request(), answer.system())
            .outlet(plan, "desk")
            .orElseThrow();
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
    assertTrue(told.contains("one single-gang ring"), told);
    assertEquals(0, count(list, "shallow") + count(list, "box "));
  }

  @Test
  void inAThinWallAShallowOne() throws Exception {
    // 12.7 mm of board and 38 mm of stud are less than 64 mm
    Map<String, Double> list =
        bought("walls: [{ between: [den, study], studs: 38x38 mm, thickness: 63 mm }]\n");
    assertEquals(1, count(list, "shallow low-voltage bracket"));
    assertTrue(told.contains("one shallow single-gang ring"), told);
    assertEquals(0, count(list, "low-voltage bracket"));
  }

  @Test
  void theBoxThatHangsThereServes() throws Exception {
    Map<String, Double> list =
        bought("things: [{ data-box, in: study, wall: west, from: south 9 ft, height: 16 in }]\n");
    assertEquals(1, count(list, "keystone plate"), list.toString());
    assertEquals(0, count(list, "low-voltage bracket"), list.toString());
    assertTrue(told.contains("in the box that hangs there") && !told.contains("gang"), told);
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

  private static final String YARD =
      """
      house: Yard Toy (invented)
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in, fill: foam }
      outer-walls: { studs: 2x4, every: 16 in, fill: foam }
      levels: { ground: { floor: slab, ceiling-height: 8 ft } }
      rooms:
        store: { level: ground, size: 3 m x 3 m, plain: yes }
        office: { level: ground, size: 4 m x 3 m, at: [13 m, 0 m], plain: yes }
      hollows:
        - outdoor-link: yard
          kind: %s
          from: { in: store, wall: east, from: south 1 m, height: %s }
          to: { in: office, wall: west, from: south 1 m, height: %s }
          %s
      cabinet: { in: store, wall: west, from: south 1 m, height: 5 ft }
      outlets:
        - { name: desk, in: office, wall: east, from: south 1 m, height: 16 in, cables: [%s] }
      """;

  private Map<String, Double> yard(String kind, String height, String cables) throws Exception {
    Path house = folder.resolve("yard.yaml");
    Files.writeString(
        house,
        YARD.formatted(kind, height, height, kind.contains("parts") ? "" : "length: 11 m", cables));
    Plan plan = new Pipeline(Progress.SILENT).plan(house, PlanSettings.USUAL).plan();
    assertTrue(plan.unrouted().isEmpty(), plan.unrouted().toString());
    return plan.materials().stream()
        .collect(Collectors.toMap(Plan.Material::item, Plan.Material::quantity));
  }

  @Test
  void whatALinkToAnotherBuildingIsMadeOf() throws Exception {
    Map<String, Double> duct =
        yard("duct\n    there: no\n    inside-diameter: 50 mm", "12 in", "cat6, cat6, om4");
    assertEquals(11, count(duct, "plastic duct"), duct.toString());
    assertEquals(11, count(duct, "warning tape"));
    // 11 m in lengths of 3.048 m are four, two bends (unless said) make six pieces: five joints
    assertEquals(5, count(duct, "joint for that duct"), duct.toString());
    assertEquals(2, count(duct, "long bend for that duct, 90 degrees"));
    assertEquals(2, count(duct, "plug that closes"));
    assertEquals(0, count(duct, "pull box"));
    assertTrue(count(duct, "pull string") >= 12, "E8: string through the duct, and its tails");
    // two copper runs, a protector at each end of both; fibre wants none
    assertEquals(4, count(duct, "surge protector"));
    Map<String, Double> there =
        yard("duct\n    there: yes\n    inside-diameter: 50 mm", "12 in", "om4");
    assertEquals(
        0, count(there, "plastic duct") + count(there, "warning tape") + count(there, "surge"));
    assertEquals(2, count(there, "plug that closes"));
    Map<String, Double> boxed =
        yard(
            "duct\n"
                + "    there: no\n"
                + "    inside-diameter: 50 mm\n"
                + "    parts: [{ length: 6 m, bends: [45] }, { length: 5 m, bends: 0 }]",
            "12 in",
            "om4");
    assertEquals(1, count(boxed, "pull box"), boxed.toString());
    assertEquals(1, count(boxed, "long bend for that duct, 45 degrees"));
    // two lengths and a bend to the box, two lengths from it
    assertEquals(3, count(boxed, "joint for that duct"));
    assertEquals(11, count(boxed, "plastic duct"));
    Map<String, Double> bare = yard("buried", "12 in", "cat6");
    assertEquals(0, count(bare, "plastic duct") + count(bare, "plug") + count(bare, "joint"));
    assertEquals(11, count(bare, "warning tape"));
    Map<String, Double> span = yard("overhead", "9 ft", "cat6");
    assertEquals(11, count(span, "steel wire"));
    assertEquals(2, count(span, "wall eye"));
    assertEquals(0, count(span, "warning tape"));
  }
}
