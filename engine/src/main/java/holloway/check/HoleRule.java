package holloway.check;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.hollow.Site;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** The plan's holes: real, lawful, used, large enough, apart from one another. */
final class HoleRule implements Rule {
  /** How near a nail plate's finding must stand to its hole, millimetres. */
  private static final double SAME_PLACE_MM = 50;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Map<String, TreeSet<String>> users = users(evidence);
    TreeSet<String> ids = new TreeSet<>();
    TreeSet<String> labels = new TreeSet<>();
    for (Plan.PlannedHole hole : evidence.plan().holes()) {
      if (!ids.add(hole.id())) {
        charge.plan(hole.id(), "the hole is listed twice");
      }
      if (!labels.add(hole.label())) {
        charge.plan(hole.id(), "another hole has the label %s too", hole.label());
      }
      Optional<Site> site = evidence.house().findSite(hole.id());
      if (site.isEmpty()) {
        charge.plan(hole.id(), "no such crossing in the house");
        continue;
      }
      judgeSame(hole, site.get(), charge);
      judgeBit(hole, site.get(), evidence, charge);
      judgeUse(hole, users.getOrDefault(hole.id(), new TreeSet<>()), evidence, charge);
    }
    judgeApart(evidence, charge);
  }

  private static Map<String, TreeSet<String>> users(Evidence evidence) {
    Map<String, TreeSet<String>> users = new TreeMap<>();
    for (Walk.At at : evidence.steps()) {
      if (at.isCrossing()) {
        TreeSet<String> runs = users.computeIfAbsent(at.step().id(), k -> new TreeSet<>());
        runs.add(at.run().id());
      }
    }
    return users;
  }

  private void judgeSame(Plan.PlannedHole hole, Site site, Charge charge) {
    if (!hole.kind().equals(site.kind().word())) {
      charge.plan(hole.id(), "is called %s, it is a %s", hole.kind(), site.kind().word());
    }
    if (!new TreeSet<>(hole.between())
        .equals(new TreeSet<>(List.of(site.hollowA(), site.hollowB())))) {
      charge.plan(
          hole.id(),
          "says it joins %s; it joins %s and %s",
          hole.between(),
          site.hollowA(),
          site.hollowB());
    }
    Span axis = new Span(Mm.of(site.a()), Mm.of(site.b()));
    if (new Span(Mm.of(hole.at()), Mm.of(hole.at())).distanceTo(axis) > 1) {
      charge.plan(hole.id(), "stands at %s, off its axis", Mm.of(hole.at()));
    }
    if (Math.abs(hole.depthMm() - axis.length()) > 1) {
      charge.plan(
          hole.id(), "says %.0f mm deep, its axis is %.0f mm", hole.depthMm(), axis.length());
    }
    if (hole.assumed() != site.assumed()) {
      charge.plan(hole.id(), "hides whether it hangs on an assumed layout");
    }
  }

  private void judgeBit(Plan.PlannedHole hole, Site site, Evidence evidence, Charge charge) {
    int bit = hole.diameterMm();
    if (!Fit.BITS_MM.contains(bit)) {
      charge.plan(hole.id(), "%d mm is no size of the bit ladder %s", bit, Fit.BITS_MM);
    }
    if (new BorePrice(evidence).flexible(hole, site) && !Fit.FLEXIBLE_MM.contains(bit)) {
      charge.plan(hole.id(), "no flexible bit of %d mm is made, and no other gets there", bit);
    }
    if (bit > site.platedBit()) {
      charge.plan(hole.id(), "%d mm is more than the %d mm allowed here", bit, site.platedBit());
    } else if (bit > site.largestBit() && !hasNailPlate(hole, evidence)) {
      charge.plan(
          hole.id(),
          "%d mm is more than the %d mm allowed without a nail plate, and no finding asks for one",
          bit,
          site.largestBit());
    }
    if (hole.bores() < 1 || hole.bores() > 2) {
      charge.plan(hole.id(), "has %d bores; 1 or 2 can be", hole.bores());
    }
  }

  private static boolean hasNailPlate(Plan.PlannedHole hole, Evidence evidence) {
    return evidence.plan().findings().stream()
        .anyMatch(
            f ->
                f.rule().equals("nail-plate")
                    && f.at().isPresent()
                    && Mm.of(f.at().get()).to(Mm.of(hole.at())) < SAME_PLACE_MM);
  }

  private void judgeUse(
      Plan.PlannedHole hole, TreeSet<String> users, Evidence evidence, Charge charge) {
    if (users.isEmpty()) {
      charge.plan(hole.id(), "no run passes this hole");
    }
    if (!users.equals(new TreeSet<>(hole.runs()))) {
      charge.plan(hole.id(), "lists runs %s, those that pass are %s", hole.runs(), users);
    }
    List<Cable> cables = new ArrayList<>();
    for (Plan.PlannedRun run : evidence.plan().runs()) {
      if (users.contains(run.id())) {
        Cable.find(run.cable()).ifPresent(cables::add);
      }
    }
    if (!BoreFill.fits(cables, hole.diameterMm(), hole.bores())) {
      charge.plan(
          hole.id(),
          "%d bore(s) of %d mm are too small for %s",
          hole.bores(),
          hole.diameterMm(),
          cables.stream().map(Cable::kind).toList());
    }
  }

  private void judgeApart(Evidence evidence, Charge charge) {
    List<Plan.PlannedHole> holes = evidence.plan().holes();
    for (int i = 0; i < holes.size(); i++) {
      Optional<Span> one = axis(holes.get(i), evidence);
      for (int j = i + 1; j < holes.size() && one.isPresent(); j++) {
        Optional<Span> other = axis(holes.get(j), evidence);
        double least = (holes.get(i).diameterMm() + holes.get(j).diameterMm()) / 2.0;
        if (other.isPresent() && one.get().distanceTo(other.get()) < least) {
          charge.plan(
              holes.get(i).id(),
              "runs into hole %s: %.1f mm between axes, %.1f mm needed",
              holes.get(j).id(),
              one.get().distanceTo(other.get()),
              least);
        }
      }
    }
  }

  private static Optional<Span> axis(Plan.PlannedHole hole, Evidence evidence) {
    return evidence.house().findSite(hole.id()).map(s -> new Span(Mm.of(s.a()), Mm.of(s.b())));
  }
}
