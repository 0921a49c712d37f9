package holloway.pack;

import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import holloway.schedule.OpenPlace;
import holloway.schedule.Pull;
import holloway.schedule.WorkSchedule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What lies where once the work is done: for whoever opens a wall of this house next. */
final class OwnerFacts {
  private final Sheet sheet;
  private final SheetWords words;
  private final WorkSchedule work;

  OwnerFacts(Sheet sheet, SheetWords words, WorkSchedule work) {
    this.sheet = sheet;
    this.words = words;
    this.work = work;
  }

  /** A card for each way, with the cables that lie in it by their labels. */
  List<Map<String, Object>> ways() {
    Map<String, Plan.PlannedRun> runs = new LinkedHashMap<>();
    sheet.plan().runs().forEach(r -> runs.put(r.id(), r));
    Map<List<Object>, List<Label>> alike = new LinkedHashMap<>();
    for (Label l : Labels.of(sheet.plan(), sheet.request(), sheet.placed())) {
      List<Object> way = List.of(passes(runs.get(l.run())), strings(l.run()));
      alike.computeIfAbsent(way, k -> new ArrayList<>()).add(l);
    }
    List<Map<String, Object>> out = new ArrayList<>();
    alike.forEach(
        (way, labels) -> {
          Map<String, Object> card = new LinkedHashMap<>();
          card.put("cables", labels.stream().map(OwnerFacts::cable).toList());
          card.put("passes", way.get(0));
          card.put("strings", way.get(1));
          out.add(card);
        });
    return out;
  }

  private static Map<String, Object> cable(Label l) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("label", l.id());
    out.put("cable", l.cable());
    out.put("from", l.from());
    out.put("to", l.to());
    out.put("is-spare", l.spare());
    return out;
  }

  /** Holes that are closed in the same manner. */
  List<Map<String, Object>> closed() {
    Map<List<String>, List<Map<String, Object>>> alike = new LinkedHashMap<>();
    for (Plan.PlannedHole h : sheet.plan().holes()) {
      alike
          .computeIfAbsent(HoleFacts.sealing(sheet.plan(), words, h), k -> new ArrayList<>())
          .add(Map.of("label", h.label(), "where", words.where(h)));
    }
    List<Map<String, Object>> out = new ArrayList<>();
    alike.forEach((seal, holes) -> out.add(Map.of("seal", seal, "holes", holes)));
    return out;
  }

  /** Hollows and holes on its way, each once and without the lengths of a work card. */
  private List<String> passes(Plan.PlannedRun run) {
    List<String> all = List.of(words.way(run).split(" > "));
    Set<String> out = new LinkedHashSet<>(all.subList(1, all.size() - 1));
    return List.copyOf(out);
  }

  /** Where a string was left with it: from place to place. */
  private List<Map<String, Object>> strings(String run) {
    List<Map<String, Object>> out = new ArrayList<>();
    for (Pull p : work.pulls()) {
      if (p.stringM() > 0 && p.runs().contains(run)) {
        out.add(Map.of("length", words.cut(p.stringM()), "to", p.to().name()));
      }
    }
    return out;
  }

  /** What was opened: there a photograph with a tape in it is worth most before it is closed. */
  List<Map<String, Object>> photographs() {
    return sheet.plan().works().stream()
        .filter(w -> Set.of("cut-out", "patch", "access", "channel").contains(w.kind()))
        .map(w -> photograph(w.id()))
        .toList();
  }

  private Map<String, Object> photograph(String id) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("id", "photo/" + id);
    out.put("what", words.opening(id));
    Optional<OpenPlace> place = work.openings().stream().filter(o -> o.id().equals(id)).findFirst();
    out.put("where", place.map(words::openedAt).orElse(null));
    return out;
  }
}
