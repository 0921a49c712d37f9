package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.importing.Models;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever is done to a model, there is a house file or a clear problem, and soon. */
class ImportMutationTest {
  private static final String[] MODELS = {"bungalow", "two-storeys", "turned"};
  private static final StartWishes WISHES = new StartWishes("s.json", "x", "none", 0, 1, false);

  @Property(seed = "21", tries = 240)
  void aHouseFileOrAClearProblem(
      @ForAll @IntRange(min = 0, max = 2) int model,
      @ForAll @IntRange(min = 0, max = 3) int kind,
      @ForAll int seed) {
    byte[] bytes =
        mutated(
            Models.text(MODELS[model]).getBytes(StandardCharsets.UTF_8), kind, new Random(seed));
    assertTimeoutPreemptively(Duration.ofSeconds(60), () -> look(bytes));
  }

  private static void look(byte[] bytes) {
    try {
      Path file = Files.createTempFile("mutated", ".ifc");
      try {
        Files.write(file, bytes);
        String text = Imports.text(file, WISHES, Optional.empty());
        assertTrue(text.startsWith("# yaml-language-server"), text);
      } catch (InputTrouble e) {
        assertFalse(e.getMessage().isBlank());
        assertTrue(e.getMessage().startsWith("mutated"), e.getMessage());
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] mutated(byte[] bytes, int kind, Random random) {
    byte[] out = bytes.clone();
    switch (kind) {
      case 0 -> out = Arrays.copyOf(out, random.nextInt(out.length));
      case 1 -> out[random.nextInt(out.length)] = (byte) random.nextInt(256);
      case 2 -> {
        for (int i = 0; i < 3; i++) {
          changeDigit(out, random);
        }
      }
      default -> {
        int from = random.nextInt(out.length);
        int to = Math.min(out.length, from + random.nextInt(80));
        Arrays.fill(out, from, to, (byte) ' ');
      }
    }
    return out;
  }

  private static void changeDigit(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    while (bytes[at] < '0' || bytes[at] > '9') {
      at = (at + 1) % bytes.length;
    }
    bytes[at] = (byte) ('0' + random.nextInt(10));
  }
}
