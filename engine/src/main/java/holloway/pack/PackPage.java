package holloway.pack;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** One template for both: the page with ticks and the sheets of paper. */
final class PackPage {
  private PackPage() {}

  /** For a browser: one file that fetches nothing. */
  static String screen(PackFacts facts) {
    return fill(facts, true);
  }

  /** For the PDF writer: well-formed, no script, drawings in the text. */
  static String paper(PackFacts facts) {
    return fill(facts, false);
  }

  private static String fill(PackFacts facts, boolean screen) {
    Map<String, Object> scope = new HashMap<>(facts.values());
    scope.put("screen", screen);
    scope.put("paper", !screen);
    scope.put("style", resource(screen ? "screen.css" : "paper.css"));
    scope.put("script", screen ? resource("ticks.js") : "");
    StringWriter out = new StringWriter();
    template().execute(out, scope);
    return out.toString();
  }

  private static Mustache template() {
    InputStream in = PackPage.class.getResourceAsStream("pack.html");
    return new DefaultMustacheFactory()
        .compile(new InputStreamReader(in, StandardCharsets.UTF_8), "pack.html");
  }

  private static String resource(String name) {
    try (InputStream in = PackPage.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
