package holloway.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md lists every figure the program decides by, as the code has it. */
class RuleReferenceTest {
  private static final String HEAD =
      "| id | what | value | source | grade |\n|---|---|---|---|---|\n";

  @Test
  void theReferenceIsComplete() throws IOException {
    String text = Files.readString(Path.of("..", "DEVELOPERS.md"));
    int from = text.indexOf(HEAD);
    String printed =
        from < 0
            ? ""
            : text.substring(from + HEAD.length())
                .lines()
                .takeWhile(line -> line.startsWith("| "))
                .collect(Collectors.joining("\n"));
    List<Figure> all = FiguresTest.all();
    assertEquals(
        all.stream().map(RuleReferenceTest::row).collect(Collectors.joining("\n")), printed);
  }

  private static String row(Figure f) {
    return "| %s | %s | %s | %s | %s |"
        .formatted(f.id(), f.what(), value(f), f.source(), f.grade());
  }

  private static String value(Figure f) {
    boolean fraction = f.unit().equals("fraction");
    BigDecimal value =
        BigDecimal.valueOf(fraction ? f.value() * 100 : f.value())
            .setScale(fraction ? 1 : 4, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    String unit = fraction ? "%" : f.unit().equals("count") ? "" : f.unit();
    return (value.toPlainString() + " " + unit).strip();
  }
}
