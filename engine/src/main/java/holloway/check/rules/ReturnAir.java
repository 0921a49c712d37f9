package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.limits.Stretches;
import holloway.limits.Verdict;
import holloway.plan.Plan;
import holloway.request.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** B21, B22: cable in a stud or joist space through which air goes back to the furnace. */
final class ReturnAir implements PlanRule {
  @Override
  public String id() {
    return "return-air";
  }

  @Override
  public String about() {
    return "Cable along a stud or joist space that carries air; straight across its long side it may"
        + " pass. The planner never offers such a space.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), practice elsewhere",
        "NEC 300.22(C) and its exception",
        "across only, unless plenum cable");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Legs r : Legs.of(finished.plan())) {
      for (Plan.PlanStep s : r.in(HollowKind.RETURN_AIR)) {
        double along = along(s, finished);
        Verdict v = finished.pack().returnAir(along < 0.1, plenum(r, finished));
        if (!v.allowed()) {
          out.add(finding(r, s, v, along));
        }
      }
    }
    return out;
  }

  private static boolean plenum(Legs r, Finished finished) {
    return finished.job().listing(r.run().cable()).map(Job.Listing::plenum).orElse(false);
  }

  /** Metres along the long side of the space. */
  private static double along(Plan.PlanStep s, Finished finished) {
    Stretches line = Stretches.of(s.path());
    Optional<Hollow> space = finished.house().findHollow(s.id());
    double sum = 0;
    for (int i = 0; i < line.size(); i++) {
      var a = space.map(Hollow::frame).map(f -> f.toLocal(s.path().get(0)));
      boolean upright = a.isEmpty() || isUpright(space.get());
      double rise = Math.abs(line.rise(i));
      sum += upright ? rise : Math.sqrt(Math.max(0, Math.pow(line.metres(i), 2) - rise * rise));
    }
    return sum;
  }

  private static boolean isUpright(Hollow h) {
    return h.clear().z().length() >= Math.max(h.clear().x().length(), h.clear().y().length());
  }

  private Finding finding(Legs r, Plan.PlanStep s, Verdict v, double along) {
    return say(
        v.severity(),
        Place.of(s.id(), Legs.start(s)),
        v.from(),
        true,
        new Said(
            r.run().id() + " lies along a space that carries air.",
            Legs.number("%.2f m along it", along),
            "0 m along it",
            v.text()));
  }
}
