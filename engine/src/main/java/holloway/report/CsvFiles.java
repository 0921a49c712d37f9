package holloway.report;

import holloway.plan.Plan;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import holloway.survey.Placed;
import holloway.takeoff.CutLength;
import holloway.takeoff.HoleParts;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * The lists for a spreadsheet: comma separated, quoted and ended as RFC 4180 says, with a line of
 * headings. Lengths in metres or millimetres, whatever the units of the text.
 */
public final class CsvFiles {
  private final StringBuilder out = new StringBuilder();
  private final UnaryOperator<String> words;

  private CsvFiles(UnaryOperator<String> words, Object... headings) {
    this.words = words;
    row(headings);
  }

  /** By file name, in English. */
  public static SortedMap<String, String> of(
      Plan plan, Placed placed, Request request, Map<String, HoleCard> cards) {
    return of(plan, placed, request, cards, UnaryOperator.identity());
  }

  /**
   * By file name.
   *
   * @param words puts what people read into their language; headings, names of the house file, ids
   *     and {@code yes} and {@code no} stay as they are
   */
  public static SortedMap<String, String> of(
      Plan plan,
      Placed placed,
      Request request,
      Map<String, HoleCard> cards,
      UnaryOperator<String> words) {
    SortedMap<String, String> files = new TreeMap<>();
    files.put("materials.csv", materials(plan, words));
    files.put("runs.csv", runs(plan, request, words));
    files.put("holes.csv", holes(plan, placed, cards, words));
    files.put("labels.csv", labels(Labels.of(plan, request, placed), words));
    return files;
  }

  private String said(String text) {
    return text.isEmpty() ? text : words.apply(text);
  }

  private String said(List<String> texts) {
    return texts.stream().map(this::said).collect(Collectors.joining("; "));
  }

  private static String materials(Plan plan, UnaryOperator<String> words) {
    CsvFiles csv = new CsvFiles(words, "group", "item", "quantity", "unit", "price", "currency");
    for (Plan.Material m : plan.materials()) {
      String price = m.price().map(p -> String.format(Locale.ROOT, "%.2f", p)).orElse("");
      String currency = m.price().isPresent() ? plan.totals().currency() : "";
      csv.row(
          csv.said(m.group()),
          csv.said(m.item()),
          number(m.quantity()),
          csv.said(m.unit()),
          price,
          currency);
    }
    return csv.out.toString();
  }

  private static String runs(Plan plan, Request request, UnaryOperator<String> words) {
    CsvFiles csv =
        new CsvFiles(
            words,
            "run",
            "cable",
            "from",
            "to",
            "route-m",
            "slack-from-m",
            "slack-to-m",
            "cut-m",
            "lead-m");
    for (Plan.PlannedRun r : plan.runs()) {
      CutLength cut = CutLength.of(r, request.prices());
      csv.row(
          r.id(),
          r.cable(),
          csv.said(r.from()),
          csv.said(r.to()),
          number(r.routeM()),
          number(cut.slackFromM()),
          number(cut.slackToM()),
          number(r.cableM()),
          cut.lead().isPresent() ? cut.lead().getAsInt() : "");
    }
    return csv.out.toString();
  }

  private static String holes(
      Plan plan, Placed placed, Map<String, HoleCard> cards, UnaryOperator<String> words) {
    CsvFiles csv =
        new CsvFiles(
            words,
            "label",
            "kind",
            "diameter-mm",
            "depth-mm",
            "bores",
            "method",
            "bit",
            "extension",
            "tape-here",
            "tape-far-side",
            "minutes",
            "sealant-ml",
            "runs",
            "id");
    Map<String, Double> sealed = HoleParts.sealed(plan, placed);
    for (Plan.PlannedHole h : plan.holes()) {
      HoleCard card = cards.get(h.id());
      csv.row(
          h.label(),
          csv.said(h.kind()),
          h.diameterMm(),
          number(h.depthMm()),
          h.bores(),
          csv.said(h.method()),
          card == null ? "" : csv.said(card.bit()),
          card == null ? "" : csv.said(card.extension()),
          card == null ? "" : csv.said(card.sideA()),
          card == null ? "" : csv.said(card.sideB()),
          number(h.minutes()),
          sealed.containsKey(h.id()) ? number(Math.ceil(sealed.get(h.id()) * 10) / 10) : "",
          String.join("; ", h.runs()),
          h.id());
    }
    return csv.out.toString();
  }

  private static String labels(List<Label> labels, UnaryOperator<String> words) {
    CsvFiles csv =
        new CsvFiles(words, "label", "run", "cable", "from", "to", "room", "spare", "cut-m");
    for (Label l : labels) {
      csv.row(
          l.id(),
          l.run(),
          l.cable(),
          csv.said(l.from()),
          csv.said(l.to()),
          csv.said(l.room()),
          l.spare() ? "yes" : "no",
          number(l.cutM()));
    }
    return csv.out.toString();
  }

  private void row(Object... cells) {
    out.append(Arrays.stream(cells).map(c -> quoted(c.toString())).collect(Collectors.joining(",")))
        .append("\r\n");
  }

  private static String number(double v) {
    String text = String.format(Locale.ROOT, "%.3f", v);
    return text.replaceFirst("\\.?0+$", "");
  }

  static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
