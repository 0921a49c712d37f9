package holloway.check;

import holloway.hollow.Site;
import holloway.hollow.Stand;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.request.Wishes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Every price worked out again from the effort table. Prices are written to 1/10 000 minute, but
 * lengths to the millimetre and points to 0.1 mm, so a leg may differ by what 2 mm cost.
 */
final class PriceRule implements Rule {
  private static final double MINUTES = 0.001;
  private static final double METRES = 0.002;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    LegPrice legs = new LegPrice(evidence);
    for (Plan.PlannedRun run : evidence.plan().runs()) {
      Map<Integer, List<Walk.At>> fishes = new TreeMap<>();
      for (Walk.At at : Walk.of(run)) {
        if (at.isLeg() && at.step().fish().isPresent()) {
          fishes.computeIfAbsent(at.step().fish().get(), k -> new ArrayList<>()).add(at);
        } else if (at.isLeg()) {
          judgeHandLeg(at, evidence, legs, charge);
        } else if (at.step().minutes().orElse(0.0) != 0) {
          charge.step(at, "has minutes of its own; a crossing is paid for by its works");
        }
      }
      fishes.values().forEach(f -> judgeFish(f, evidence, legs, charge));
    }
    judgeVisible(evidence, legs, charge);
    BorePrice bores = new BorePrice(evidence);
    for (Plan.PlannedHole hole : evidence.plan().holes()) {
      evidence
          .house()
          .findSite(hole.id())
          .ifPresent(s -> judgeBore(hole, s, bores, evidence, charge));
    }
    evidence.plan().works().forEach(w -> judgeWork(w, evidence, charge));
  }

  private void judgeVisible(Evidence evidence, LegPrice legs, Charge charge) {
    double metres = 0;
    for (Walk.At at : evidence.steps()) {
      boolean seen = at.isLeg() && evidence.hollow(at).map(legs::inSight).orElse(false);
      metres += seen ? at.pathMm() / 1000 : 0;
    }
    double told = evidence.plan().totals().visibleM();
    if (Math.abs(told - metres) > 0.02) {
      charge.plan("visible-m", "says %.3f, the legs in sight make %.3f", told, metres);
    }
  }

  private void judgeHandLeg(Walk.At at, Evidence evidence, LegPrice legs, Charge charge) {
    evidence
        .hollow(at)
        .ifPresent(
            h ->
                compare(
                    at,
                    h.blind() ? legs.fished(at, h, false, false) : legs.laid(at, h),
                    legs.perMetre(h),
                    charge));
  }

  /**
   * A fish is fed from either end: the leg it starts with pays the set-up and the other the
   * hand-over, whichever way the run is read.
   */
  private void judgeFish(List<Walk.At> fish, Evidence evidence, LegPrice legs, Charge charge) {
    if (fish.stream().anyMatch(l -> evidence.hollow(l).isEmpty())) {
      return;
    }
    List<Walk.At> turned = new ArrayList<>(fish);
    Collections.reverse(turned);
    List<Double> backward = new ArrayList<>(prices(turned, evidence, legs));
    Collections.reverse(backward);
    boolean fromTheEnd = true;
    for (int i = 0; i < fish.size(); i++) {
      fromTheEnd &= agrees(fish.get(i), backward.get(i), rate(fish.get(i), evidence, legs));
    }
    if (!fromTheEnd) {
      List<Double> forward = prices(fish, evidence, legs);
      for (int i = 0; i < fish.size(); i++) {
        compare(fish.get(i), forward.get(i), rate(fish.get(i), evidence, legs), charge);
      }
    }
  }

  private static List<Double> prices(List<Walk.At> fish, Evidence evidence, LegPrice legs) {
    List<Double> out = new ArrayList<>();
    for (int i = 0; i < fish.size(); i++) {
      boolean over = i > 0 && !fish.get(i).hollow().equals(fish.get(i - 1).hollow());
      out.add(legs.fished(fish.get(i), evidence.hollow(fish.get(i)).get(), i == 0, over));
    }
    return out;
  }

  private static double rate(Walk.At leg, Evidence evidence, LegPrice legs) {
    return legs.perMetre(evidence.hollow(leg).get());
  }

  private static boolean agrees(Walk.At at, double expected, double rate) {
    double told = at.step().minutes().orElse(0.0);
    return Math.abs(told - expected) <= MINUTES + METRES * rate;
  }

  private static void compare(Walk.At at, double expected, double rate, Charge charge) {
    if (!agrees(at, expected, rate)) {
      charge.step(
          at,
          "says %.4f min, by the effort table it is %.4f",
          at.step().minutes().orElse(0.0),
          expected);
    }
  }

  /**
   * The bore work of the hole, and beside it what wider bits and a second bore add: with two bores
   * the plan names the wider bit only, so the other may be any bit up to it.
   */
  private void judgeBore(
      Plan.PlannedHole hole, Site site, BorePrice bores, Evidence evidence, Charge charge) {
    double works =
        hole.works().stream()
            .flatMap(w -> evidence.work(w).stream())
            .filter(w -> w.kind().equals("bore"))
            .mapToDouble(Plan.PlannedWork::minutes)
            .sum();
    double bore = bores.bore(hole, site);
    double wider = bores.widerBit(hole.diameterMm());
    if (hole.bores() == 1) {
      tell(hole, works, bore + wider, charge);
    } else {
      double second = evidence.request().effort().get("bore.second");
      double least = bore + wider + second;
      double extra = Math.min(Math.max(works, least), least + wider);
      tell(hole, works, extra, charge);
    }
    tell(hole, hole.minutes(), works, charge);
  }

  private static void tell(Plan.PlannedHole hole, double told, double expected, Charge charge) {
    if (Math.abs(told - expected) > MINUTES) {
      charge.plan(
          hole.id(), "boring says %.4f min, by the effort table it is %.4f", told, expected);
    }
  }

  private void judgeWork(Plan.PlannedWork work, Evidence evidence, Charge charge) {
    Effort effort = evidence.request().effort();
    List<String> keys =
        switch (work.kind()) {
          case "zone" ->
              List.of(
                  "zone." + evidence.zoneStand(work.zone()).map(Stand::zone).orElse(work.zone()));
          case "patch" ->
              List.of("patch.wall-board", "patch.ceiling-board", "patch.plaster", "patch.tile");
          default -> List.of();
        };
    double extra = summerAttic(work, evidence) ? effort.get("zone.attic-summer-extra") : 0;
    boolean known =
        keys.isEmpty()
            || keys.stream()
                .filter(k -> effort.minutes().containsKey(k))
                .anyMatch(k -> Math.abs(effort.get(k) + extra - work.minutes()) <= MINUTES);
    if (!known) {
      charge.plan(work.id(), "says %.4f min, which is no price of %s", work.minutes(), keys);
    }
  }

  private static boolean summerAttic(Plan.PlannedWork work, Evidence evidence) {
    return work.kind().equals("zone")
        && work.zone().startsWith("attic")
        && evidence.request().wishes().attic() == Wishes.Season.SUMMER;
  }
}
