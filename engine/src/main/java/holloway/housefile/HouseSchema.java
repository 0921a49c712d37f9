package holloway.housefile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.units.LengthParser;
import java.util.Map;
import java.util.TreeMap;

/**
 * The published JSON Schemas (draft 2020-12), written from the key tables that the reader obeys. A
 * schema knows shapes and words; names that must exist and lengths that must lie in a range are
 * checked by the reader alone.
 */
public final class HouseSchema {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  private HouseSchema() {}

  /** The schema of a house file. */
  public static String text() {
    return new HouseSchema().write(WantedTables.HOUSE, "A house file of Holloway");
  }

  /** The schema of {@code NAME.found.yaml}. */
  public static String foundText() {
    return new HouseSchema().write(WantedTables.FOUND_FILE, "What the work uncovered");
  }

  /** The schema of {@code NAME.wishes.yaml}. */
  public static String wishesText() {
    return new HouseSchema().write(WantedTables.WISHES_FILE, "Wishes kept beside a house file");
  }

  /** The schema of a rule file of one's own. */
  public static String rulesText() {
    return new HouseSchema().write(RulesFile.TABLE, "Rules of one's own for Holloway");
  }

  private String write(Table root, String title) {
    ObjectNode schema = NODES.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", title);
    schema.setAll(table(root));
    ObjectNode defs = NODES.objectNode();
    definitions.forEach(defs::set);
    schema.set("$defs", defs);
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    try {
      return new ObjectMapper().writer(printer).writeValueAsString(schema) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain nodes can always be written", e);
    }
  }

  private ObjectNode table(Table table) {
    ObjectNode out = NODES.objectNode();
    out.put("type", "object");
    out.put("description", table.about());
    ObjectNode properties = NODES.objectNode();
    ArrayNode required = NODES.arrayNode();
    for (Table.Key key : table.keys()) {
      properties.set(key.name(), shape(key.shape()).put("description", key.about()));
      if (key.required()) {
        required.add(key.name());
      }
    }
    out.set("properties", properties);
    if (!required.isEmpty()) {
      out.set("required", required);
    }
    if (!table.kinds().isEmpty()) {
      out.set("oneOf", kinds(table));
    }
    return out.put("additionalProperties", false);
  }

  /** Exactly one of {@code kind} and the words that stand alone. */
  private static ArrayNode kinds(Table table) {
    ArrayNode oneOf = NODES.arrayNode();
    oneOf.add(NODES.objectNode().set("required", NODES.arrayNode().add("kind")));
    for (String kind : table.kinds()) {
      oneOf.add(NODES.objectNode().set("required", NODES.arrayNode().add(kind)));
    }
    return oneOf;
  }

  private ObjectNode shape(Shape shape) {
    ObjectNode out = NODES.objectNode();
    if (shape instanceof Shape.Text text) {
      Form form = text.form();
      out.put("$ref", reference("text-" + Shape.word(form), textOf(form)));
    } else if (shape instanceof Shape.Len) {
      ObjectNode length = text("a length like " + LengthParser.EXAMPLES, Form.lengthPattern());
      out.put("$ref", reference("length", length.put("type", "string")));
    } else if (shape instanceof Shape.Whole whole) {
      out.put("type", "integer").put("minimum", whole.least()).put("maximum", whole.most());
    } else if (shape instanceof Shape.Words words) {
      words.words().forEach(out.putArray("enum")::add);
    } else if (shape instanceof Shape.YesNo) {
      out.putArray("enum").add(true).add(false).add("yes").add("no");
    } else if (shape instanceof Shape.Nothing) {
      out.putArray("enum").addNull().add(true).add("yes");
    } else {
      composite(shape, out);
    }
    return out;
  }

  /** Names may look like numbers: YAML then takes them for numbers. */
  private static ObjectNode textOf(Form form) {
    ObjectNode out = text(form.expected(), form.pattern());
    if (form.isName()) {
      out.putArray("type").add("string").add("number");
    } else {
      out.put("type", "string");
    }
    return out;
  }

  private static ObjectNode text(String about, String pattern) {
    return NODES.objectNode().put("description", about).put("pattern", pattern);
  }

  private String reference(String name, ObjectNode definition) {
    definitions.putIfAbsent(name, definition);
    return "#/$defs/" + name;
  }

  private void composite(Shape shape, ObjectNode out) {
    if (shape instanceof Shape.MapOf map) {
      out.put("$ref", reference(map.table()));
    } else if (shape instanceof Shape.Named named) {
      out.put("type", "object").set("additionalProperties", shape(named.item()));
    } else if (shape instanceof Shape.ListOf list) {
      out.put("type", "array").set("items", shape(list.item()));
      if (list.least() > 0) {
        out.put("minItems", list.least());
      }
      if (list.most() < Integer.MAX_VALUE) {
        out.put("maxItems", list.most());
      }
    } else if (shape instanceof Shape.OneMapOf maps) {
      ArrayNode any = out.putArray("anyOf");
      maps.tables().forEach(t -> any.add(shape(new Shape.MapOf(t))));
    } else if (shape instanceof Shape.Either either) {
      out.putArray("anyOf").add(shape(either.one())).add(shape(either.other()));
    }
  }

  private String reference(Table table) {
    if (!definitions.containsKey(table.name())) {
      definitions.put(table.name(), NODES.objectNode());
      definitions.put(table.name(), table(table));
    }
    return "#/$defs/" + table.name();
  }
}
