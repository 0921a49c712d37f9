package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Every rule over a finished plan stands, with what it is about, in DEVELOPERS.md. */
class RulesAreDocumentedTest {
  @Test
  void everyRuleStandsInTheDevelopersPage() throws IOException {
    String page = Files.readString(Path.of("../DEVELOPERS.md"));
    PlanRules.about()
        .forEach(
            (id, about) ->
                assertTrue(page.contains("| `" + id + "` | " + about + " |"), id + " | " + about));
  }
}
