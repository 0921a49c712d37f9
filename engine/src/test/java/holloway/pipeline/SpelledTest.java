package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.plan.PlanJson;
import holloway.support.Respelled;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A house is the same in millimetres and in feet and inches. Of the plan everything but the names
 * and fingerprints of the files is compared for two samples; for all of them, for its time, what
 * the plan is made from: what is solid, what is hollow, where can be bored.
 */
class SpelledTest {
  @TempDir Path folder;

  private static String sample(String name) throws Exception {
    return Files.readString(Path.of("..", "samples", name + ".yaml"));
  }

  private static String respelled(String text) {
    Respelled.Text anew = Respelled.of(text);
    assertTrue(anew.lengths() > 60, "only " + anew.lengths() + " lengths found");
    return anew.text();
  }

  private String planJson(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("house.yaml"), text);
    Answers.Planned planned = new Pipeline(Progress.SILENT).plan(file, Rough.SETTINGS);
    ObjectNode tree = PlanJson.toTree(planned.plan());
    assertNotNull(tree.remove("inputs"));
    return tree.toPrettyString();
  }

  @ParameterizedTest
  @ValueSource(strings = {"plumb-corner", "tin-street"})
  void theSamePlan(String name) throws Exception {
    String text = sample(name);
    assertEquals(planJson(text), planJson(respelled(text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street", "wren-hollow"})
  void theSameHouse(String name) throws Exception {
    String text = sample(name);
    WrittenHouse one = WrittenHouse.of(text);
    WrittenHouse other = WrittenHouse.of(respelled(text));
    assertEquals(one.framed().members(), other.framed().members());
    assertEquals(one.hollows().sites(), other.hollows().sites());
    assertEquals(one.hollows().hollows(), other.hollows().hollows());
  }

  /** A room that is a millimetre longer is another house: the comparison can fail. */
  @Test
  void anotherLengthIsAnotherHouse() throws Exception {
    String text = respelled(sample("plumb-corner"));
    String longer = text.replaceFirst("4267.2 mm", "4268.2 mm");
    assertNotEquals(text, longer);
    assertNotEquals(
        WrittenHouse.of(text).hollows().sites(), WrittenHouse.of(longer).hollows().sites());
  }
}
