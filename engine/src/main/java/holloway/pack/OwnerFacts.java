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

  /** A line for each cable, by its label. */
  List<Map<String, Object>> cables() {
    Map<String, Plan.PlannedRun> runs = new LinkedHashMap<>();
    sheet.plan().runs().forEach(r -> runs.put(r.id(), r));
    List<Map<String, Object>> out = new ArrayList<>();
    for (Label l : Labels.of(sheet.plan(), sheet.request(), sheet.placed())) {
      Map<String, Object> line = new LinkedHashMap<>();
      line.put("label", l.id());
      line.put("cable", l.cable());
      line.put("from", l.from());
      line.put("to", l.to());
      line.put("passes", passes(runs.get(l.run())));
      line.put("strings", strings(l.run()));
      line.put("is-spare", l.spare());
      out.add(line);
    }
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
