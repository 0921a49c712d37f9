package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.limits.CablingFigures;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.plan.Plan;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** A2-15: cable that hangs below joists, on a wall outside or over loose tiles is held up. */
final class SupportSpacing implements PlanRule {
  private static final List<HollowKind> HANGS =
      List.of(HollowKind.CRAWLSPACE, HollowKind.OUTSIDE_FACE, HollowKind.LOWERED_CEILING);

  @Override
  public String id() {
    return "support-spacing";
  }

  @Override
  public String about() {
    return "Cable laid under a floor, along the outside or over a lowered ceiling hangs on hooks or"
        + " clips; the number is worked out. On an attic's joists it lies.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", CablingFigures.SUPPORTS.cited(), "every 1.2 m (4 ft)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Map<String, Plan.PlanStep> longest = new TreeMap<>();
    Map<String, Set<Legs>> there = new TreeMap<>();
    for (Legs r : Legs.of(finished.plan())) {
      for (HollowKind kind : HANGS) {
        for (Plan.PlanStep s : r.in(kind)) {
          longest.merge(s.id(), s, (a, b) -> a.m() >= b.m() ? a : b);
          there.computeIfAbsent(s.id(), k -> new LinkedHashSet<>()).add(r);
        }
      }
    }
    Figure most = finished.figure(RuleKey.SUPPORTS, CablingFigures.SUPPORTS);
    Severity how = finished.severity(RuleKey.SUPPORTS, Severity.PRACTICE);
    return longest.values().stream()
        .filter(s -> s.m() > most.length().toMetres())
        .map(s -> finding(s, List.copyOf(there.get(s.id())), most, how))
        .toList();
  }

  private Finding finding(Plan.PlanStep s, List<Legs> runs, Figure figure, Severity how) {
    double most = figure.length().toMetres();
    int hooks = (int) Math.ceil(s.m() / most) - 1;
    return say(
        how,
        Place.of(s.id(), Legs.start(s)),
        figure.cited(),
        false,
        new Said(
            "%s %s %s for %s%s."
                .formatted(
                    Legs.named(runs),
                    runs.size() == 1 ? "hangs" : "hang",
                    where(s),
                    runs.size() == 1 ? "" : "up to ",
                    Legs.metres(s.m())),
            Legs.metres(s.m()),
            Legs.number("%.2f m", most),
            "Hold it with at least %d hooks or clips, none driven into the jacket."
                .formatted(hooks)));
  }

  private static String where(Plan.PlanStep s) {
    String kind = s.hollow().orElse("");
    if (kind.equals(HollowKind.OUTSIDE_FACE.word())) {
      return "along the outside";
    }
    return kind.equals(HollowKind.CRAWLSPACE.word())
        ? "in the crawlspace"
        : "over a lowered ceiling";
  }
}
