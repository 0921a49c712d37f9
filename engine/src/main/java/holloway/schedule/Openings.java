package holloway.schedule;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a plan opens (cut-outs, patches, lifted boards, channels), and who needs it open. */
final class Openings {
  static final String CUT_OUT = "/cut-out";

  private static final Set<String> OPENED = Set.of("cut-out", "patch", "access", "channel");

  private final Plan plan;
  private final Places places;
  private final List<Plan.PlannedWork> opened = new ArrayList<>();

  Openings(Plan plan, Places places) {
    this.plan = plan;
    this.places = places;
    plan.works().stream().filter(w -> OPENED.contains(w.kind())).forEach(opened::add);
  }

  List<Plan.PlannedWork> list() {
    return opened;
  }

  /** Opened works that one of these ids of crossings or hollows goes through. */
  List<String> needed(List<String> ids) {
    return opened.stream()
        .map(Plan.PlannedWork::id)
        .filter(w -> ids.stream().anyMatch(i -> w.equals(i) || w.startsWith(i + "/")))
        .toList();
  }

  /** All that a run goes through, the cut-outs at its ends included. */
  List<String> ofRun(Plan.PlannedRun r) {
    List<String> ids = new ArrayList<>(r.steps().stream().map(Plan.PlanStep::id).toList());
    ids.addAll(List.of(r.from() + CUT_OUT, r.to() + CUT_OUT));
    return needed(ids);
  }

  List<String> ofHole(Plan.PlannedHole h) {
    return opened.stream().map(Plan.PlannedWork::id).filter(h.works()::contains).toList();
  }

  /** Where each is that has no card of its own; cut-outs are told with the outlets. */
  List<OpenPlace> places() {
    return opened.stream().flatMap(w -> places.access(w.id()).stream()).toList();
  }

  boolean closes(Plan.PlannedWork w) {
    return !w.kind().equals("cut-out");
  }

  WorkPlace place(Plan.PlannedWork w) {
    Point3 at = new Point3(0, 0, 0);
    String[] parts = w.id().split("/");
    if (parts[0].equals("skirting")) {
      return places.room(parts[1]);
    }
    for (Plan.PlannedRun r : plan.runs()) {
      at = end(r, w.id()).orElse(at);
      for (Plan.PlanStep s : r.steps()) {
        if (w.id().equals(s.id()) || w.id().startsWith(s.id() + "/")) {
          at = s.path().get(0);
        }
      }
    }
    Point3 there = at;
    String owner = w.id().contains("/") ? w.id().substring(0, w.id().lastIndexOf('/')) : w.id();
    if (w.kind().equals("channel")) {
      return places.channel(w.id()).orElse(places.cabinet());
    }
    return places
        .find(w.id(), there)
        .or(() -> places.hollow(w.id(), there))
        .or(() -> places.hollow(owner, there))
        .orElse(places.cabinet());
  }

  /** Where a run ends whose cut-out this is: one that no crossing leads through is outside. */
  private static Optional<Point3> end(Plan.PlannedRun r, String cutOut) {
    if (cutOut.equals(r.from() + CUT_OUT)) {
      return Optional.of(r.steps().get(0).path().get(0));
    }
    List<Point3> last = r.steps().get(r.steps().size() - 1).path();
    return cutOut.equals(r.to() + CUT_OUT)
        ? Optional.of(last.get(last.size() - 1))
        : Optional.empty();
  }
}
