package holloway.check;

import holloway.catalog.Cable;
import holloway.framing.Member;
import holloway.hollow.Site;
import holloway.house.Found;
import holloway.plan.Plan;
import java.util.List;
import java.util.Optional;

/** A crossing is known, stands where it says, joins its two hollows, and bores nothing unsaid. */
final class CrossingRule implements Rule {
  private static final double AXIS_MM = 1;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      if (!at.isCrossing() || at.step().path().size() < 2) {
        continue;
      }
      Optional<Site> site = evidence.site(at);
      if (site.isPresent()) {
        judgeSite(at, site.get(), evidence, charge);
      } else {
        judgeAccess(at, evidence, charge);
      }
    }
  }

  private void judgeSite(Walk.At at, Site site, Evidence evidence, Charge charge) {
    Mm a = Mm.of(site.a());
    Mm b = Mm.of(site.b());
    boolean forward = at.start().to(a) <= AXIS_MM && at.end().to(b) <= AXIS_MM;
    boolean backward = at.start().to(b) <= AXIS_MM && at.end().to(a) <= AXIS_MM;
    if (!forward && !backward || Math.abs(at.pathMm() - a.to(b)) > 2 * AXIS_MM) {
      charge.step(at, "goes %s to %s, the crossing's axis is %s to %s", at.start(), at.end(), a, b);
      return;
    }
    boolean turned = !forward;
    judgeNeighbour(at, at.before(), turned ? site.hollowB() : site.hollowA(), evidence, charge);
    judgeNeighbour(at, at.after(), turned ? site.hollowA() : site.hollowB(), evidence, charge);
    judgeHole(at, site, evidence, charge);
  }

  private void judgeNeighbour(
      Walk.At at, Optional<Walk.At> leg, String hollow, Evidence evidence, Charge charge) {
    if (leg.isPresent()
        && leg.get().isLeg()
        && !leg.get().hollow().equals(hollow)
        && !ChannelRule.opensOnto(leg.get(), hollow, evidence)) {
      charge.step(
          at,
          "opens into %s, but step %d lies in %s",
          hollow,
          leg.get().index() + 1,
          leg.get().hollow());
    }
  }

  private void judgeHole(Walk.At at, Site site, Evidence evidence, Charge charge) {
    Optional<Plan.PlannedHole> hole = evidence.hole(site.id());
    if (site.made()) {
      if (hole.isPresent()) {
        charge.step(at, "is an existing opening, yet planned as a hole to make");
      }
      judgeBore(at, site, 2 * evidence.cableRadius(at.run()), evidence, charge);
      return;
    }
    Optional<Found.HoleMade> made = made(site, evidence);
    if (hole.isEmpty() && made.isPresent()) {
      judgeMade(at, site, made.get(), evidence, charge);
      return;
    }
    if (hole.isEmpty()) {
      charge.step(at, "passes a hole that is not among the plan's holes");
      return;
    }
    if (!at.step().label().equals(Optional.of(hole.get().label()))) {
      charge.step(
          at,
          "is labelled %s, the hole is %s",
          at.step().label().orElse("not"),
          hole.get().label());
    }
    judgeBore(at, site, hole.get().diameterMm(), evidence, charge);
  }

  private static Optional<Found.HoleMade> made(Site site, Evidence evidence) {
    return evidence.house().framed().placed().house().found().stream()
        .filter(f -> f instanceof Found.HoleMade m && m.id().equals(site.id()))
        .map(f -> (Found.HoleMade) f)
        .findFirst();
  }

  /** A hole that is there already is no work, but it holds no more than its own size. */
  private void judgeMade(
      Walk.At at, Site site, Found.HoleMade made, Evidence evidence, Charge charge) {
    double diameter = made.diameter().toMm();
    List<Cable> cables =
        evidence.plan().runs().stream()
            .filter(r -> r.steps().stream().anyMatch(s -> s.id().equals(site.id())))
            .flatMap(r -> Cable.find(r.cable()).stream())
            .toList();
    if (!BoreFill.fits(cables, diameter, 1)) {
      charge.step(at, "the hole found there, %.0f mm, is too small for its cables", diameter);
    }
    judgeBore(at, site, diameter, evidence, charge);
  }

  private void judgeBore(Walk.At at, Site site, double diameter, Evidence evidence, Charge charge) {
    Span axis = new Span(Mm.of(site.a()), Mm.of(site.b()));
    if (axis.length() < AXIS_MM || diameter <= 0) {
      return;
    }
    Bored bored = new Bored(axis, diameter);
    for (int i : evidence.grid().near(axis, diameter / 2)) {
      Member member = evidence.grid().member(i);
      if (!site.pierces().contains(member.id()) && bored.hits(evidence.grid().solid(i))) {
        charge.step(
            at,
            "a %.0f mm bore there cuts %s %s, which is not among what it pierces",
            diameter,
            member.kind().word(),
            member.id());
      }
    }
  }

  private void judgeAccess(Walk.At at, Evidence evidence, Charge charge) {
    if (ChannelRule.joinsSurface(at, evidence) && at.pathMm() <= AXIS_MM) {
      return;
    }
    if (!evidence.isAccess(at)) {
      charge.step(at, "is neither a crossing of the house nor an opened patch, access or cut-out");
      return;
    }
    boolean cutOut = at.step().id().endsWith("/cut-out");
    if (!cutOut && at.pathMm() > AXIS_MM) {
      charge.step(at, "an access is one place, its path is %.1f mm long", at.pathMm());
    }
    if (at.before().isPresent() && at.after().isPresent()) {
      judgeSameHollow(at, evidence, charge);
    }
  }

  /** An access that no wall lies in leads from a hollow into itself or to where a hand stands. */
  private void judgeSameHollow(Walk.At at, Evidence evidence, Charge charge) {
    Walk.At before = at.before().get();
    Walk.At after = at.after().get();
    boolean handed =
        evidence.hollow(before).map(h -> !h.blind()).orElse(false)
            || evidence.hollow(after).map(h -> !h.blind()).orElse(false);
    if (!before.hollow().equals(after.hollow()) && !handed) {
      charge.step(
          at, "joins %s and %s, which no crossing joins here", before.hollow(), after.hollow());
    }
  }
}
