package holloway.check;

import holloway.catalog.Cable;
import holloway.house.Conduit;
import holloway.house.TubeWay;
import holloway.plan.Plan;
import java.util.List;
import java.util.stream.Stream;

/** What is drawn through an existing tube, or after an old cable, passes its narrowest place. */
final class TubeRule implements Rule {
  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Conduit c : evidence.house().framed().placed().house().conduits()) {
      String id = "conduit/" + c.name();
      List<Plan.PlannedRun> runs =
          evidence.plan().runs().stream()
              .filter(r -> r.steps().stream().anyMatch(s -> s.id().equals(id)))
              .toList();
      List<Cable> cables = runs.stream().flatMap(r -> Cable.find(r.cable()).stream()).toList();
      List<Cable> held = c.way().holds().stream().map(TubeRule::jacket).toList();
      List<Cable> all = Stream.concat(held.stream(), cables.stream()).toList();
      if (!runs.isEmpty() && c.kind() == Conduit.Kind.FAST_CABLE) {
        charge.plan(id, "an old cable that may be stapled draws nothing in");
      }
      if (!runs.isEmpty() && c.kind() == Conduit.Kind.TUBE) {
        c.way().parts().forEach(p -> judge(id, p, charge));
      }
      double wide = Math.floor(c.insideDiameter().toMm());
      boolean passes = BoreFill.fits(all, wide, 1) && headsPass(cables, held, wide);
      if (!c.kind().laid() && !cables.isEmpty() && !passes) {
        charge.plan(
            id,
            "%d cables do not pass where it is %.0f mm wide%s",
            cables.size(),
            c.insideDiameter().toMm(),
            held.isEmpty() ? "" : " and holds %d already".formatted(held.size()));
      }
    }
  }

  /** One part, from where a hand has the cable to where a hand has it again. */
  private static void judge(String id, TubeWay.Part p, Charge charge) {
    if (p.degrees() > FishLimits.CONDUIT_DEGREES) {
      charge.plan(
          id,
          "turns by %d degrees in a conduit, %d can be",
          p.degrees(),
          FishLimits.CONDUIT_DEGREES);
    }
    double metres = p.length().toMm() / 1000;
    if (metres > FishLimits.CONDUIT_M) {
      charge.plan(
          id, "%.1f m of a conduit in one pull, %.0f m can be", metres, FishLimits.CONDUIT_M);
    }
  }

  /** What lies there is no longer pulled: it is as wide as its jacket. */
  private static Cable jacket(String kind) {
    Cable c = Cable.get(kind);
    return new Cable(
        kind, c.outside(), c.outside(), c.bend(), c.fibre(), false, c.outdoor(), c.source());
  }

  private static boolean headsPass(List<Cable> cables, List<Cable> held, double wide) {
    double widest = held.stream().mapToDouble(h -> h.outside().toMm()).max().orElse(0);
    return cables.stream().allMatch(c -> c.pullHead().toMm() + widest <= wide + 1e-9);
  }
}
