package holloway.check;

import holloway.house.Along;
import holloway.house.Fact;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.plan.Plan;
import holloway.request.Spot;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The place in a range where an outlet ended up: of the places that a range offers, every 200 mm
 * from where it begins, the one that lies nearest to the end of the runs.
 */
final class RangeSpots {
  private static final long STEP = 200_000_000L;

  private RangeSpots() {}

  /** The spots to look behind: what is stated, or where its runs end if it may slide. */
  static List<WallSpot> of(Spot.OnWall stated, String outlet, Evidence evidence) {
    Optional<Mm> end = end(outlet, evidence.plan());
    if (stated.upTo().isEmpty() || end.isEmpty()) {
      return List.of(stated.at());
    }
    List<WallSpot> offered = new ArrayList<>();
    long from = stated.at().along().distance().value().nm();
    long to = stated.upTo().get().nm();
    offered.add(stated.at());
    for (long d = Math.min(from, to); d <= Math.max(from, to); d += STEP) {
      Along along =
          new Along(stated.at().along().from(), Fact.stated(new Length(d), Where.NOWHERE));
      offered.add(new WallSpot(stated.at().face(), along, stated.at().height()));
    }
    return offered.stream()
        .filter(w -> at(w, evidence).isPresent())
        .min(Comparator.comparingDouble(w -> at(w, evidence).get().to(end.get())))
        .map(List::of)
        .orElse(List.of(stated.at()));
  }

  private static Optional<Mm> at(WallSpot w, Evidence evidence) {
    return evidence
        .house()
        .framed()
        .placed()
        .findSpot(w.face(), w.along(), w.height().value().nm())
        .map(s -> Mm.of(s.wall().world(s.s(), s.wall().thickness() / 2, s.z())));
  }

  private static Optional<Mm> end(String outlet, Plan plan) {
    for (Plan.PlannedRun run : plan.runs()) {
      if (!run.steps().isEmpty() && run.to().equals(outlet)) {
        var path = run.steps().get(run.steps().size() - 1).path();
        return Optional.of(Mm.of(path.get(path.size() - 1)));
      }
      if (!run.steps().isEmpty() && run.from().equals(outlet)) {
        return Optional.of(Mm.of(run.steps().get(0).path().get(0)));
      }
    }
    return Optional.empty();
  }
}
