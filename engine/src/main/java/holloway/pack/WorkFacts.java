package holloway.pack;

import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.Bring;
import holloway.schedule.Pull;
import holloway.schedule.Step;
import holloway.schedule.StepMinutes;
import holloway.schedule.Visit;
import holloway.schedule.WorkSchedule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The work in its order: turns of one person at one place, and what each visit takes along. */
final class WorkFacts {
  private final WorkSchedule work;
  private final SheetWords words;
  private final Map<String, String> texts;
  private final Map<String, String> shown;
  private final Map<String, Plan.PlannedHole> holes;
  private final Map<String, Pull> pulls;
  private final Map<String, Double> minutes;
  private final Map<String, String> outlets;
  private final CableNames cables;
  private final Map<String, Plan.PlannedRun> runs;

  /**
   * @param texts in the language that sentences are made in, {@code shown} in the page's
   */
  WorkFacts(
      Sheet sheet,
      WorkSchedule work,
      SheetWords words,
      Map<String, String> texts,
      Map<String, String> shown) {
    this.work = work;
    this.words = words;
    this.texts = texts;
    this.shown = shown;
    this.holes =
        sheet.plan().holes().stream().collect(Collectors.toMap(Plan.PlannedHole::id, h -> h));
    this.outlets = words.outlets();
    this.cables = new CableNames(sheet);
    this.runs = sheet.plan().runs().stream().collect(Collectors.toMap(Plan.PlannedRun::id, r -> r));
    this.minutes = StepMinutes.of(sheet.plan(), work);
    this.pulls = work.pulls().stream().collect(Collectors.toMap(Pull::id, p -> p, (a, b) -> a));
  }

  /** Steps that follow one another at one place, by one person. */
  List<Map<String, Object>> turns() {
    List<Map<String, Object>> out = new ArrayList<>();
    List<Map<String, Object>> steps = List.of();
    String last = "";
    for (Step s : work.steps()) {
      String turn = s.at().id() + "/" + s.person() + "/" + s.visit();
      if (!turn.equals(last)) {
        last = turn;
        steps = new ArrayList<>();
        Map<String, Object> head = new LinkedHashMap<>();
        head.put("place", s.at().name());
        head.put("person", work.crew() > 1 ? s.person() : null);
        head.put("visit", s.visit() > 0 ? s.visit() : null);
        head.put("steps", steps);
        out.add(head);
      }
      if (s.kind() != Step.Kind.TEST || !joins(steps, s)) {
        steps.add(step(s));
      }
    }
    return out;
  }

  /** Tests with somebody at the same far place are one card with a tick for each run. */
  private boolean joins(List<Map<String, Object>> steps, Step s) {
    Map<String, Object> last = steps.isEmpty() ? Map.of() : steps.get(steps.size() - 1);
    boolean same = last.get("tests") != null && Objects.equals(last.get("with"), with(s));
    if (same) {
      @SuppressWarnings("unchecked")
      List<Object> tests = (List<Object>) last.get("tests");
      tests.add(test(s));
    }
    return same;
  }

  private Map<String, Object> test(Step s) {
    return Map.of("id", "step/" + s.id(), "names", cables.of(s.runs()).get("names"));
  }

  private Map<String, Object> step(Step s) {
    Map<String, Object> out = new LinkedHashMap<>();
    // The bore and its card are one tick: it is the same hole.
    boolean hole = s.kind() == Step.Kind.DRILL && holes.containsKey(s.subject());
    out.put("id", hole ? "hole/" + s.subject() : "step/" + s.id());
    double m = minutes.getOrDefault(s.id(), 0.0);
    out.put("min", String.format(Locale.ROOT, "%.4f", m));
    out.put("takes", m >= 0.5 ? words.time(m) : null);
    out.put("do", shown.get("step." + s.kind().word()));
    out.put("what", what(s));
    out.put("link", holes.containsKey(s.subject()) ? holes.get(s.subject()).label() : null);
    Pull pull = pulls.get(s.subject());
    out.put("pull", pull == null ? null : pull(pull));
    out.put("cables", pull == null ? null : cables.of(pull.runs()));
    out.put("marks", s.kind() == Step.Kind.MARK ? marks(s) : null);
    out.put("tests", s.kind() == Step.Kind.TEST ? new ArrayList<>(List.of(test(s))) : null);
    out.put("is-test", s.kind() == Step.Kind.TEST);
    out.put("with", with(s));
    out.put("find", s.kind() == Step.Kind.CHECK_FIRST);
    out.put("where", where(s));
    return out;
  }

  /** Where something is opened or cut out; holes have cards. */
  private String where(Step s) {
    if (s.kind() == Step.Kind.CUT) {
      return outlets.get(s.subject().replaceFirst("/cut-out$", "").replaceFirst("@\\d+$", ""));
    }
    return s.kind() != Step.Kind.OPEN
        ? null
        : work.openings().stream()
            .filter(o -> o.id().equals(s.subject()))
            .findFirst()
            .map(words::openedAt)
            .orElse(null);
  }

  private String with(Step s) {
    String who = s.helper() > 0 ? texts.get("person") + " " + s.helper() + ": " : "";
    return s.other().map(place -> who + place.name()).orElse(null);
  }

  /** What is printed on each cable and how much of it is measured out. */
  private List<Map<String, Object>> marks(Step s) {
    List<Map<String, Object>> out = new ArrayList<>();
    for (String run : s.runs()) {
      Map<String, Object> mark = new LinkedHashMap<>(cables.of(List.of(run)));
      mark.put("lengths", words.lengths(runs.get(run)));
      out.add(mark);
    }
    return out;
  }

  private String what(Step s) {
    Plan.PlannedHole h = holes.get(s.subject());
    if (h != null) {
      // The pilot's bit is thin, whatever the hole's is.
      boolean bores = s.kind() == Step.Kind.DRILL;
      return h.label() + ", " + h.kind() + (bores ? ", " + words.bit(h.diameterMm()) : "");
    }
    if (pulls.containsKey(s.subject()) || s.kind() == Step.Kind.TEST) {
      return null;
    }
    // A ready-made lead is about one run, whose id may look like that of an opening.
    if (s.runs().size() == 1 && s.subject().endsWith(s.runs().get(0))) {
      return s.runs().get(0);
    }
    return s.subject().contains("/") ? words.opening(s.subject()) : words.sentence(s.subject());
  }

  private Map<String, Object> pull(Pull p) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("data-holes", String.join("\n", p.holes()));
    out.put("data-runs", String.join("\n", p.runs()));
    out.put("to", p.to().equals(p.from()) ? null : p.to().name());
    out.put("lies-in", liesIn(p));
    out.put("length", words.length(p.metres()));
    out.put("string", p.stringM() > 0 ? words.cut(p.stringM()) : null);
    out.put(
        "through",
        p.holes().stream()
            .filter(holes::containsKey)
            .map(h -> holes.get(h).label())
            .collect(Collectors.joining(", ")));
    out.put("force", p.newtons() > 0 ? words.force(p.newtons()) : null);
    out.put("most", words.mostForce(p.mostNewtons()));
    out.put("turns", p.quarterTurns());
    List<Map<String, Object>> ends = new ArrayList<>();
    p.strands().stream()
        .filter(s -> s.last() && !s.readyMade())
        .forEach(s -> ends.add(Map.of("run", s.run(), "cut", words.cut(s.cutM()))));
    out.put("ends", ends);
    return out;
  }

  private List<Map<String, Object>> liesIn(Pull p) {
    List<Map<String, Object>> out = new ArrayList<>();
    for (String leg : words.liesIn(p)) {
      Map<String, Object> part = new LinkedHashMap<>();
      part.put("then", !out.isEmpty());
      part.put("leg", leg);
      out.add(part);
    }
    return out;
  }

  List<Map<String, Object>> visits() {
    List<Map<String, Object>> out = new ArrayList<>();
    Map<String, Integer> before = new TreeMap<>();
    for (Visit v : work.visits()) {
      // What was brought the first time has to be brought again: it is another tick.
      int turn = before.merge(v.zone().id(), 1, Integer::sum);
      String own = "bring/" + v.zone().id() + (turn > 1 ? "/again-" + turn : "") + "/";
      List<Map<String, Object>> things = new ArrayList<>();
      for (Bring b : v.bring()) {
        things.add(Map.of("id", own + b.key(), "what", thing(b)));
      }
      Map<String, Object> visit = new LinkedHashMap<>();
      visit.put("number", v.number());
      visit.put("place", v.zone().name());
      visit.put("person", work.crew() > 1 ? v.person() : null);
      visit.put("things", things);
      out.add(visit);
    }
    return out;
  }

  private String thing(Bring b) {
    String name = texts.get("bring." + b.item().word());
    // The item's own name says that it is a bit.
    String size = b.sizeMm() > 0 ? ": " + words.bit(b.sizeMm()).replaceFirst(" bit$", "") : "";
    String own = b.name().isEmpty() ? "" : " (" + b.name() + ")";
    String amount =
        b.item() == Bring.Item.STRING
            ? " " + words.cut(b.amount())
            : b.amount() > 1 ? ", " + Math.round(b.amount()) : "";
    return name + size + own + amount;
  }

  /** How many visits there are, and how few there could be. */
  String proof() {
    return work.visits().size() + " (" + texts.get("least") + " " + work.visitsBound() + ")";
  }
}
