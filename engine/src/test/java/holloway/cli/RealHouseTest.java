package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The verbs on the house that {@code start} writes, through all real stages. */
class RealHouseTest {
  @TempDir Path folder;

  private String start() {
    Path house = folder.resolve("first.yaml");
    assertEquals(0, Said.whole("start", "--out", house.toString()).code());
    return house.toString();
  }

  @Test
  void theFirstHouseIsUnderstood() {
    Said said = Said.whole("check", start());
    assertEquals(0, said.code(), said.err());
    assertTrue(said.out().contains("LEVEL ground"), said.out());
    assertTrue(said.out().lines().allMatch(l -> l.length() <= 80), said.out());
  }

  @Test
  void theFirstHouseIsPlannedAndThePlanIsAccepted() throws Exception {
    String house = start();
    Path out = folder.resolve("out");
    Said plan = Said.whole("plan", house, "--effort", "quick", "--json", "--out", out.toString());
    assertTrue(plan.code() == 0 || plan.code() == 4 || plan.code() == 5, plan.err());
    JsonNode root = new ObjectMapper().readTree(plan.out());
    assertEquals("My House", root.get("house").asText());
    assertEquals("USD", root.at("/totals/currency").asText());
    assertTrue(root.get("runs").size() > 0);
    assertTrue(root.at("/totals/bound").asLong() <= root.at("/totals/objective").asLong());
    Said check = Said.whole("check", house, out.resolve("plan.json").toString());
    assertTrue(check.out().startsWith("The referee accepts"), check.out());
    String text = Files.readString(out.resolve("plan.txt"));
    assertTrue(text.lines().allMatch(l -> l.length() <= 80), text);
    assertDrawn(root, out);
  }

  /** Every run and every hole of the plan is named on the drawing of some level. */
  private static void assertDrawn(JsonNode plan, Path out) throws Exception {
    StringBuilder drawn = new StringBuilder();
    try (DirectoryStream<Path> sheets = Files.newDirectoryStream(out, "runs-*.svg")) {
      for (Path sheet : sheets) {
        drawn.append(Files.readString(sheet));
      }
    }
    plan.get("runs").forEach(r -> assertNamed(drawn, r.get("id").asText()));
    plan.get("holes").forEach(h -> assertNamed(drawn, h.get("label").asText()));
  }

  private static void assertNamed(CharSequence drawn, String name) {
    assertTrue(drawn.toString().contains(">" + name + "</text>"), name);
  }

  /** Without a certificate check says so; a true one is accepted, an inflated one is not. */
  @Test
  void aCertificateIsRecomputed() throws Exception {
    String house = start();
    assertEquals(2, Said.whole("plan", house, "--certificate").code());
    Said plan = Said.whole("plan", house, "--effort", "quick", "--json", "--certificate");
    JsonNode root = new ObjectMapper().readTree(plan.out());
    assertTrue(root.at("/totals/bound").asLong() <= root.at("/certificate/bound").asLong());
    Path file = folder.resolve("plan.json");
    Files.writeString(file, plan.out());
    Said good = Said.whole("check", house, file.toString());
    assertTrue(good.out().contains("The checker accepts its certificate"), good.out());

    String bound = "\"bound\": " + root.at("/certificate/bound");
    Files.writeString(
        file, plan.out().replaceAll(bound + ",\n(\\s*)\"grain", bound + "9,\n$1\"grain"));
    Said bad = Said.whole("check", house, file.toString());
    assertEquals(6, bad.code());
    assertTrue(bad.out().contains("refused: the bound is not proven: it claims"), bad.out());

    ObjectNode without = (ObjectNode) root;
    without.remove("certificate");
    Files.writeString(file, without.toString());
    assertTrue(Said.whole("check", house, file.toString()).out().contains("holds no certificate"));
  }

  @ParameterizedTest
  @CsvSource({"us,1985,1,false", "us,1925,2,false", "uk,1972,2,true", "none,0,1,true"})
  void whatStartWritesIsPlannedWhole(String place, int built, int levels, boolean metric)
      throws Exception {
    Path house = folder.resolve("mine.yaml");
    List<String> args =
        new ArrayList<>(List.of("start", "--name", "Fern Cottage", "--place", place, "--out"));
    args.addAll(List.of(house.toString(), "--built", "" + built, "--levels", "" + levels));
    if (metric) {
      args.add("--metric");
    }
    assertEquals(0, Said.whole(args.toArray(String[]::new)).code());
    Said plan = Said.whole("plan", house.toString(), "--effort", "quick");
    assertEquals(0, plan.code(), plan.out() + plan.err());
    assertTrue(plan.out().startsWith("Fern Cottage: plan"), plan.out());
    assertFalse(plan.out().matches("(?s).*\\w@\\d.*"), "names of spots stay inside");
  }

  @Test
  void startPrintsWithoutOutAndRefusesWhatIsNoHouse() {
    Said said = Said.whole("start", "--name", "Fern Cottage", "--built", "1931");
    assertEquals(0, said.code());
    assertTrue(said.out().contains("house: Fern Cottage\n"), said.out());
    assertTrue(said.out().contains("built: 1931"), said.out());
    assertEquals(2, Said.whole("start", "--levels", "0").code());
    assertEquals(2, Said.whole("start", "--built", "19").code());
    assertEquals(2, Said.whole("start", "--place", "moon").code());
  }

  @Test
  void aSpoiledPlanIsRefused() throws Exception {
    String house = start();
    Said plan = Said.whole("plan", house, "--effort", "quick", "--json");
    JsonNode root = new ObjectMapper().readTree(plan.out());
    ((com.fasterxml.jackson.databind.node.ObjectNode) root.get("totals"))
        .put("holes", root.at("/totals/holes").asInt() + 1);
    Path spoiled = Files.writeString(folder.resolve("spoiled.json"), root.toString());
    Said check = Said.whole("check", house, spoiled.toString());
    assertEquals(6, check.code());
    assertTrue(check.out().startsWith("refused: "), check.out());
  }

  @Test
  void faultsOfTheFileComeAllTogether() throws Exception {
    String text = Files.readString(Path.of(start()));
    Path bad =
        Files.writeString(
            folder.resolve("bad.yaml"),
            text.replace("built: 1985", "bilt: 1985").replace("16 ft x 12 ft", "16 x 12 ft"));
    Said said = Said.whole("plan", bad.toString());
    assertEquals(3, said.code());
    assertEquals("", said.out());
    assertTrue(said.err().lines().count() >= 2, said.err());
    assertTrue(said.err().lines().allMatch(l -> l.matches("bad\\.yaml:\\d+:\\d+: .*")), said.err());
    assertTrue(said.err().contains("did you mean 'built'?"), said.err());
    assertEquals(3, Said.whole("check", folder + "/none.yaml").code());
  }

  @Test
  void everySchemaIsJson() throws Exception {
    for (String of : new String[] {"house", "found", "wishes", "plan"}) {
      Said said = Said.whole("schema", "--of", of);
      assertEquals(0, said.code());
      assertTrue(new ObjectMapper().readTree(said.out()).has("$schema"), of);
    }
  }
}
