package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The catalogue knows each of its features by a test, and DEVELOPERS.md lists them. Whoever adds a
 * test names its feature there: the line that is missing is in the message.
 */
class CatalogueTest {
  private static final int LEAST = 60;

  private static final String HEAD = "| feature | tests |\n|---|---|\n";

  /** Tests by feature; a test that names none stands under the empty name. */
  private static Map<String, TreeSet<String>> features() throws IOException {
    Map<String, TreeSet<String>> out = new TreeMap<>();
    for (Class<?> type : classes()) {
      for (Method m : type.getDeclaredMethods()) {
        if (type != CatalogueTest.class && m.isAnnotationPresent(Test.class)) {
          out.computeIfAbsent(feature(m), k -> new TreeSet<>())
              .add(type.getSimpleName() + "." + m.getName());
        }
      }
    }
    return out;
  }

  private static String feature(Method m) {
    return Optional.ofNullable(m.getAnnotation(Feature.class))
        .or(() -> Optional.ofNullable(m.getDeclaringClass().getAnnotation(Feature.class)))
        .map(Feature::value)
        .orElse("");
  }

  private static List<Class<?>> classes() throws IOException {
    Path folder = Path.of("src/test/java/holloway/catalogue");
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(f -> f.endsWith("Test.java"))
          .sorted()
          .<Class<?>>map(f -> named("holloway.catalogue." + f.substring(0, f.length() - 5)))
          .toList();
    }
  }

  private static Class<?> named(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(name, e);
    }
  }

  @Test
  void everyTestNamesItsFeature() throws IOException {
    assertEquals(null, features().get(""), "tests of the catalogue without a feature");
  }

  @Test
  void thereAreSixtyFeatures() throws IOException {
    int count = features().size();
    assertTrue(count >= LEAST, count + " features");
  }

  @Test
  void theDevelopersPageListsThem() throws IOException {
    String table =
        features().entrySet().stream()
            .map(e -> "| " + e.getKey() + " | `" + String.join("`, `", e.getValue()) + "` |\n")
            .collect(Collectors.joining());
    String page = Files.readString(Path.of("../DEVELOPERS.md"));
    int from = page.indexOf(HEAD);
    assertTrue(from >= 0, "no table of features");
    int to = page.indexOf("\n\n", from);
    assertEquals(HEAD + table, page.substring(from, to + 1), "write this into DEVELOPERS.md");
  }
}
