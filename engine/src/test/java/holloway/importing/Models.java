package holloway.importing;

import holloway.housefile.draft.Draft;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The small invented models of the tests, changed here and there. */
public final class Models {
  private Models() {}

  /** The text of {@code bungalow}, {@code two-storeys} or {@code turned}. */
  public static String text(String name) {
    try (InputStream in = Models.class.getResourceAsStream("/ifc/" + name + ".ifc")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** With every {@code from} replaced, which has to be there. */
  static String changed(String text, String from, String to) {
    if (!text.contains(from)) {
      throw new IllegalArgumentException("the model does not hold " + from);
    }
    return text.replace(from, to);
  }

  static Draft draft(String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return IfcImport.read(new ByteArrayInputStream(bytes), "toy.ifc");
  }
}
