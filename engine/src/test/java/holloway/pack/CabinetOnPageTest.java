package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.pipeline.Answers;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The front of the cabinet shows every port of the panels that are bought. */
class CabinetOnPageTest {
  private static final Pattern BOUGHT = Pattern.compile("patch panel, (\\d+) ports");

  /** A free port too: somebody who looks for where to plug in counts them on the panel in hand. */
  @Test
  void everyPortIsDrawnForThePhoneAndForPaper() {
    Answers.Packed p = PackedHouse.of(PackedHouse.SMALL);
    int bought =
        p.planned().plan().materials().stream()
            .map(m -> BOUGHT.matcher(m.item()))
            .filter(Matcher::matches)
            .mapToInt(m -> Integer.parseInt(m.group(1)))
            .sum();
    var files =
        PackedHouse.files(p, Language.ENGLISH, PaperSize.LETTER, Pictures.none("not asked for"));
    String page = new String(files.get("index.html"), StandardCharsets.UTF_8);
    String front = page.substring(page.indexOf("class=\"front\""));
    Matcher drawn = Pattern.compile("base64,([^\"]+)").matcher(front);
    drawn.find();
    assertEquals(
        bought,
        ports(Base64.getDecoder().decode(drawn.group(1).replace("&#61;", "="))),
        "on the phone");
    assertEquals(bought, ports(files.get("cabinet.svg")), "on paper");
  }

  /** Cables that go to no panel are circles. */
  private static int ports(byte[] svg) {
    String s = new String(svg, StandardCharsets.UTF_8);
    return s.split("<polygon class=\"port", -1).length - 1;
  }
}
