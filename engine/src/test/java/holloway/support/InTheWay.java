package holloway.support;

import holloway.units.LengthParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in the way of cables: obstacles that a house file states, and blocks found in walls.
 */
public final class InTheWay {
  private static final Pattern SPOT =
      Pattern.compile(
          "name: [^,\\n]+, in: ([^,\\n]+),?\\s+wall: (\\w+),?\\s+from: (\\w+) ([^,\\n]+),?"
              + "(?:\\s+to: [^,\\n]+,?)?\\s+height: ([^,}\\n]+)");

  private InTheWay() {}

  /** The obstacles of the house that the text states, by their lines. */
  public static List<String> stated(String text) {
    List<String> out = new ArrayList<>();
    boolean inside = false;
    for (String line : text.split("\n")) {
      if (line.matches("\\S.*")) {
        inside = line.startsWith("obstacles:");
      } else if (inside && line.startsWith("  - ")) {
        out.add(line + "\n");
      }
    }
    return out;
  }

  /** The text without one of its stated obstacles. */
  public static String without(String text, String obstacle) {
    String rest = text.replace(obstacle, "");
    return stated(rest).isEmpty() ? rest.replace("obstacles:\n", "") : rest;
  }

  /** Files of two found blocks each: in the bay of an outlet on a wall, under it and over it. */
  public static List<String> blocks(String text, long seed) {
    Random random = new Random(seed);
    List<String> out = new ArrayList<>();
    Matcher m = SPOT.matcher(text);
    while (m.find()) {
      long height = nm(m.group(5));
      String over = block(m, height + 150_000_000 + random.nextInt(8) * 100_000_000L);
      out.add("blocks:\n" + (height > 300_000_000 ? block(m, height / 2) : "") + over);
    }
    return out;
  }

  private static String block(Matcher spot, long height) {
    return "  - { side: %s %s, from: %s %s, height: %d.%06d mm }\n"
        .formatted(
            spot.group(1),
            spot.group(2),
            spot.group(3),
            spot.group(4),
            height / 1_000_000,
            height % 1_000_000);
  }

  private static long nm(String length) {
    return LengthParser.parse(length.strip()).value().nm();
  }
}
