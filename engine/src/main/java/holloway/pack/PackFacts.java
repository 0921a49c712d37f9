package holloway.pack;

import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.WorkSchedule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** All that the template shows, in the order of the job. Numbers are the plan's own. */
final class PackFacts {
  private final Sheet sheet;
  private final Plan plan;
  private final SheetWords words;
  private final Map<String, String> texts;
  private final Spoken spoken;
  private final Map<String, Object> values = new LinkedHashMap<>();

  private PackFacts(Sheet sheet, WorkSchedule work, Spoken spoken, Drawings drawings, Seen seen) {
    this.sheet = sheet;
    this.plan = sheet.plan();
    this.words = new SheetWords(sheet);
    this.texts = Language.ENGLISH.texts();
    this.spoken = spoken;
    values.put("t", spoken.language().texts());
    values.put("lang", spoken.language().code());
    values.put("house", plan.house());
    values.put("drawings", drawings.levels());
    values.put("front", drawings.cabinet());
    totals();
    values.put("broken", broken());
    values.put("check-first", words.checkFirst());
    values.put("cautions", words.cautions());
    values.put("findings", new RuleFacts(plan, words).cards());
    values.put("shelves", shelves());
    values.put("outlets", outlets());
    values.put("ports", new PortFacts(sheet, words).rows());
    values.put("pins", new PortFacts(sheet, words).pins(texts));
    values.put("holes", new HoleFacts(sheet, words, drawings, seen).cards());
    RunFacts runs = new RunFacts(sheet, words, drawings);
    values.put("runs", runs.cards());
    values.put("floors", runs.floors());
    values.put("has-floors", !drawings.floors().isEmpty());
    WorkFacts order = new WorkFacts(sheet, work, words, texts, spoken.language().texts());
    values.put("turns", order.turns());
    values.put("visits", order.visits());
    values.put("visit-proof", order.proof());
    OwnerFacts owner = new OwnerFacts(sheet, words, work);
    values.put("left-lying", owner.ways());
    values.put("tests", TestFacts.of(sheet, work));
    values.put("closed", owner.closed());
    values.put("photographs", owner.photographs());
    values.put("key", StoreKey.of(sheet.placed().house()));
    values.put("file", plan.inputs().isEmpty() ? "" : plan.inputs().get(0).file());
    values.put("room-places", StoreKey.places(sheet.placed()));
    values.put("sizes", StoreKey.sizes(sheet.placed()));
    values.put("left-out", leftOut());
    values.put("inputs", plan.inputs());
    values.put("seen", seen.levels().stream().filter(Seen.Picture::inPage).toList());
    values.put("unseen", seen.why().isEmpty() ? null : seen.why());
    values.put("more-seen", seen.someLeftOut());
  }

  static PackFacts of(Sheet sheet, WorkSchedule work, Spoken spoken, Drawings drawings, Seen seen) {
    return new PackFacts(sheet, work, spoken, drawings, seen);
  }

  Map<String, Object> values() {
    return spoken.page(values);
  }

  private void totals() {
    Plan.Totals t = plan.totals();
    values.put("time", words.time(t.minutes()));
    values.put("proof", words.proof());
    values.put("hole-count", t.holes());
    values.put("patch-count", t.patches());
    values.put("run-count", plan.runs().size());
    values.put("route", words.length(t.routeM()));
    values.put("cable", words.cut(t.cableM()));
    values.put("zones", String.join(", ", t.zones()));
    values.put("has-zones", !t.zones().isEmpty());
    values.put(
        "money",
        t.money().map(m -> String.format(Locale.ROOT, "%.2f %s", m, t.currency())).orElse(null));
  }

  private List<String> broken() {
    LinkedHashSet<String> out = new LinkedHashSet<>();
    plan.findings().stream()
        .filter(Plan.FindingLine::breaksLaw)
        .forEach(f -> out.add(words.sentence(f.text()) + " [" + f.source() + "]"));
    return List.copyOf(out);
  }

  private List<Map<String, Object>> shelves() {
    Map<String, List<Map<String, Object>>> groups = new LinkedHashMap<>();
    for (Plan.Material m : plan.materials()) {
      Map<String, Object> line = new LinkedHashMap<>();
      line.put("id", "buy/" + m.item());
      line.put("item", m.item());
      line.put("quantity", words.quantity(m));
      line.put("price", m.price().map(p -> String.format(Locale.ROOT, "%.2f", p)).orElse(""));
      groups.computeIfAbsent(m.group(), k -> new ArrayList<>()).add(line);
    }
    List<Map<String, Object>> out = new ArrayList<>();
    groups.forEach((name, lines) -> out.add(Map.of("shelf", name, "lines", lines)));
    return out;
  }

  private List<Map<String, Object>> outlets() {
    List<Map<String, Object>> out = new ArrayList<>();
    words
        .outlets()
        .forEach(
            (name, where) -> out.add(Map.of("id", "outlet/" + name, "name", name, "where", where)));
    return out;
  }

  private List<String> plain(List<String> whyNot) {
    return whyNot.stream().map(words::sentence).map(w -> w.replaceAll("@\\d+", "")).toList();
  }

  private List<Map<String, Object>> leftOut() {
    List<Map<String, Object>> out = new ArrayList<>();
    plan.unrouted().forEach(u -> out.add(Map.of("run", u.id(), "why", plain(u.whyNot()))));
    return out;
  }
}
