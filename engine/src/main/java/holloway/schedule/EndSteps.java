package holloway.schedule;

import holloway.catalog.Cable;
import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Ends of cables: terminate and label at each outlet and at the cabinet, then test each run. */
final class EndSteps {
  private final Places places;
  private final Set<String> spares;
  private final Map<String, Integer> lastStretch = new TreeMap<>();

  EndSteps(Places places, Set<String> spares, List<List<Stretch>> stretches) {
    this.places = places;
    this.spares = spares;
    stretches.forEach(s -> lastStretch.put(s.get(0).run().id(), s.size() - 1));
  }

  List<Step> list(List<Plan.PlannedRun> runs) {
    Map<String, List<Plan.PlannedRun>> ends = new TreeMap<>();
    for (Plan.PlannedRun r : runs) {
      ends.computeIfAbsent(r.from(), k -> new ArrayList<>()).add(r);
      ends.computeIfAbsent(r.to(), k -> new ArrayList<>()).add(r);
    }
    List<Step> out = new ArrayList<>();
    ends.forEach(
        (end, there) -> {
          out.add(terminate(end, there));
          out.add(label(end, there));
        });
    runs.forEach(r -> out.add(test(r)));
    return out;
  }

  private static Point3 at(Plan.PlannedRun r, String end) {
    List<Plan.PlanStep> s = r.steps();
    List<Point3> last = s.get(s.size() - 1).path();
    return end.equals(r.from()) ? s.get(0).path().get(0) : last.get(last.size() - 1);
  }

  private static String side(Plan.PlannedRun r, String end) {
    return r.id() + (end.equals(r.from()) ? ":from" : ":to");
  }

  private StepDraft draft(Step.Kind kind, String end, List<Plan.PlannedRun> runs) {
    List<String> ids = runs.stream().map(Plan.PlannedRun::id).sorted().toList();
    String id = kind.word() + "/" + end + "/" + Marks.of(ids);
    StepDraft out = new StepDraft(id, kind, end, places.end(end, at(runs.get(0), end))).runs(ids);
    ids.forEach(r -> out.needs("end:" + r + ":" + lastStretch.get(r)));
    return out;
  }

  private Step terminate(String end, List<Plan.PlannedRun> runs) {
    StepDraft out = draft(Step.Kind.TERMINATE, end, runs);
    runs.forEach(r -> out.makes("terminated:" + side(r, end)));
    boolean tool = runs.stream().anyMatch(r -> !Cable.get(r.cable()).factoryEnds());
    if (tool) {
      out.bring(Bring.of(Bring.Item.TERMINATION_TOOL), Bring.of(Bring.Item.CUTTERS));
    }
    if (!end.equals(Places.CABINET)) {
      out.bring(new Bring(Bring.Item.OUTLET_PLATE, 0, 1, end));
    }
    return out.done();
  }

  private Step label(String end, List<Plan.PlannedRun> runs) {
    StepDraft out = draft(Step.Kind.LABEL, end, runs).bring(Bring.of(Bring.Item.LABELS));
    runs.forEach(r -> out.makes("labelled:" + side(r, end)));
    return out.done();
  }

  private Step test(Plan.PlannedRun r) {
    boolean fibre = Cable.get(r.cable()).fibre();
    Bring.Item tester = fibre ? Bring.Item.FIBRE_TESTER : Bring.Item.TESTER;
    StepDraft out =
        new StepDraft(
                "test/" + r.id(), Step.Kind.TEST, r.id(), places.end(r.from(), at(r, r.from())))
            .with(places.end(r.to(), at(r, r.to())))
            .runs(List.of(r.id()))
            .makes("tested:" + r.id())
            .bring(Bring.of(tester))
            .bringOther(Bring.of(tester));
    for (String end : List.of(r.from(), r.to())) {
      out.needs("terminated:" + side(r, end), "labelled:" + side(r, end));
    }
    return out.done();
  }

  /** What one run is tested for. */
  RunProof whatToTest(Plan.PlannedRun r) {
    boolean fibre = Cable.get(r.cable()).fibre();
    List<RunProof.Check> out = new ArrayList<>();
    if (fibre) {
      out.addAll(List.of(RunProof.Check.END_FACES_CLEAN, RunProof.Check.LIGHT_THROUGH));
      out.add(RunProof.Check.LOSS);
    } else if (r.cable().equals("rg6")) {
      out.addAll(List.of(RunProof.Check.CONTINUITY, RunProof.Check.LENGTH));
    } else {
      out.addAll(
          List.of(RunProof.Check.WIRE_MAP, RunProof.Check.LENGTH, RunProof.Check.LINK_SPEED));
    }
    return new RunProof(r.id(), r.cable(), spares.contains(r.id()), r.cableM(), out);
  }
}
