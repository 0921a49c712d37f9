package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code --until} and {@code --at-most}, through the whole program. */
class UntilTest {
  private static final String HOUSE = "../samples/plumb-corner.yaml";

  private static JsonNode totals(Said said) throws Exception {
    return new ObjectMapper().readTree(said.out()).get("totals");
  }

  @Test
  void aPlanThatTimeCutShortSaysSo() throws Exception {
    Said json = Said.whole("plan", "--at-most", "0", "s", HOUSE, "--json");
    assertTrue(totals(json).get("cut-by-time").asBoolean(), json.err());
    Plan read = PlanJson.read(json.out());
    assertTrue(read.totals().cutByTime());
    Said text = Said.whole("plan", HOUSE, "--at-most=0s");
    assertTrue(text.out().contains("  cut      time ended the search"), text.out());
    Said compared = Said.whole("compare", HOUSE, "--at-most=0s");
    assertTrue(compared.out().contains("time ended some of the searches"), compared.out());
  }

  @Test
  void timeThatSufficesGivesTheSameBytes() {
    Said without = Said.whole("plan", HOUSE, "--effort=quick", "--json");
    Said with = Said.whole("plan", HOUSE, "--effort=quick", "--json", "--at-most=99 min");
    assertEquals(without, with);
    assertFalse(without.out().contains("cut-by-time"));
  }

  @Test
  void nearEnoughIsProvenToBeNear() throws Exception {
    double all =
        totals(Said.whole("plan", HOUSE, "--effort=quick", "--json")).get("gap").asDouble();
    Said some = Said.whole("plan", HOUSE, "--effort=quick", "--json", "--until", "15%");
    double gap = totals(some).get("gap").asDouble();
    assertTrue(all < gap && gap <= 0.15, all + " and " + gap);
    assertFalse(some.out().contains("cut-by-time"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"--until=0.5", "--until=100%", "--until=-1%", "--until=x%"})
  void aWrongShareIsNamed(String option) {
    Said said = Said.whole("plan", HOUSE, option);
    assertEquals(2, said.code());
    assertTrue(said.err().contains("is not a share like 0.5%"), said.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--at-most=30", "--at-most=-1s", "--at-most=1 day", "--at-most=0.5s"})
  void aWrongTimeIsNamed(String option) {
    Said said = Said.whole("plan", HOUSE, option);
    assertEquals(2, said.code());
    assertTrue(said.err().contains("is not a time like 30s or 2min"), said.err());
    assertEquals(2, Said.whole("plan", HOUSE, "--at-most").code());
  }

  @Test
  void secondsAndMinutes() {
    assertEquals(Duration.ofSeconds(90), Until.time("90 s"));
    assertEquals(Duration.ofMinutes(2), Until.time("2min"));
  }
}
