package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Toy;
import holloway.plan.Plan;
import holloway.takeoff.TakeOff;
import holloway.takeoff.TaskMinutes;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;

class CsvFilesTest {
  private static final Plan PLAN = TakeOff.of(Toy.bare(), Toy.request(), Toy.placed());

  @Test
  void quotedAsRfc4180Says() {
    assertEquals("plain text", CsvFiles.quoted("plain text"));
    assertEquals("\"a, b\"", CsvFiles.quoted("a, b"));
    assertEquals("\"a \"\"b\"\"\"", CsvFiles.quoted("a \"b\""));
    assertEquals("\"a\nb\"", CsvFiles.quoted("a\nb"));
  }

  @Test
  void aLineEachAndAHeading() {
    SortedMap<String, String> files = CsvFiles.of(PLAN, Toy.placed(), Toy.request(), Map.of());
    assertEquals("[holes.csv, labels.csv, materials.csv, runs.csv]", files.keySet().toString());
    assertEquals(1 + 3, files.get("runs.csv").split("\r\n").length);
    assertEquals(1 + 2, files.get("holes.csv").split("\r\n").length);
    assertEquals(1 + 3, files.get("labels.csv").split("\r\n").length);
    assertEquals(1 + PLAN.materials().size(), files.get("materials.csv").split("\r\n").length);
    // 10 m of route, 3 m at the cabinet, 0.3 m at the outlet.
    assertTrue(
        files.get("runs.csv").contains("\r\ndesk/cat6-1,cat6,cabinet,desk,10,3,0.3,13.3,\r\n"));
    assertTrue(files.get("runs.csv").contains(",10,3,1,15,15\r\n"), "the lead of 15 m");
  }

  /** Works by their kind (25 + 2 x 14 + 10) and the legs of the three runs. */
  @Test
  void minutesByTask() {
    double legs =
        PLAN.runs().stream()
            .flatMap(r -> r.steps().stream())
            .mapToDouble(s -> s.minutes().orElse(0.0))
            .sum();
    double all = TaskMinutes.of(PLAN).stream().mapToDouble(TaskMinutes::minutes).sum();
    assertEquals(63 + legs, all, 1e-9);
    TaskMinutes boring =
        TaskMinutes.of(PLAN).stream()
            .filter(t -> t.task().equals("boring"))
            .findFirst()
            .orElseThrow();
    assertEquals(new TaskMinutes("boring", 2, 28), boring);
  }
}
