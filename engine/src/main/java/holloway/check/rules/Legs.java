package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Place;
import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The legs of one planned run by the kind of space they lie in. */
record Legs(Plan.PlannedRun run) {
  static List<Legs> of(Plan plan) {
    return plan.runs().stream().map(Legs::new).toList();
  }

  /** Its cable in the catalogue; empty for a kind this program does not know. */
  Optional<Cable> cable() {
    return Cable.find(run.cable());
  }

  boolean copperPairs() {
    return cable().map(c -> !c.fibre() && !c.kind().equals("rg6")).orElse(false);
  }

  boolean fibre() {
    return cable().map(Cable::fibre).orElse(false);
  }

  static boolean isIn(Plan.PlanStep s, HollowKind kind) {
    return s.kind().equals("leg") && s.hollow().filter(kind.word()::equals).isPresent();
  }

  List<Plan.PlanStep> in(HollowKind kind) {
    return run.steps().stream().filter(s -> isIn(s, kind)).toList();
  }

  /** The ids of some, in order. */
  static String named(List<Legs> some) {
    return some.stream().map(r -> r.run().id()).sorted().collect(Collectors.joining(", "));
  }

  /** Metres of it in spaces of that kind. */
  double metresIn(HollowKind kind) {
    return in(kind).stream().mapToDouble(Plan.PlanStep::m).sum();
  }

  /** Its blind legs, those of one fish together, in order; crossings between them left out. */
  List<List<Plan.PlanStep>> fishes() {
    List<List<Plan.PlanStep>> out = new ArrayList<>();
    int last = -1;
    for (Plan.PlanStep s : run.steps()) {
      if (s.kind().equals("leg") && s.fish().isPresent()) {
        if (s.fish().get() != last) {
          out.add(new ArrayList<>());
          last = s.fish().get();
        }
        out.get(out.size() - 1).add(s);
      }
    }
    return out;
  }

  /** The run, at its first point. */
  Place place() {
    return run.steps().stream()
        .filter(s -> !s.path().isEmpty())
        .findFirst()
        .map(s -> Place.of(run.id(), s.path().get(0)))
        .orElse(Place.of(run.id()));
  }

  static Point3 start(Plan.PlanStep s) {
    return s.path().get(0);
  }

  static String metres(double m) {
    return String.format(Locale.ROOT, "%.1f m", m);
  }

  static String number(String format, double v) {
    return String.format(Locale.ROOT, format, v);
  }
}
