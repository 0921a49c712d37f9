package holloway.housefile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A small commented house file to begin from; it reads as it stands. */
public final class Starter {
  private static final String RESOURCE = "/holloway/housefile/starter.yaml";
  private static final Pattern EITHER = Pattern.compile("\\{\\{([^{}|]*)\\|([^{}|]*)}}");

  private static final String LEVEL =
      """
        %s:
          above: %s
          ceiling-height: {{8 ft|2.4 m}}
          floor: { joists: {{2x10|47x195}}, every: {{16 in|400 mm}}, run: north-south }
      """;

  private static final String ROOMS =
      """

        # '%s' stands over '%s'; say 'tied: measured' once you have taped how, say in the stair well
        %1$s: { level: %s, size: {{16 ft x 12 ft|4.9 m x 3.6 m}}, above: %2$s, align: south-west, tied: assumed }
        %4$s: { level: %3$s, size: {{4 ft x 12 ft|1.2 m x 3.6 m}}, east-of: %1$s, align: south }
        %5$s: { level: %3$s, size: {{10 ft x 12 ft|3 m x 3.6 m}}, east-of: %4$s, align: south }
      """;

  private static final String DOORS =
      """
        - { door, between: [%1$s room, %1$s hall], from: south {{4 ft|1.2 m}}, width: {{30 in|760 mm}} }
        - { door, between: [%1$s bedroom, %1$s hall], from: south {{4 ft|1.2 m}}, width: {{30 in|760 mm}} }
      """;

  private Starter() {}

  /**
   * @param schema what the editor line names as the schema, for example {@code house.schema.json}
   * @param name of the house
   * @param place us, uk, eu or none
   * @param built the year, 0 if it is not known
   * @param levels storeys, at least 1
   * @param metric lengths in metres, else in feet and inches
   * @throws IllegalArgumentException when the name cannot be a name
   */
  public static String text(
      String schema, String name, String place, int built, int levels, boolean metric) {
    Quoted.check(name);
    String year = built > 0 ? "built: " + built : "# built: 1985";
    String filled =
        template()
            .replace("{{place}}", place)
            .replace("{{built}}", year + "  # decides what is likely behind the board")
            .replace("{{frame}}", frame(place, built))
            .replace("{{levels}}", upperLevels(levels))
            .replace("{{rooms}}", upperRooms(levels))
            .replace("{{openings}}", upperDoors(levels))
            .replace("{{top-hall}}", levels > 1 ? level(levels) + " hall" : "hall")
            .replace("{{top}}", level(levels));
    Matcher m = EITHER.matcher(filled);
    String text = m.replaceAll(r -> Matcher.quoteReplacement(r.group(metric ? 2 : 1)));
    return "# yaml-language-server: $schema="
        + schema
        + "\n"
        + text.replace("{{name}}", Quoted.name(name));
  }

  /** The usual one: a single US storey in feet and inches. */
  public static String text(String schema) {
    return text(schema, "My House", "us", 1985, 1, false);
  }

  /**
   * What most likely carries the roof: plated trusses were the norm in the US by the 1970s and in
   * the UK by the mid-1970s (behind the board J17, J25), elsewhere in Europe a roof has rafters
   * (from memory). A year that is not known is taken as a newer one, as the year in the comment.
   */
  private static String frame(String place, int built) {
    int norm = place.equals("uk") ? 1975 : 1970;
    boolean rafters = place.equals("eu") || built > 0 && built < norm;
    return (rafters ? "rafters" : "trusses")
        + "             # or "
        + (rafters ? "trusses" : "rafters");
  }

  private static String level(int number) {
    return number == 1 ? "ground" : number == 2 ? "upper" : "upper " + (number - 1);
  }

  private static String upperLevels(int levels) {
    StringBuilder s = new StringBuilder();
    for (int i = 2; i <= levels; i++) {
      s.append(LEVEL.formatted(level(i), level(i - 1)));
    }
    return s.toString();
  }

  private static String upperRooms(int levels) {
    StringBuilder s = new StringBuilder();
    for (int i = 2; i <= levels; i++) {
      String below = i == 2 ? "living room" : level(i - 1) + " room";
      String l = level(i);
      s.append(ROOMS.formatted(l + " room", below, l, l + " hall", l + " bedroom"));
    }
    return s.toString();
  }

  private static String upperDoors(int levels) {
    StringBuilder s = new StringBuilder();
    for (int i = 2; i <= levels; i++) {
      s.append(DOORS.formatted(level(i)));
    }
    return s.toString();
  }

  private static String template() {
    try (InputStream in = Starter.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + RESOURCE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("the program cannot read " + RESOURCE, e);
    }
  }
}
