package holloway.plan;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.geometry.SiteFrame;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;

/**
 * The plan as JSON: kebab-case keys in a fixed order, world points as [x, y, z] in millimetres to
 * 0.1, in the frame of the site; metres to three decimals, minutes to four, so that they add up to
 * the objective exactly. The same plan is always the same text.
 */
public final class PlanJson {
  /** The format number written, and the only one read. */
  public static final int FORMAT = 1;

  private static final String CERTIFICATE = "certificate";

  private static final ObjectMapper STRICT =
      new ObjectMapper()
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private PlanJson() {}

  public static String write(Plan plan) {
    return JsonText.of(toTree(plan));
  }

  /** The plan as a tree, for documents that add keys of their own. */
  public static ObjectNode toTree(Plan plan) {
    return new PlanWriter(plan.site()).plan(plan);
  }

  /**
   * Reads the text of a plan; keys it does not know are passed over.
   *
   * @throws PlanJsonException naming the field that is missing or wrong
   */
  public static Plan read(String text) {
    return new PlanReader().plan(tree(text));
  }

  /**
   * Says in a document with coordinates how its house stands: {@code turned}, degrees
   * counter-clockwise and where the origin of the house's own frame lies in the site's. Nothing for
   * one that stands along the axes.
   */
  public static void addFrame(ObjectNode document, SiteFrame site) {
    if (!site.isOwn()) {
      ObjectNode out = document.putObject("turned");
      out.set("degrees", JsonText.real(site.turn().degrees(), 9));
      ArrayNode origin = out.putArray("origin");
      origin.add(JsonText.real(site.east() / 1e6, 1)).add(JsonText.real(site.north() / 1e6, 1));
    }
  }

  /** The certificate's own key beside a plan's others. */
  public static void addCertificate(ObjectNode plan, Certificate certificate) {
    plan.set(CERTIFICATE, CertificateJson.write(certificate));
  }

  /**
   * The certificate that lies in a plan's text, if one does.
   *
   * @throws PlanJsonException naming the field that is missing or wrong
   */
  public static Optional<Certificate> readCertificate(String text) {
    return new JsonCursor(tree(text), "")
        .requireObject()
        .optional(CERTIFICATE, CertificateJson::read);
  }

  private static JsonNode tree(String text) {
    try {
      return STRICT.readTree(text);
    } catch (JsonProcessingException e) {
      String where =
          e.getLocation() == null
              ? ""
              : "line %d, column %d: "
                  .formatted(e.getLocation().getLineNr(), e.getLocation().getColumnNr());
      throw new PlanJsonException(where + "this is not JSON: " + e.getOriginalMessage());
    }
  }

  /** As {@link #read(String)}; the file's name leads every complaint. */
  public static Plan read(Path file) {
    return read(file, PlanJson::read);
  }

  /** As {@link #readCertificate(String)}; the file's name leads every complaint. */
  public static Optional<Certificate> readCertificate(Path file) {
    return read(file, PlanJson::readCertificate);
  }

  private static <T> T read(Path file, Function<String, T> reader) {
    String name = String.valueOf(file.getFileName());
    try {
      return reader.apply(Files.readString(file, StandardCharsets.UTF_8));
    } catch (PlanJsonException e) {
      throw new PlanJsonException(name + ": " + e.getMessage());
    } catch (MalformedInputException e) {
      throw new PlanJsonException(name + ": this is not UTF-8 text");
    } catch (IOException e) {
      throw new PlanJsonException(
          name + ": " + (Files.exists(file) ? "cannot be read" : "there is no such file"));
    }
  }

  /** The published JSON Schema of the plan. */
  public static String schema() {
    try (InputStream in = PlanJson.class.getResourceAsStream("plan-schema.json")) {
      if (in == null) {
        throw new IllegalStateException("plan-schema.json is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
