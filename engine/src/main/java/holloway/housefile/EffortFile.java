package holloway.housefile;

import holloway.house.House.InputFile;
import holloway.request.Effort;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads effort tables: keys written with dots, or as maps within maps, to numbers (minutes). A
 * person's file overrides the defaults key by key.
 */
public final class EffortFile {
  /**
   * A week without a break, and ten times: what is dearer than that would no longer be told from
   * what cannot be had at all.
   */
  private static final double MOST_MINUTES = 10_000;

  private static final double MOST_FACTOR = 10;

  private static final String DEFAULTS = "/holloway/request/effort-default.yaml";

  private EffortFile() {}

  /** The table that is used when nobody overrides it. */
  public static Effort defaults() {
    try (InputStream in = EffortFile.class.getResourceAsStream(DEFAULTS)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + DEFAULTS);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      Problems problems = new Problems();
      Map<String, Double> minutes = new TreeMap<>();
      MarkedTree.of(text, "effort-default.yaml", problems)
          .ifPresent(root -> collect("", root, minutes, problems, null));
      if (!problems.isEmpty()) {
        throw new IllegalStateException(problems.sorted().get(0).toString());
      }
      return new Effort(minutes, false);
    } catch (IOException e) {
      throw new IllegalStateException("the program cannot read " + DEFAULTS, e);
    }
  }

  /** Defaults with the file's numbers over them; problems and the fingerprint are recorded. */
  static Effort over(Effort defaults, Path file, Problems problems, List<InputFile> inputs) {
    Map<String, Double> minutes = new TreeMap<>(defaults.minutes());
    Optional<InputText> text = InputText.read(file, problems);
    if (text.isEmpty()) {
      return defaults;
    }
    inputs.add(text.get().file());
    collect("", text.get().root(), minutes, problems, defaults.minutes());
    return new Effort(minutes, true);
  }

  /**
   * @param known keys that may be overridden, or null when these are the defaults themselves
   */
  private static void collect(
      String path,
      Marked value,
      Map<String, Double> out,
      Problems problems,
      Map<String, Double> known) {
    if (value instanceof Marked.Mapping m) {
      m.values()
          .forEach(
              (k, v) -> {
                String key = path.isEmpty() ? k : path + "." + k;
                if (v instanceof Marked.Mapping) {
                  collect(key, v, out, problems, known);
                } else if (known != null && !known.containsKey(key)) {
                  problems.add(
                      m.keys().get(k),
                      key,
                      "a key of the effort table",
                      Nearest.of(key, known.keySet()),
                      "the effort table has no key '" + key + "'");
                } else {
                  number(key, v, out, problems);
                }
              });
    } else {
      problems.add(value.where(), value.show(), "keys with minutes", "", "an effort file is a map");
    }
  }

  private static void number(String key, Marked value, Map<String, Double> out, Problems problems) {
    boolean ok = value instanceof Marked.Scalar s && s.text().matches("\\d{1,6}(\\.\\d{1,6})?");
    boolean factor = key.endsWith("factor");
    double most = factor ? MOST_FACTOR : MOST_MINUTES;
    double read = ok ? Double.parseDouble(((Marked.Scalar) value).text()) : 0;
    if (ok && read <= most) {
      out.put(key, read);
    } else {
      problems.add(
          value.where(),
          value.show(),
          ok ? "%.0f at most".formatted(most) : "a number, not negative: 12 or 7.5",
          "",
          "'" + key + (factor ? "' is a factor" : "' is a number of minutes"));
    }
  }
}
