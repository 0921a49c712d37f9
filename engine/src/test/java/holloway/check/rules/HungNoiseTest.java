package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.plan.Plan;
import holloway.support.TwoRooms;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What hums under a ceiling is as near to the cable over that ceiling as its board is thick. */
class HungNoiseTest {
  @TempDir Path folder;

  private List<Plan.FindingLine> near(String hung) throws Exception {
    String house =
        TwoRooms.UNDER_ONE_ROOF
            + "wishes: { bans: [outside, surface] }\n"
            + "cabinet: { in: den, wall: west, from: south 2 ft, height: 5 ft }\n"
            + "outlets: [{ name: desk, in: study, wall: east, from: south 9 ft, height: 16 in,"
            + " cables: [cat6] }]\n"
            + "obstacles: ["
            + hung
            + "]\n";
    Path file = Files.writeString(folder.resolve("house.yaml"), house);
    var answer = new Pipeline(Progress.SILENT).plan(file, PlanSettings.USUAL);
    assertEquals(List.of(), answer.refusals());
    assertEquals(1, answer.plan().runs().size(), answer.plan().unrouted().toString());
    return answer.plan().findings().stream()
        .filter(f -> f.rule().equals("near-motor-or-lamp"))
        .toList();
  }

  /** The wish of A8-14 (practice): 300 mm from a fluorescent light, 48 in from a motor. */
  @Test
  void aLightUnderTheCeilingThatTheCableLiesOver() throws Exception {
    String light =
        "{ fluorescent-light, below-ceiling-of: study, at: [%s], size: %s, height: 4 in }";
    // it fills the ceiling, so that the cable passes over it wherever it lies
    List<Plan.FindingLine> over = near(light.formatted("west 6 ft, south 6 ft", "11 ft x 11 ft"));
    assertEquals(1, over.size());
    // 13 mm of board and 114 mm to the middle of the cable on the joists
    assertTrue(over.get(0).measured().contains("(127 mm)"), over.toString());
    // the cable stays far from the other corner: more than 300 mm
    assertEquals(List.of(), near(light.formatted("west 2 ft, north 1 ft", "1 ft x 1 ft")));
  }

  @Test
  void aFansMotorDisturbsFurther() throws Exception {
    String motor =
        "{ motor, below-ceiling-of: study, at: [east 2 ft, north 1 ft], size: 8 in x 8 in, height:"
            + " 1 ft }";
    List<Plan.FindingLine> far = near(motor);
    assertEquals(1, far.size());
    assertTrue(far.get(0).limit().contains("(1219 mm)"), far.toString());
    assertEquals(List.of(), near(motor.replace("motor", "fluorescent-light")));
  }
}
