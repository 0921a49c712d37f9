package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The schema and the reader agree. */
class HouseSchemaTest {
  static final Path SAMPLES = Path.of("..", "samples");
  private static final ObjectMapper JSON = new ObjectMapper();

  static List<String> faults(String schema, String yaml) throws IOException {
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
    Schema s =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(schema, InputFormat.JSON);
    return s.validate(JSON.writeValueAsString(tree), InputFormat.JSON).stream()
        .map(Object::toString)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"alder-lane", "quince-ranch", "tin-street", "plumb-corner", "wren-hollow"})
  void samplesValidate(String name) throws IOException {
    String yaml = Files.readString(SAMPLES.resolve(name + ".yaml"));
    assertEquals(List.of(), faults(HouseSchema.text(), yaml));
  }

  @Test
  void theStarterAndTheToyValidate() throws IOException {
    assertEquals(List.of(), faults(HouseSchema.text(), Starter.text("house.schema.json")));
    assertEquals(List.of(), faults(HouseSchema.text(), Written.SOUND));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "place: us|place: usa",
        "built: 1994|biult: 1994",
        "height: 5 ft|height: 5",
        "20 ft x 22 ft|20 x 22",
        "from: west 3 ft|from: 3 ft",
        "cables: [cat6]|cables: [cat7]",
        "pitch: 6/12|pitch: steep",
        "{ door, between|{ dor, between",
        "{ door, between|{ door, window, between",
        "{ door, between|{ between",
        "side: office east|side: office",
        "joists: 2x10|joists: 2x9",
        "size: 10 in x 22 in|size: 10 in",
        "align: south-east|align: east-south",
        "run: east-west|runs: east-west",
        "in: garage, wall|wall",
        "floor: slab|floor: concrete"
      })
  void brokenOnesDoNot(String old, String broken) throws IOException {
    assertTrue(Written.SOUND.contains(old), old);
    String yaml = Written.SOUND.replaceFirst(java.util.regex.Pattern.quote(old), broken);
    assertFalse(faults(HouseSchema.text(), yaml).isEmpty(), broken);
  }

  @Test
  void theCommittedSchemaIsThisOne() throws IOException {
    assertEquals(HouseSchema.text(), Files.readString(SAMPLES.resolve("house.schema.json")));
  }

  @Test
  void foundAndWishes() throws IOException {
    String found = "studs: [{ side: office east, from: south 15-1/4 in }]\n";
    assertEquals(List.of(), faults(HouseSchema.foundText(), found));
    assertFalse(faults(HouseSchema.foundText(), "studs: [{ side: office east }]\n").isEmpty());
    String wishes = "attic: never\ncrew: 1\nvisible-metre: 30 min\n";
    assertEquals(List.of(), faults(HouseSchema.wishesText(), wishes));
    assertFalse(faults(HouseSchema.wishesText(), "attic: autumn\n").isEmpty());
  }

  @Test
  void everyKeyTheReaderKnowsIsInTheSchema() throws IOException {
    compare(WantedTables.HOUSE, JSON.readTree(HouseSchema.text()));
    compare(WantedTables.FOUND_FILE, JSON.readTree(HouseSchema.foundText()));
    compare(WantedTables.WISHES_FILE, JSON.readTree(HouseSchema.wishesText()));
  }

  private static void compare(Table root, JsonNode schema) {
    assertEquals(keys(root), fields(schema.path("properties")));
    Set<Table> tables = new java.util.LinkedHashSet<>();
    collect(new Shape.MapOf(root), tables);
    for (Table t : tables) {
      if (t != root) {
        JsonNode def = schema.path("$defs").path(t.name());
        assertEquals(keys(t), fields(def.path("properties")), t.name());
        assertFalse(def.path("additionalProperties").asBoolean(true), t.name());
      }
    }
  }

  private static void collect(Shape shape, Set<Table> tables) {
    if (shape instanceof Shape.MapOf m) {
      if (tables.add(m.table())) {
        m.table().keys().forEach(k -> collect(k.shape(), tables));
      }
    } else if (shape instanceof Shape.ListOf l) {
      collect(l.item(), tables);
    } else if (shape instanceof Shape.Named n) {
      collect(n.item(), tables);
    } else if (shape instanceof Shape.OneMapOf m) {
      m.tables().forEach(t -> collect(new Shape.MapOf(t), tables));
    } else if (shape instanceof Shape.Either e) {
      collect(e.one(), tables);
      collect(e.other(), tables);
    }
  }

  private static Set<String> keys(Table t) {
    return new TreeSet<>(t.names());
  }

  private static Set<String> fields(JsonNode node) {
    Set<String> out = new TreeSet<>();
    node.fieldNames().forEachRemaining(out::add);
    return out;
  }
}
