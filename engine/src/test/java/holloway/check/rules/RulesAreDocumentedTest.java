package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md holds the rules over a finished plan as their classes describe themselves. */
class RulesAreDocumentedTest {
  private static final String HEAD =
      "| rule | severity | source | what it looks at | limit |\n|---|---|---|---|---|\n";

  @Test
  void theRuleReferenceIsWhatTheClassesSay() throws IOException {
    String page = Files.readString(Path.of("../DEVELOPERS.md"));
    int from = page.indexOf(HEAD);
    List<String> printed =
        from < 0
            ? List.of()
            : page.substring(from + HEAD.length())
                .lines()
                .takeWhile(l -> l.startsWith("|"))
                .toList();
    assertEquals(String.join("\n", PlanRules.reference()), String.join("\n", printed));
  }
}
