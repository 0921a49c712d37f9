package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.pipeline.Toy;
import holloway.pipeline.ToyStages;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExitCodesTest {
  @TempDir Path folder;
  private String house;

  @BeforeEach
  void write() throws Exception {
    house = Files.writeString(folder.resolve("toy.yaml"), "house: Toy Cottage\n").toString();
  }

  private static ToyStages unrouted() {
    ToyStages stages = new ToyStages();
    stages.bare =
        stages.bare.withUnrouted(
            List.of(new Plan.Unrouted("spare-1", List.of("the attic has no way in"))));
    return stages;
  }

  private static ToyStages unlawful(ToyStages stages) {
    stages.judged = List.of(Toy.law());
    return stages;
  }

  @Test
  void doneIsZeroAndSaysNothingElse() {
    Said said = Said.of("plan", house);
    assertEquals(0, said.code());
    assertEquals("", said.err());
  }

  @Test
  void jsonIsJsonAndNothingElse() throws Exception {
    for (List<String> args :
        List.of(
            List.of("plan", house, "--json"),
            List.of("check", house, "--json"),
            List.of("routes", house, "desk/cat6-1", "--json"))) {
      ToyStages stages = new ToyStages();
      stages.routes = List.of(Toy.bare());
      Said said = Said.of(stages, args.toArray(String[]::new));
      assertEquals("", said.err());
      JsonNode root = new ObjectMapper().readTree(said.out());
      assertEquals(1, root.get("format").asInt(), args.toString());
      assertEquals("Toy Cottage", root.get("house").asText());
    }
    JsonNode ways = new ObjectMapper().readTree(Said.of("compare", house, "--json").out());
    assertTrue(ways.isArray());
    assertTrue(ways.get(0).get("totals").has("objective"));
    JsonNode plan = new ObjectMapper().readTree(Said.of("plan", house, "--json").out());
    assertEquals("22 mm (7/8 in) bit", plan.at("/holes/0/bit").asText());
    assertEquals("square", plan.at("/holes/0/tape/angle").asText());
    assertTrue(plan.at("/holes/1/tape").isNull());
    assertEquals("toy.yaml", plan.at("/inputs/0/file").asText());
    assertEquals(1, plan.at("/survey/unaccounted").size());
  }

  @Test
  void aRunWithoutRouteIsFourAndWinsOverLaw() {
    Said said = Said.of(unrouted(), "plan", house);
    assertEquals(4, said.code());
    assertTrue(said.out().contains("- the attic has no way in"), said.out());
    assertEquals(4, Said.of(unlawful(unrouted()), "plan", house).code());
    assertEquals(4, Said.of(unrouted(), "compare", house).code());
    assertEquals(4, Said.of("routes", house, "desk/cat6-1").code(), "no routes at all");
  }

  @Test
  void aRuleOfLawIsFive() {
    Said said = Said.of(unlawful(new ToyStages()), "plan", house);
    assertEquals(5, said.code());
    assertTrue(
        said.out().indexOf("garage-separation;") < said.out().indexOf("label-ends;"), "law first");
  }

  @Test
  void aRefusedPlanIsSixAndIsNotShown() {
    ToyStages stages = unlawful(unrouted());
    stages.refusals = List.of("run desk/cat6-1: leg 2 goes through a stud");
    Said said = Said.of(stages, "plan", house, "--json", "--out", folder + "/out");
    assertEquals(6, said.code());
    assertEquals("", said.out());
    assertTrue(said.err().contains("refused: run desk/cat6-1: leg 2 goes through a stud"));
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void theRefereeSpeaksOfAPlanFile() throws Exception {
    Path plan = Files.writeString(folder.resolve("plan.json"), PlanJson.write(Toy.bare()));
    Said good = Said.of("check", house, plan.toString());
    assertEquals(0, good.code());
    assertTrue(good.out().startsWith("The referee accepts this plan: 3 runs, 2 holes"));
    ToyStages strict = new ToyStages();
    strict.refusals = List.of("hole H1: no such crossing", "totals: 100.0 minutes, found 101.0");
    Said bad = Said.of(strict, "check", house, plan.toString());
    assertEquals(6, bad.code());
    assertTrue(
        bad.out()
            .startsWith(
                "refused: hole H1: no such crossing\n"
                    + "refused: totals: 100.0 minutes, found 101.0\n"),
        bad.out());
    assertEquals(5, Said.of(unlawful(new ToyStages()), "check", house, plan.toString()).code());
    JsonNode json =
        new ObjectMapper()
            .readTree(Said.of(strict, "check", house, plan.toString(), "--json").out());
    assertFalse(json.get("accepted").asBoolean());
    assertEquals(2, json.get("refusals").size());
  }

  @Test
  void aWrongInputIsThreeWithAllProblems() throws Exception {
    Said said = Said.of("plan", folder + "/none.yaml");
    assertEquals(3, said.code());
    assertEquals("", said.out());
    assertEquals(
        "toy.yaml:3:7: read 12, expected a length\ntoy.yaml:9:1: no such key 'roms'\n", said.err());
    Path plan = Files.writeString(folder.resolve("plan.json"), "{\"format\": 1}");
    Said wrong = Said.of("check", house, plan.toString());
    assertEquals(3, wrong.code());
    assertEquals("plan.json: house is missing\n", wrong.err());
    assertEquals(3, Said.of("check", house, folder + "/none.json").code());
  }

  @Test
  void aWrongCommandLineIsTwoWithTheNearestWord() {
    assertSays("no verb 'plna'; did you mean 'plan'?", Said.of("plna"));
    assertSays("no option '--jsno'; did you mean '--json'?", Said.of("plan", house, "--jsno"));
    assertSays("plan needs HOUSE", Said.of("plan"));
    assertSays("routes needs RUN", Said.of("routes", house));
    assertSays("no use for 'x'", Said.of("plan", house, "x"));
    assertSays("which verb?", Said.of());
    assertSays("did you mean 'least-work'?", Said.of("plan", house, "--profile", "least-wrk"));
    assertSays("did you mean 'thorough'?", Said.of("plan", house, "--effort", "through"));
    assertSays("is not one of ft-in, metric", Said.of("plan", house, "--units", "furlongs"));
    assertSays("did you mean 'desk/cat6-1'?", Said.of("routes", house, "desk/cat6-3"));
    assertSays("--most: 0 is not from 1 to 100", Said.of("routes", house, "r", "--most", "0"));
    assertSays("'plans' is not one of house, found", Said.of("schema", "--of", "plans"));
  }

  private static void assertSays(String words, Said said) {
    assertEquals(2, said.code(), said.err());
    assertEquals("", said.out());
    assertTrue(said.err().contains(words), said.err());
  }

  @Test
  void ourFaultIsOneSentenceWithoutStackTrace() {
    for (Throwable t :
        List.of(
            new IllegalStateException("hollow 7 has no stand\nand a second line"),
            new NullPointerException(),
            new OutOfMemoryError("heap"),
            new StackOverflowError())) {
      ToyStages stages = new ToyStages();
      stages.failure = t;
      Said said = Said.of(stages, "plan", house);
      assertEquals(1, said.code());
      assertEquals("", said.out());
      assertFalse(said.err().contains("\tat "), said.err());
      assertFalse(said.err().contains("second line"), said.err());
      assertTrue(said.err().contains("please report it"), said.err());
      assertTrue(said.err().lines().allMatch(l -> l.startsWith("holloway: ")), said.err());
    }
  }

  @Test
  void schemasAndAFirstFile() throws Exception {
    assertEquals("{\"of\": \"house\"}\n", Said.of("schema").out());
    assertEquals(PlanJson.schema(), Said.of("schema", "--of", "plan").out());
    assertEquals("# s.json\nhouse: My house\n", Said.of("start", "--schema", "s.json").out());
    Path file = folder.resolve("first.yaml");
    Said first = Said.of("start", "--out", file.toString());
    assertEquals(0, first.code());
    assertTrue(first.out().contains("holloway check " + file), first.out());
    String text = "# house.schema.json\nhouse: My house\n";
    assertEquals(text, Files.readString(file));
    Said again = Said.of("start", "--out", file.toString(), "--schema", "other");
    assertSays("--out first.yaml is there already", again);
    assertEquals(text, Files.readString(file));
    assertEquals(1, Files.list(folder).filter(p -> p.toString().contains("first")).count());
  }

  @Test
  void theProfileOfTheCommandLineWins() {
    ToyStages stages = new ToyStages();
    Said.of(stages, "plan", house, "--profile", "fewest-holes");
    Said.of(stages, "plan", house);
    assertEquals(List.of("fewest-holes", "least-work"), stages.profilesSeen);
  }
}
