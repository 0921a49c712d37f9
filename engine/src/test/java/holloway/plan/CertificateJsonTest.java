package holloway.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import holloway.pipeline.Toy;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CertificateJsonTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PlanJson.schema(), InputFormat.JSON);

  private static final Certificate CERTIFICATE =
      new Certificate(
          "least-work",
          990_000,
          2_500,
          List.of(4),
          List.of(1, 2),
          List.of(List.of("desk/cat6-1", "desk/cat6-2"), List.of("tv/cat6-1")),
          true,
          List.of(
              new Certificate.Part(
                  List.of(1, 2),
                  List.of(),
                  990_000,
                  false,
                  List.of(
                      new Certificate.Share(7, "hole", 3, 1, 40_000),
                      new Certificate.Share(8, "into", 12, 0, 50_000_000_000L))),
              new Certificate.Part(List.of(), List.of(1, 2), 5, true, List.of())));

  private static String written() {
    ObjectNode root = PlanJson.toTree(Toy.bare());
    PlanJson.addCertificate(root, CERTIFICATE);
    return JsonText.of(root);
  }

  @Test
  void whatIsWrittenReadsBackTheSameBesideThePlan() {
    assertEquals(Optional.of(CERTIFICATE), PlanJson.readCertificate(written()));
    assertEquals(Toy.bare(), PlanJson.read(written()));
    assertEquals(Optional.empty(), PlanJson.readCertificate(PlanJson.write(Toy.bare())));
  }

  @Test
  void theSchemaAllowsItAndSeesAWrongShare() {
    assertEquals(List.of(), SCHEMA.validate(written(), InputFormat.JSON));
    String bad = written().replace("\"into\"", "\"inside\"");
    assertFalse(SCHEMA.validate(bad, InputFormat.JSON).isEmpty());
  }

  @Test
  void whatIsMissingOrWrongIsNamed() {
    for (List<String> change :
        List.of(
            List.of("[7, \"hole\", 3, 1, 40000]", "[7, \"hole\", 3, 1]", "shares[0]: read"),
            List.of("\"directed\": true", "\"directed\": 1", "certificate.directed"),
            List.of("\"prepaid\": [1, 2]", "\"prepaid\": [-1]", "prepaid[0]: read -1"))) {
      String bad = written().replace(change.get(0), change.get(1));
      String said =
          assertThrows(PlanJsonException.class, () -> PlanJson.readCertificate(bad)).getMessage();
      assertTrue(said.contains(change.get(2)), said);
    }
  }
}
