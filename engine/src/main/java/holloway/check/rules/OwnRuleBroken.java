package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Source;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.limits.LocalRules;
import holloway.limits.OwnRule;
import holloway.plan.Plan;
import holloway.survey.OnWall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Rules that a rule file of one's own states beside the figures of its pack. */
final class OwnRuleBroken implements PlanRule {
  @Override
  public String id() {
    return "own-rule-broken";
  }

  @Override
  public String about() {
    return "A rule that one's own rule file states beside figures: members that are not bored, spaces"
        + " that a cable may not lie in, things that a hole keeps off. The planner offers nothing"
        + " against them.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "as the rule file says, practice unless said",
        "the clause that the rule file names",
        "as the rule file says");
  }

  @Override
  public List<Finding> find(Finished finished) {
    LocalRules own = finished.placed().house().ownRules();
    List<Finding> out = new ArrayList<>();
    for (Finished.Made made : finished.holes()) {
      bores(made, own, finished, out);
      own.own(OwnRule.KeepOff.class).forEach(r -> keepOff(made, r, finished).ifPresent(out::add));
    }
    for (Legs r : Legs.of(finished.plan())) {
      spaces(r, own, finished, out);
    }
    return out;
  }

  private void bores(Finished.Made made, LocalRules own, Finished finished, List<Finding> out) {
    Length bit = Length.mm((long) made.hole().diameterMm());
    for (Member m : finished.pierced(made.site())) {
      String word = m.kind().word();
      for (OwnRule.Bore r : own.own(OwnRule.Bore.class).toList()) {
        boolean speaks = OwnRule.part(word).map(r.parts()::contains).orElse(false);
        if (speaks && bit.compareTo(r.widest()) > 0) {
          String what = "%s goes through the %s.".formatted(made.hole().label(), finished.named(m));
          String limit = r.widest().nm() == 0 ? "no hole" : "at most " + r.widest();
          String usual = "Do not bore it; plan again without it.";
          out.add(
              finding(r, Place.of(made.hole().id(), made.hole().at()), what, bit, limit, usual));
        }
      }
    }
  }

  private void spaces(Legs run, LocalRules own, Finished finished, List<Finding> out) {
    Optional<OwnRule.Listed> rank = finished.job().rank(run.run().cable());
    for (OwnRule.Space space : OwnRule.Space.values()) {
      List<Plan.PlanStep> legs = run.in(HollowKind.valueOf(space.name()));
      Optional<OwnRule.Room> rule =
          legs.isEmpty() ? Optional.empty() : own.againstSpace(space, rank);
      rule.ifPresent(
          r -> {
            String word = HollowKind.valueOf(space.name()).word();
            String limit = r.unless().map(l -> "listed " + OwnRule.word(l)).orElse("no cable");
            String what =
                "%s (%s) lies in a %s.".formatted(run.run().id(), run.run().cable(), word);
            out.add(
                say(
                    r.words().severity(),
                    Place.of(legs.get(0).id(), Legs.start(legs.get(0))),
                    Source.own(r.words().source()),
                    true,
                    new Said(
                        what,
                        rank.map(l -> "listed " + OwnRule.word(l)).orElse("no listing stated"),
                        limit,
                        r.words().remedy().orElse("Take another way, or a cable listed for it."))));
          });
    }
  }

  /** A thing that a rule names, and how far it is from a hole's axis. */
  private record Near(String word, Length away) {}

  private Optional<Finding> keepOff(Finished.Made made, OwnRule.KeepOff r, Finished finished) {
    Place at = Place.of(made.hole().id(), made.hole().at());
    return Stream.concat(seen(made, r, finished), stated(made, r, finished))
        .min(Comparator.comparing(Near::away).thenComparing(Near::word))
        .filter(n -> n.away().compareTo(r.least()) < 0)
        .map(
            n ->
                finding(
                    r,
                    at,
                    "%s is bored near a %s.".formatted(made.hole().label(), n.word()),
                    n.away(),
                    "at least " + r.least(),
                    "Do not bore it; plan again without it."));
  }

  /** Things in rooms, at their middle, through the wall's framing. */
  private static Stream<Near> seen(Finished.Made made, OwnRule.KeepOff r, Finished finished) {
    return finished.placed().house().things().stream()
        .filter(t -> r.things().contains(OwnRule.word(t.kind())))
        .flatMap(
            t ->
                finished
                    .placed()
                    .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
                    .stream()
                    .map(s -> new Near(OwnRule.word(t.kind()), away(s, made))));
  }

  /** Obstacles as they stand in walls and voids. */
  private static Stream<Near> stated(Finished.Made made, OwnRule.KeepOff r, Finished finished) {
    return finished.house().framed().members().stream()
        .filter(m -> m.kind() == MemberKind.OBSTACLE)
        .flatMap(
            m ->
                r.things().stream()
                    .filter(w -> m.id().matches(".*/obstacle-\\d+-" + w))
                    .map(w -> new Near(w, away(m.frame(), m.box(), made))));
  }

  private static Length away(OnWall s, Finished.Made made) {
    Interval deep = s.wall().core();
    Box box = new Box(s.s(), s.s(), deep.lo(), deep.hi(), s.z(), s.z());
    return away(s.wall().frame(), box, made);
  }

  private static Length away(Frame frame, Box box, Finished.Made made) {
    Point3 a = frame.toLocal(made.site().a());
    Point3 b = frame.toLocal(made.site().b());
    double x = gap(a.x(), b.x(), box.x());
    double y = gap(a.y(), b.y(), box.y());
    double z = gap(a.z(), b.z(), box.z());
    return new Length((long) Math.ceil(Math.sqrt(x * x + y * y + z * z)));
  }

  private static double gap(long p, long q, Interval of) {
    return Math.max(0, Math.max(of.lo() - Math.max(p, q), Math.min(p, q) - of.hi()));
  }

  private Finding finding(
      OwnRule r, Place at, String what, Length measured, String limit, String usual) {
    return say(
        r.words().severity(),
        at,
        Source.own(r.words().source()),
        true,
        new Said(what, measured.toString(), limit, r.words().remedy().orElse(usual)));
  }
}
