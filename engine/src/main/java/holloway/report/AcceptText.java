package holloway.report;

import holloway.house.Chase;
import holloway.units.Length;
import java.util.TreeMap;

/** The entry of a house file that accepts an unaccounted space as an open shaft. */
public final class AcceptText {
  private AcceptText() {}

  /** One item of {@code hollows}; lengths in whole millimetres, as a house file reads them. */
  public static String of(Chase c) {
    String along =
        c.along()
            .map(a -> "along: %s %s, ".formatted(a.from().word(), mm(a.distance().value())))
            .orElse("");
    String floors =
        String.join(
            ", ",
            new TreeMap<>(c.floors())
                .entrySet().stream().map(f -> quoted(f.getKey()) + ": open").toList());
    return "- { chase: %s, beside: %s, %sfrom: %s, to: %s, size: %s x %s,%s known: yes }"
        .formatted(
            quoted(c.name()),
            quoted(c.beside().toString()),
            along,
            quoted(c.from()),
            quoted(c.to()),
            mm(c.alongFace().value()),
            mm(c.awayFromFace().value()),
            floors.isEmpty() ? "" : " floors: { " + floors + " },");
  }

  /** Names are the person's: what is more than words and spaces stands between quotes. */
  private static String quoted(String text) {
    return text.matches("[A-Za-z][A-Za-z0-9 -]*")
        ? text
        : '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private static String mm(Length l) {
    return l.nm() / Length.NM_PER_MM + " mm";
  }
}
