package holloway.housefile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** A small commented house file to begin from; it reads as it stands. */
public final class Starter {
  private static final String RESOURCE = "/holloway/housefile/starter.yaml";

  private Starter() {}

  /**
   * @param schema what the editor line names as the schema, for example {@code house.schema.json}
   */
  public static String text(String schema) {
    try (InputStream in = Starter.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + RESOURCE);
      }
      String body = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return "# yaml-language-server: $schema=" + schema + "\n" + body;
    } catch (IOException e) {
      throw new IllegalStateException("the program cannot read " + RESOURCE, e);
    }
  }
}
