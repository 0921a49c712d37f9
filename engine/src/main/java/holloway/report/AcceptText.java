package holloway.report;

import holloway.house.Chase;
import holloway.house.House;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.TreeMap;

/** The entry of a house file that accepts an unaccounted space as an open shaft. */
public final class AcceptText {
  private AcceptText() {}

  /**
   * One item of {@code hollows}, as a house file reads it.
   *
   * @param house whose units it is written in: feet and inches to a sixteenth, or whole millimetres
   */
  public static String of(Chase c, House house) {
    UnitSystem units = UnitWords.usual(house);
    String along =
        c.along()
            .map(
                a -> "along: %s %s, ".formatted(a.from().word(), text(a.distance().value(), units)))
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
            text(c.alongFace().value(), units),
            text(c.awayFromFace().value(), units),
            floors.isEmpty() ? "" : " floors: { " + floors + " },");
  }

  /** Names are the person's: what is more than words and spaces stands between quotes. */
  private static String quoted(String text) {
    return text.matches("[A-Za-z][A-Za-z0-9 -]*")
        ? text
        : '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private static String text(Length l, UnitSystem units) {
    return units == UnitSystem.METRIC ? l.nm() / Length.NM_PER_MM + " mm" : units.format(l);
  }
}
