package holloway.drawing;

import java.util.Map;
import java.util.TreeMap;

/**
 * How a leg looks by the kind of space it lies in: strokes and gaps that differ without colour.
 * Broken where nobody sees the cable, heavy and whole where it lies in sight.
 */
final class LegLooks {
  /** Width, then strokes and gaps, millimetres of the house; no strokes is a whole line. */
  private record Look(int width, String strokes) {}

  private static final Map<String, Look> BY_KIND =
      Map.ofEntries(
          Map.entry("stud bay", new Look(24, "60 40")),
          Map.entry("joist bay", new Look(24, "180 60")),
          Map.entry("attic", new Look(24, "200 50 24 50")),
          Map.entry("crawlspace", new Look(24, "200 50 24 50 24 50")),
          Map.entry("chase", new Look(44, "90 50")),
          Map.entry("soffit", new Look(44, "180 60")),
          Map.entry("lowered ceiling", new Look(44, "200 50 44 50")),
          Map.entry("skirting", new Look(44, "24 40")),
          Map.entry("furred bay", new Look(24, "24 40")),
          Map.entry("void behind dabbed board", new Look(24, "24 90")),
          Map.entry("void between battens", new Look(24, "180 40 60 40")),
          Map.entry("void between level battens", new Look(24, "180 40 24 40")),
          Map.entry("void over a porch ceiling", new Look(24, "180 40 24 40 24 40")),
          Map.entry("old cable", new Look(24, "60 30 24 30")),
          Map.entry("open room surface", new Look(44, "")),
          Map.entry("outside face", new Look(60, "")),
          Map.entry("conduit", new Look(24, "")),
          Map.entry("channel", new Look(60, "24 40")),
          Map.entry("overhead span", new Look(60, "200 50 24 50")),
          Map.entry("trench", new Look(60, "180 60")),
          Map.entry("return-air space", new Look(60, "90 50")));

  private static final Look OTHER = new Look(24, "12 24");

  private LegLooks() {}

  /** The class of a leg's line, from the words of its hollow's kind. */
  static String kind(String hollow) {
    return BY_KIND.containsKey(hollow) ? "leg " + hollow.replace(' ', '-') : "leg other-space";
  }

  /** The style of every look, in a fixed order. */
  static String style() {
    StringBuilder out = new StringBuilder();
    new TreeMap<>(BY_KIND).forEach((k, l) -> out.append(rule(k, l)));
    return out.append(rule("other space", OTHER)).toString();
  }

  private static String rule(String kind, Look l) {
    String strokes = l.strokes.isEmpty() ? "none" : l.strokes;
    return "line.%s{stroke-width:%d;stroke-dasharray:%s}%n"
        .formatted(kind.replace(' ', '-'), l.width, strokes)
        .replace(System.lineSeparator(), "\n");
  }
}
