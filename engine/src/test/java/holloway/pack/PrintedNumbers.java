package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers of the English pack, read from its text and held against the plan's JSON. Sums are done
 * here again: nothing of the program's own formatting is used.
 */
final class PrintedNumbers {
  private static final String LENGTH =
      "([\\d.]+m|(?:\\d+ft)?(?:\\d+(?:-\\d+/\\d+)?in|\\d+/\\d+in)|\\d+ft)";
  private static final Pattern IMPERIAL =
      Pattern.compile("(?:(\\d+)ft)?(?:(?:(\\d+)(?:-|in))?(?:(\\d+)/(\\d+)in)?)?");

  /** The most that a length of cable is rounded up by, metres. */
  private static final double CUT = 0.1;

  private final String text;
  private final String blanks;
  private final JsonNode plan;

  PrintedNumbers(PdfText pdf, String json) throws IOException {
    this.text = pdf.all();
    this.blanks = pdf.blanks();
    this.plan = new ObjectMapper().readTree(json);
  }

  void check() {
    totals();
    assertTrue(plan.get("holes").size() > 0 && plan.get("runs").size() > 0);
    plan.get("holes").forEach(this::hole);
    plan.get("runs").forEach(this::run);
    plan.get("materials").forEach(this::material);
    plan.get("labels").forEach(l -> said(l.get("label").asText()));
  }

  private void totals() {
    JsonNode t = plan.get("totals");
    assertEquals(Math.round(t.get("minutes").asDouble()), minutes(after("Hands-onwork", TIME)));
    assertEquals(
        t.get("holes").asInt() + ";patchestomakegood:" + t.get("patches").asInt(),
        after("Holestomake", "(\\d+;patchestomakegood:\\d+)"));
    assertEquals(
        plan.get("runs").size(),
        Integer.parseInt(after("patches?tomakegood:\\d+Runs", "(\\d+?)(?=Route)")));
    near(t.get("route-m").asDouble(), after("\\dRoute", LENGTH), 0.05, 0.05);
    near(t.get("cable-m").asDouble(), after("Cabletocutorbuy", LENGTH), 0, CUT);
  }

  private static final String TIME = "((?:\\d+h)?(?:\\d+min)?)";

  /** From its heading to the next one's, so that a number of another hole does not count. */
  private void hole(JsonNode h) {
    String label = h.get("label").asText();
    String head = label + ":" + bare(h.get("kind")) + ",";
    int from = text.indexOf(head);
    assertTrue(from > 0, head);
    int next = text.indexOf("Notasexpectedbehindtheboard", from);
    String card = text.substring(from, next);
    int mm = h.get("diameter-mm").asInt();
    String bit = card.substring(head.length(), card.indexOf("bit"));
    assertTrue(bit.matches(mm + "mm(\\(.*)?") || bit.contains("(" + mm + "mm)"), card);
    JsonNode tape = h.get("tape");
    for (String side : new String[] {"side-a", "side-b"}) {
      tape.get(side).forEach(l -> assertTrue(card.contains(bare(l)), l + " in " + card));
    }
    assertTrue(card.contains(bare(tape.get("breakthrough"))), card);
    Matcher m = Pattern.compile(Pattern.quote(bare(h.get("method"))) + "," + TIME).matcher(card);
    assertTrue(m.find(), card);
    assertEquals(Math.round(h.get("minutes").asDouble()), minutes(m.group(1)), label);
    h.get("runs").forEach(r -> carries(card, r, h.get("runs").size()));
    if (tape.get("tolerance-mm").asDouble() > 0) {
      near(
          tape.get("tolerance-mm").asDouble() / 1000,
          within(card, "Maybeoffby", "(\\d+mm)"),
          0.001,
          0.001);
    }
  }

  /** By its name and, of many, by what is printed on it alone. */
  private void carries(String card, JsonNode run, int all) {
    String label = "";
    for (JsonNode l : plan.get("labels")) {
      label = l.get("run").equals(run) ? bare(l.get("label")) : label;
    }
    assertTrue(!label.isEmpty() && card.contains(label), label + " in " + card);
    assertTrue(card.contains(bare(run)) || card.contains(all + "cables:"), run + " in " + card);
  }

  private void run(JsonNode r) {
    String id = bare(r.get("id"));
    String cable = bare(r.get("cable"));
    String what = "[^,]*of" + cable + "(?:,boughtas[^,]*)?";
    String line =
        ofRun(id, "Cut(" + what + ",cut" + LENGTH + "|" + what + ",aready-madelead)").group(1);
    near(r.get("route-m").asDouble(), line.substring(0, line.indexOf("of")), 0.05, 0.05);
    if (line.contains(",cut")) {
      near(r.get("cable-m").asDouble(), line.substring(line.indexOf(",cut") + 4), 0, CUT);
    }
    // Behind the words nothing else can stand, so no longer name ends like this one.
    Matcher m = Pattern.compile("Markandcut" + Pattern.quote(id) + ":" + LENGTH).matcher(text);
    if (m.find()) {
      near(r.get("cable-m").asDouble(), m.group(1), 0, CUT);
    } else {
      assertTrue(line.contains("ready-made"), id + " is cut nowhere");
    }
  }

  /** Without blanks the name of one run may end like another's: 'desk' and 'east desk'. */
  private Matcher ofRun(String id, String what) {
    Matcher m = Pattern.compile(Pattern.quote(id) + what).matcher(text);
    while (m.find()) {
      int end = m.start() + id.length();
      boolean other = false;
      for (JsonNode r : plan.get("runs")) {
        String longer = bare(r.get("id"));
        other |= longer.length() > id.length() && text.startsWith(longer, end - longer.length());
      }
      if (!other) {
        return m;
      }
    }
    throw new AssertionError("nothing is said of " + id);
  }

  private void material(JsonNode m) {
    String item = bare(m.get("item"));
    double quantity = m.get("quantity").asDouble();
    int at = text.indexOf(item);
    assertTrue(at > 0, item);
    String before = text.substring(Math.max(0, at - 12), at);
    if (m.get("unit").asText().equals("m")) {
      Matcher length = Pattern.compile("(\\d+ft|[\\d.]+m)$").matcher(before);
      assertTrue(length.find(), before + item);
      near(quantity, length.group(1), 0.05, 0.31);
    } else {
      String unit = m.get("unit").asText();
      String words = unit.equals("piece") ? "" : "[a-z]+";
      // Here blanks count: 'cat6' on the line before and '1' of this one are not 61.
      String spaced = m.get("item").asText().replaceAll("\\s+", " ");
      Matcher count =
          Pattern.compile("(?<= )(\\d+)" + words.replace("[", " [") + " " + Pattern.quote(spaced))
              .matcher(blanks);
      assertTrue(count.find(), before + item);
      assertEquals(quantity, Double.parseDouble(count.group(1)), 1e-9, item);
    }
  }

  private void said(String words) {
    assertTrue(text.contains(PdfText.bare(words)), words);
  }

  private String after(String mark, String what) {
    return within(text, mark, what);
  }

  private static String within(String where, String mark, String what) {
    Matcher m = Pattern.compile(mark + what).matcher(where);
    assertTrue(m.find(), mark + what);
    return m.group(1);
  }

  /** Printed no more than so much below and above the plan's. */
  private static void near(double metres, String printed, double below, double above) {
    double read = metres(printed);
    assertTrue(
        read >= metres - below - 1e-9 && read <= metres + above + 1e-9,
        printed + " is " + read + " m, the plan says " + metres);
  }

  private static long minutes(String printed) {
    Matcher m = Pattern.compile("(?:(\\d+)h)?(?:(\\d+)min)?").matcher(printed);
    assertTrue(m.matches() && !printed.isEmpty(), printed);
    return 60 * whole(m.group(1)) + whole(m.group(2));
  }

  static double metres(String printed) {
    if (printed.endsWith("mm")) {
      return Double.parseDouble(printed.substring(0, printed.length() - 2)) / 1000;
    }
    if (printed.endsWith("m")) {
      return Double.parseDouble(printed.substring(0, printed.length() - 1));
    }
    Matcher m = IMPERIAL.matcher(printed);
    assertTrue(m.matches() && !printed.isEmpty(), printed);
    double part = m.group(3) == null ? 0 : (double) whole(m.group(3)) / whole(m.group(4));
    return 0.3048 * whole(m.group(1)) + 0.0254 * (whole(m.group(2)) + part);
  }

  private static long whole(String digits) {
    return digits == null ? 0 : Long.parseLong(digits);
  }

  private static String bare(JsonNode words) {
    return PdfText.bare(words.asText());
  }
}
