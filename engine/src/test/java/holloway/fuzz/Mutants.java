package holloway.fuzz;

import holloway.support.AwkwardHouseText;
import holloway.support.RandomHouseText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/** House files changed by chance; the same one for the same seed and number. */
public final class Mutants {
  private static final int RANDOM_HOUSES = 24;

  private final long seed;
  private final List<Source> sources = new ArrayList<>();

  /** A sound house file as text and as tree, and what was found in that house. */
  private record Source(
      String name, String text, Map<String, Object> tree, Optional<String> found) {}

  /**
   * One changed house file.
   *
   * @param found the file of what was found that lies beside it, if any
   */
  public record Mutant(String from, String how, byte[] house, Optional<byte[]> found) {}

  public Mutants(long seed) throws IOException {
    this.seed = seed;
    String everything = resource("/holloway/everything.yaml");
    Optional<String> found = Optional.of(resource("/holloway/everything.found.yaml"));
    String split = resource("/holloway/split-level.yaml");
    for (Path sample : samples()) {
      String name = sample.getFileName().toString();
      Path beside = sample.resolveSibling(name.replace(".yaml", ".found.yaml"));
      boolean was = Files.exists(beside);
      add(
          name,
          Files.readString(sample),
          was ? Optional.of(Files.readString(beside)) : Optional.empty());
    }
    // Small houses are most of the sources: they are quick, so that many can be looked at.
    for (int i = 0; i < RANDOM_HOUSES; i++) {
      add("everything.yaml", everything, found);
      RandomHouseText.Shape shape =
          new RandomHouseText.Shape(1 + i % 3, 3 + i % 4, 1 + i % 3, i % 5 == 1, 700 + i);
      add("random house " + shape.seed(), RandomHouseText.of(shape), Optional.empty());
      AwkwardHouseText.Drawn drawn = AwkwardHouseText.of(1 + i);
      add("awkward house " + (1 + i), drawn.house(), drawn.found());
      if (i % 3 == 0) {
        add("split-level.yaml", split, Optional.empty());
      }
    }
  }

  private void add(String name, String text, Optional<String> found) {
    sources.add(new Source(name, text, TreeText.read(text), found));
  }

  private static String resource(String name) throws IOException {
    try (InputStream in = Mutants.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  static List<Path> samples() throws IOException {
    Path here = Path.of("samples").toAbsolutePath();
    Path there = Files.isDirectory(here) ? here : Path.of("../samples");
    try (Stream<Path> files = Files.list(there)) {
      // The large house alone plans for a minute and a half: a mutant of it would hang, not break.
      return files
          .filter(f -> f.toString().endsWith(".yaml") && !f.toString().endsWith(".found.yaml"))
          .filter(f -> !f.endsWith("wren-hollow.yaml"))
          .sorted()
          .toList();
    }
  }

  public Mutant get(int number) {
    Random r = new Random((seed * 1_000_003 + number) * 6_364_136_223_846_793_005L + 1);
    Source s = sources.get(r.nextInt(sources.size()));
    int kind = r.nextInt(10);
    String how = kind < 2 ? "byte" : kind < 5 ? "token" : "structure";
    if (s.found.isPresent() && r.nextInt(4) == 0) {
      return new Mutant(s.name, how, bytes(s.text), Optional.of(changed(s.found.get(), how, r)));
    }
    return new Mutant(s.name, how, changed(s, how, r), Optional.empty());
  }

  private static byte[] changed(String text, String how, Random r) {
    return changed(new Source("found", text, TreeText.read(text), Optional.empty()), how, r);
  }

  private static byte[] changed(Source s, String how, Random r) {
    return switch (how) {
      case "byte" -> ByteMutator.mutate(bytes(s.text), r);
      case "token" -> bytes(TokenMutator.mutate(s.text, r));
      default -> bytes(TreeMutator.mutate(s.tree, r));
    };
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
