package holloway.check;

import holloway.framing.Member;
import holloway.hollow.Hollow;
import holloway.hollow.Site;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A leg lies in its hollow and its cable hits no member. A fished cable is swept with its whole
 * radius; a laid one lies on something, so only its axis must stay out of the members.
 */
final class LegRule implements Rule {
  private static final double SLACK_MM = 1;

  /** Depth of an outlet box and the hand in it: so near its cut-out a cable may touch the board. */
  private static final double BOX_MM = 75;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      if (!at.isLeg() || at.step().path().size() < 2) {
        continue;
      }
      Optional<Hollow> hollow = evidence.hollow(at);
      if (hollow.isEmpty()) {
        charge.step(at, "lies in hollow '%s', which the house does not have", at.hollow());
        continue;
      }
      if (!at.step().hollow().equals(Optional.of(hollow.get().kind().word()))) {
        charge.step(
            at,
            "calls its hollow a %s, it is a %s",
            at.step().hollow().orElse("nothing"),
            hollow.get().kind().word());
      }
      if (hollow.get().kind().isDrawn()) {
        judgeTube(at, hollow.get(), evidence, charge);
        continue;
      }
      judgeInside(at, hollow.get(), charge);
      judgeClear(at, hollow.get(), evidence, charge);
    }
  }

  /** Nobody knows where a tube runs: it is there already, so only its length can be wrong. */
  private void judgeTube(Walk.At at, Hollow hollow, Evidence evidence, Charge charge) {
    double stated = evidence.conduit(hollow).map(c -> c.length().value().toMm()).orElse(0.0);
    if (at.pathMm() + SLACK_MM < stated) {
      charge.step(at, "takes %.0f mm in a tube of %.0f mm", at.pathMm(), stated);
    }
  }

  private void judgeInside(Walk.At at, Hollow hollow, Charge charge) {
    Solid clear = new Solid(hollow.frame(), hollow.clear());
    Optional<Outline> area = hollow.area().map(Outline::new);
    for (Span span : at.spans()) {
      for (Mm p : List.of(span.a(), span.b())) {
        if (!clear.holds(p, SLACK_MM)) {
          charge.step(at, "leaves %s at %s", hollow.id(), p);
          return;
        }
      }
      if (area.isPresent() && !area.get().holds(span, SLACK_MM)) {
        charge.step(
            at, "leaves the outline of %s between %s and %s", hollow.id(), span.a(), span.b());
        return;
      }
    }
  }

  private void judgeClear(Walk.At at, Hollow hollow, Evidence evidence, Charge charge) {
    double radius = evidence.cableRadius(at.run());
    List<Doorway> doorways =
        java.util.stream.Stream.concat(
                doorway(at, at.before(), at.start(), evidence).stream(),
                doorway(at, at.after(), at.end(), evidence).stream())
            .toList();
    for (Span span : at.spans()) {
      for (int i : evidence.grid().near(span, radius)) {
        Member member = evidence.grid().member(i);
        Solid solid = evidence.grid().solid(i);
        boolean hit =
            !hollow.blind()
                ? solid.entered(span, SLACK_MM)
                : solid.distance(span) < radius - SLACK_MM
                    && !excused(span, member, solid, radius, doorways);
        if (hit) {
          charge.step(at, "runs into %s", describe(member));
          return;
        }
      }
    }
  }

  /** What is left of the stretch outside the doorways through this member must be clear of it. */
  private boolean excused(
      Span span, Member member, Solid solid, double radius, List<Doorway> doorways) {
    List<Span> rest = List.of(span);
    for (Doorway d : doorways) {
      if (d.through(member)) {
        rest = rest.stream().flatMap(s -> d.outside(s).stream()).toList();
      }
    }
    return rest.stream().noneMatch(s -> solid.distance(s) < radius - SLACK_MM);
  }

  private Optional<Doorway> doorway(Walk.At leg, Optional<Walk.At> next, Mm at, Evidence evidence) {
    if (next.isEmpty() || evidence.isAccess(next.get())) {
      return Optional.of(new Doorway(at, BOX_MM, Set.of(), true));
    }
    double radius = evidence.cableRadius(leg.run());
    Optional<Site> site = evidence.site(next.get());
    double bore =
        evidence.hole(next.get().step().id()).map(h -> h.diameterMm() / 2.0).orElse(radius);
    return site.map(
        s ->
            new Doorway(at, Math.max(bore, 2 * radius) + SLACK_MM, Set.copyOf(s.pierces()), false));
  }

  private static String describe(Member m) {
    return m.kind().word() + " " + m.id() + " of " + m.owner();
  }

  /**
   * The end of a leg, where the cable comes out of what is pierced there: within {@code reach} of
   * it those members (at a cut-out: the linings) do not count as hit.
   */
  private record Doorway(Mm at, double reach, Set<String> pierced, boolean board) {
    boolean through(Member m) {
      return board ? Finishes.isFinish(m.kind()) : pierced.contains(m.id());
    }

    /** The parts of a stretch that lie outside the ball of the reach. */
    List<Span> outside(Span s) {
      Mm d = s.b().minus(s.a());
      Mm f = s.a().minus(at);
      double aa = d.dot(d);
      double c = f.dot(f) - reach * reach;
      double half = f.dot(d);
      double root = half * half - aa * c;
      if (aa < 1e-12) {
        return c <= 0 ? List.of() : List.of(s);
      }
      if (root <= 0) {
        return List.of(s);
      }
      double t0 = (-half - Math.sqrt(root)) / aa;
      double t1 = (-half + Math.sqrt(root)) / aa;
      java.util.ArrayList<Span> out = new java.util.ArrayList<>();
      if (t0 > 0) {
        out.add(new Span(s.a(), s.at(Math.min(1, t0))));
      }
      if (t1 < 1) {
        out.add(new Span(s.at(Math.max(0, t1)), s.b()));
      }
      return out;
    }
  }
}
