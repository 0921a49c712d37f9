package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Blind legs form fishes that somebody can feed: blind hollows only, within the length limits, one
 * hand-over at most, straight on within a hollow, and a hand at both ends.
 */
final class FishRule implements Rule {
  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Plan.PlannedRun run : evidence.plan().runs()) {
      Map<Integer, List<Walk.At>> fishes = new TreeMap<>();
      for (Walk.At at : Walk.of(run)) {
        if (at.isLeg() && at.step().path().size() >= 2) {
          judgeFeed(at, evidence, charge);
          at.step()
              .fish()
              .ifPresent(f -> fishes.computeIfAbsent(f, k -> new ArrayList<>()).add(at));
        }
      }
      fishes.values().forEach(f -> judgeFish(f, evidence, charge));
    }
  }

  private void judgeFeed(Walk.At at, Evidence evidence, Charge charge) {
    Optional<Hollow> hollow = evidence.hollow(at);
    if (hollow.isEmpty()) {
      return;
    }
    boolean blind = at.isBlind();
    if (hollow.get().blind() && !blind && at.step().fish().isEmpty()) {
      judgeReach(at, evidence, charge);
    } else if (hollow.get().blind() && (!blind || at.step().fish().isEmpty())) {
      charge.step(at, "lies in %s, where no hand reaches, but belongs to no fish", at.hollow());
    }
    if (!hollow.get().blind() && (blind || at.step().fish().isPresent())) {
      charge.step(at, "is fished, but %s is worked by hand", at.hollow());
    }
  }

  /** An arm goes in through an opening and hands the cable to a crossing near by. */
  private void judgeReach(Walk.At at, Evidence evidence, Charge charge) {
    boolean opened =
        opensAt(at, at.before(), at.run().from(), evidence)
            || opensAt(at, at.after(), at.run().to(), evidence);
    if (!opened || at.pathMm() > FishLimits.ARM_MM + 1) {
      charge.step(at, "lies in %s, where no hand reaches, but belongs to no fish", at.hollow());
    }
  }

  private boolean opensAt(Walk.At leg, Optional<Walk.At> next, String end, Evidence evidence) {
    return next.map(evidence::isAccess).orElse(evidence.hasCutOut(end));
  }

  private void judgeFish(List<Walk.At> legs, Evidence evidence, Charge charge) {
    int handOvers = 0;
    for (int i = 0; i + 1 < legs.size(); i++) {
      Walk.At leg = legs.get(i);
      Walk.At next = legs.get(i + 1);
      if (next.index() != leg.index() + 2) {
        charge.step(
            next,
            "fish %d is broken: its last leg is step %d",
            next.step().fish().get(),
            leg.index() + 1);
      } else if (leg.after().map(evidence::isAccess).orElse(false)) {
        charge.step(
            next,
            "a hand has the cable at %s: a new fish starts there",
            leg.after().get().step().id());
      }
      handOvers += next.hollow().equals(leg.hollow()) ? 0 : 1;
    }
    if (handOvers > 1) {
      charge.step(
          legs.get(2),
          "fish %d is handed over %d times, once can be",
          legs.get(0).step().fish().get(),
          handOvers);
    }
    judgeLengths(legs, evidence, charge);
    legs.forEach(l -> evidence.hollow(l).ifPresent(h -> judgeStraight(l, h, evidence, charge)));
    judgeHand(legs.get(0), legs.get(0).before(), evidence, charge, legs.get(0).run().from());
    Walk.At last = legs.get(legs.size() - 1);
    judgeHand(last, last.after(), evidence, charge, last.run().to());
  }

  private void judgeLengths(List<Walk.At> legs, Evidence evidence, Charge charge) {
    Map<String, Double> metres = new TreeMap<>();
    for (Walk.At leg : legs) {
      Optional<Hollow> hollow = evidence.hollow(leg);
      if (hollow.isEmpty()) {
        continue;
      }
      double sum = metres.merge(leg.hollow(), leg.pathMm() / 1000, Double::sum);
      OptionalDouble limit = FishLimits.metres(hollow.get());
      if (limit.isEmpty()) {
        charge.step(
            leg,
            "nobody can fish a %s filled with %s",
            hollow.get().kind().word(),
            hollow.get().fill().word());
      } else if (sum > goes(hollow.get(), evidence) * limit.getAsDouble() + 0.001) {
        charge.step(
            leg, "fishes %.3f m in %s, %.1f m can be", sum, leg.hollow(), limit.getAsDouble());
      }
    }
  }

  /**
   * A rod goes one way: along the hollow's long axis it never turns back, and sideways it moves no
   * more than the hollow is wide.
   */
  private void judgeStraight(Walk.At leg, Hollow hollow, Evidence evidence, Charge charge) {
    if (hollow.kind() == HollowKind.CONDUIT || hollow.kind() == HollowKind.OLD_CABLE) {
      return; // where it turns is judged by TubeRule
    }
    Solid clear = new Solid(hollow.frame(), hollow.clear());
    int axis = longAxis(hollow, clear);
    double[] moved = new double[3];
    boolean up = false;
    boolean down = false;
    for (Span span : leg.spans()) {
      double[] a = clear.local(span.a());
      double[] b = clear.local(span.b());
      up |= b[axis] - a[axis] > 1;
      down |= a[axis] - b[axis] > 1;
      for (int i = 0; i < 3; i++) {
        moved[i] += Math.abs(b[i] - a[i]);
      }
    }
    if (up && down) {
      charge.step(leg, "turns back inside %s: a fish goes straight on", hollow.id());
    }
    for (int i = 0; i < 3; i++) {
      if (i != axis && moved[i] > clear.extent(i) + 1) {
        charge.step(
            leg,
            "goes %.0f mm sideways in %s, which is %.0f mm wide",
            moved[i],
            hollow.id(),
            clear.extent(i));
      }
    }
  }

  private static int longAxis(Hollow hollow, Solid clear) {
    return switch (hollow.kind()) {
      case STUD_BAY, CHASE, FURRED_BAY, DAB_VOID -> 2;
      case JOIST_BAY, BATTEN_VOID, SERVICE_VOID, PORCH_VOID -> 0;
      default ->
          clear.extent(0) >= clear.extent(1) && clear.extent(0) >= clear.extent(2)
              ? 0
              : clear.extent(1) >= clear.extent(2) ? 1 : 2;
    };
  }

  /** Through a tube with pull boxes cable is drawn in as many goes as it has parts. */
  private static int goes(Hollow hollow, Evidence evidence) {
    boolean tube = hollow.kind() == HollowKind.CONDUIT;
    return tube ? evidence.conduit(hollow).map(c -> c.way().parts().size()).orElse(1) : 1;
  }

  /** {@code next} is the step beyond the fish's end, {@code end} the run's end on that side. */
  private void judgeHand(
      Walk.At leg, Optional<Walk.At> next, Evidence evidence, Charge charge, String end) {
    if (next.isEmpty()) {
      if (!evidence.hasCutOut(end)) {
        charge.step(leg, "its fish ends at %s, where no cut-out is opened", end);
      }
      return;
    }
    if (evidence.isAccess(next.get())) {
      return;
    }
    Optional<Walk.At> beyond =
        next.get().index() < leg.index() ? next.get().before() : next.get().after();
    boolean hand =
        beyond.isEmpty() ? evidence.site(next.get()).isPresent() : !beyond.get().isBlind();
    if (!hand) {
      charge.step(leg, "its fish ends at %s, and no hand is there", next.get().step().id());
    }
  }
}
