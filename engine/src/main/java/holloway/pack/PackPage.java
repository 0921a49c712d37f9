package holloway.pack;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
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
    return fill(facts, true, resource("screen.css"));
  }

  /** For the PDF writer: well-formed, no script, drawings in the text. */
  static String paper(PackFacts facts, PaperSize paper) {
    String size = "@page{size:%smm %smm}\n".formatted(paper.wideMm(), paper.highMm());
    return fill(facts, false, size + resource("paper.css"));
  }

  private static String fill(PackFacts facts, boolean screen, String style) {
    Map<String, Object> scope = new HashMap<>(facts.values());
    scope.put("screen", screen);
    scope.put("paper", !screen);
    scope.put("style", style);
    scope.put("script", screen ? resource("ticks.js") : "");
    StringWriter out = new StringWriter();
    template(screen).execute(out, scope);
    return out.toString();
  }

  /** The PDF writer reads XML, where every element is closed; HTML leaves these open. */
  private static Mustache template(boolean screen) {
    String text = resource("pack.html");
    String said = screen ? text.replace(" />", ">") : text;
    return new DefaultMustacheFactory().compile(new StringReader(said), "pack.html");
  }

  private static String resource(String name) {
    try (InputStream in = PackPage.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
