package holloway.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import holloway.finding.Severity;
import holloway.geometry.SiteFrame;
import holloway.geometry.Turn;
import holloway.hollow.HollowKind;
import holloway.hollow.SiteKind;
import holloway.hollow.WorkKind;
import holloway.pipeline.Toy;
import holloway.report.Documents;
import holloway.request.Profile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The published schema accepts what is written and lists the very words that the program uses. */
class PlanSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PlanJson.schema(), InputFormat.JSON);

  private static List<String> complaints(String json) {
    return SCHEMA.validate(json, InputFormat.JSON).stream().map(Object::toString).toList();
  }

  private static Plan plan() {
    return Toy.bare()
        .withFindings(
            List.of(new Plan.FindingLine("rule", "law", Optional.empty(), "source", "text")))
        .withMaterials(List.of(new Plan.Material("cat6", 3, "m", Optional.empty())));
  }

  @Test
  void whatIsWrittenIsValid() {
    assertEquals(List.of(), complaints(PlanJson.write(plan())));
    Plan turned = plan().withSite(new SiteFrame(Turn.degrees(-23), 5, 7_000_000));
    assertTrue(PlanJson.write(turned).contains("\"degrees\": -23.0"));
    assertEquals(List.of(), complaints(PlanJson.write(turned)));
    assertEquals(
        List.of(), complaints(Documents.plan(plan(), Map.of(Toy.card().holeId(), Toy.card()))));
  }

  @Test
  void whatIsWrongIsRefused() {
    String good = PlanJson.write(plan());
    for (List<String> change :
        List.of(
            List.of("\"severity\": \"law\"", "\"severity\": \"bad\""),
            List.of("\"kind\": \"top plate\"", "\"kind\": \"plate\""),
            List.of("\"bound\": 990000,", ""),
            List.of("[3990.0, 2000.0, 1400.0]", "[3990.0, 2000.0]"),
            List.of("\"hollow\": \"stud bay\"", "\"hollow\": \"bay\""))) {
      String bad = good.replace(change.get(0), change.get(1));
      assertFalse(complaints(bad).isEmpty(), change.toString());
    }
  }

  @Test
  void wordsAreThoseOfTheProgram() throws Exception {
    JsonNode root = new ObjectMapper().readTree(PlanJson.schema());
    assertEquals(
        words(Arrays.stream(Profile.values()).map(Profile::word)),
        words(root, "/properties/profile/enum"));
    assertEquals(
        words(Arrays.stream(SiteKind.values()).map(SiteKind::word)),
        words(root, "/properties/holes/items/properties/kind/enum"));
    assertEquals(
        words(Arrays.stream(HollowKind.values()).map(HollowKind::word)),
        words(
            root, "/properties/runs/items/properties/steps/items/oneOf/0/properties/hollow/enum"));
    assertEquals(
        words(Arrays.stream(WorkKind.values()).map(WorkKind::word)),
        words(root, "/properties/works/items/properties/kind/enum"));
    assertEquals(
        words(Arrays.stream(Severity.values()).map(Severity::word)),
        words(root, "/properties/findings/items/properties/severity/enum"));
  }

  private static List<String> words(Stream<String> words) {
    return words.sorted().toList();
  }

  private static List<String> words(JsonNode root, String at) {
    List<String> out = new ArrayList<>();
    root.at(at).forEach(n -> out.add(n.textValue()));
    return words(out.stream());
  }
}
