package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.framing.Member;
import holloway.hollow.Site;
import holloway.house.Timber;
import holloway.plan.Plan;
import holloway.survey.WallNames;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** The edge of a knockout cuts jackets, and no magnet pulls a rod along steel. */
final class GrommetInSteel implements PlanRule {
  private static final Source SOURCE =
      Source.us("NEC 300.4(B)(1) asks it for power cable (from memory)")
          .and(Source.anywhere("common practice for data"));

  @Override
  public String id() {
    return "grommet-in-steel";
  }

  @Override
  public String about() {
    return "Cable through a knockout of a steel stud needs a grommet in it. Law for power cable, good"
        + " practice for data cable; a magnet finds and pulls nothing in such a wall.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SOURCE, "a grommet in each knockout");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    TreeSet<String> seen = new TreeSet<>();
    for (Plan.PlannedRun run : finished.plan().runs()) {
      for (Plan.PlanStep s : run.steps()) {
        finished
            .house()
            .findSite(s.id())
            .filter(x -> isKnockout(x, finished) && seen.add(x.id()))
            .ifPresent(x -> out.add(finding(x, finished)));
      }
    }
    return out;
  }

  private static boolean isKnockout(Site site, Finished finished) {
    return site.made()
        && finished.pierced(site).stream().map(Member::owner).anyMatch(o -> isSteel(o, finished));
  }

  static boolean isSteel(String wall, Finished finished) {
    return finished
        .wall(wall)
        .filter(w -> w.studs().value().kind() == Timber.Kind.STEEL)
        .isPresent();
  }

  private Finding finding(Site site, Finished finished) {
    return say(
        Severity.PRACTICE,
        Place.of(site.id(), site.middle()),
        SOURCE,
        false,
        new Said(
            "A run goes through a knockout in the %s, which has steel studs."
                .formatted(named(site, finished)),
            "a bare edge",
            "a grommet",
            "Snap a plastic grommet into the knockout before the cable goes through: its edge cuts"
                + " jackets. A magnet is no help in this wall; use a rod or a hook."
                + (site.assumed()
                    ? " Its height is the usual one: look before you rely on it."
                    : "")));
  }

  private static String named(Site site, Finished finished) {
    return finished.pierced(site).stream()
        .flatMap(m -> finished.wall(m.owner()).stream())
        .findFirst()
        .map(w -> WallNames.at(w, w.frame().toLocal(site.middle()).x()))
        .orElse("wall");
  }
}
