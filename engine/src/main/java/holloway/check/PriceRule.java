package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.Site;
import holloway.hollow.Stand;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.request.Wishes;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

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
      TreeSet<Integer> fishes = new TreeSet<>();
      for (Walk.At at : Walk.of(run)) {
        if (at.isLeg()) {
          evidence.hollow(at).ifPresent(h -> judgeLeg(at, h, fishes, legs, charge));
        } else if (at.step().minutes().orElse(0.0) != 0) {
          charge.step(at, "has minutes of its own; a crossing is paid for by its works");
        }
      }
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

  private void judgeLeg(
      Walk.At at, Hollow hollow, TreeSet<Integer> fishes, LegPrice legs, Charge charge) {
    double expected;
    Optional<Integer> fish = at.step().fish();
    if (!hollow.blind()) {
      expected = legs.laid(at, hollow);
    } else if (fish.isEmpty()) {
      expected = legs.fished(at, hollow, false, false);
    } else {
      boolean first = fishes.add(fish.get());
      expected = legs.fished(at, hollow, first, !first && handedOver(at));
    }
    double rate = at.pathMm() < 1 ? 0 : expected / (at.pathMm() / 1000);
    double told = at.step().minutes().orElse(0.0);
    if (Math.abs(told - expected) > MINUTES + METRES * rate) {
      charge.step(at, "says %.4f min, by the effort table it is %.4f", told, expected);
    }
  }

  private static boolean handedOver(Walk.At at) {
    return at.before()
        .flatMap(Walk.At::before)
        .map(b -> !b.hollow().equals(at.hollow()))
        .orElse(false);
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
          case "cut-out" ->
              List.of("cut-out.board", "cut-out.plaster", "cut-out.ceiling", "cut-out.outside");
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
