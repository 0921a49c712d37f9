package holloway.session;

import holloway.house.WallSpot;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes what a session changed into NAME.wishes.yaml beside the house file. Keys of that file that
 * a session does not change stay as they are, line by line; the house file is never touched.
 */
public final class WishesFile {
  private static final String HEAD =
      "# Wishes changed in the viewer; they go before those of the house file. Delete a key to go\n"
          + "# back to the house file's own.\n";

  private WishesFile() {}

  /** Where the wishes of a house file are kept. */
  public static Path beside(Path house) {
    String name = house.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return house.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".wishes.yaml");
  }

  /**
   * The text of the file.
   *
   * @param existing its text so far, empty when there is none
   * @param before what the files want, {@code now} what is wanted after the changes
   * @throws IllegalArgumentException when the existing text is not keys below each other
   */
  public static String text(String existing, Request before, Request now) {
    Map<String, List<String>> blocks = blocks(existing);
    put(blocks, "bans", before.wishes().bans().equals(now.wishes().bans()), bans(now));
    put(blocks, "through", through(before).equals(through(now)), through(now));
    put(blocks, "spots", spots(before, now).isEmpty(), spots(before, now));
    StringBuilder out = new StringBuilder();
    blocks.values().forEach(lines -> lines.forEach(l -> out.append(l).append('\n')));
    String text = out.toString();
    return existing.isBlank() && !text.isBlank() ? HEAD + text : text;
  }

  private static void put(
      Map<String, List<String>> blocks, String key, boolean same, List<String> lines) {
    if (same) {
      return;
    }
    List<String> block = new ArrayList<>();
    block.add(key + ":" + (lines.isEmpty() ? (key.equals("bans") ? " []" : " {}") : ""));
    block.addAll(lines);
    blocks.put(key, block);
  }

  /** Lines by the key they belong to; those before the first key under the empty key. */
  private static Map<String, List<String>> blocks(String text) {
    Map<String, List<String>> out = new LinkedHashMap<>();
    String key = "";
    for (String line : text.lines().toList()) {
      boolean begins =
          !line.isBlank() && !Character.isWhitespace(line.charAt(0)) && line.charAt(0) != '#';
      if (begins && line.startsWith("- ")) {
        begins = false;
      } else if (begins && !line.matches("\"?[A-Za-z-]+\"?\\s*:.*")) {
        throw new IllegalArgumentException(
            "the wishes file is not written as keys below each other: '" + line.strip() + "'");
      }
      if (begins) {
        key = line.substring(0, line.indexOf(':')).replace("\"", "").strip();
      }
      out.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
    }
    return out;
  }

  private static List<String> bans(Request r) {
    return r.wishes().bans().stream().map(b -> "  - " + quoted(b)).toList();
  }

  private static List<String> through(Request r) {
    return r.runs().stream()
        .filter(x -> x.through().isPresent())
        .map((Run x) -> "  " + quoted(x.id()) + ": " + quoted(x.through().get()))
        .toList();
  }

  private static List<String> spots(Request before, Request now) {
    List<String> out = new ArrayList<>();
    for (Outlet o : now.outlets()) {
      Spot spot = o.spots().get(0);
      if (spot.equals(before.getOutlet(o.name()).spots().get(0))) {
        continue;
      }
      WallSpot at = spot instanceof Spot.OnWall w ? w.at() : ((Spot.Outside) spot).at();
      out.add(
          "  %s: %s %s"
              .formatted(
                  quoted(o.name()),
                  at.along().from().word(),
                  millimetres(at.along().distance().value().nm())));
    }
    return out;
  }

  private static String millimetres(long nm) {
    return java.math.BigDecimal.valueOf(nm, 6).stripTrailingZeros().toPlainString() + " mm";
  }

  private static String quoted(String s) {
    return "\"" + s.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  /**
   * Writes a text in one step: a reader sees the old file or the new one.
   *
   * @throws IOException when the disk refuses; then the old file is still there
   */
  public static void write(Path to, String text) throws IOException {
    Path folder = to.toAbsolutePath().getParent();
    Path fresh = Files.createTempFile(folder, ".holloway-", ".yaml");
    try {
      Files.write(fresh, text.getBytes(StandardCharsets.UTF_8));
      Files.move(fresh, to, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }
}
