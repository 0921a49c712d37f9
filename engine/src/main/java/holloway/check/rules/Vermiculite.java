package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.house.Fill;
import holloway.house.Roof;
import holloway.house.RulePlace;
import java.util.List;

/** E14, J16: loose fill of 1919 to 1990 in an attic that the plan goes into. */
final class Vermiculite implements PlanRule {
  private static final int FROM = 1919;
  private static final int TO = 1990;

  @Override
  public String id() {
    return "vermiculite";
  }

  @Override
  public String about() {
    return "Loose or unknown fill in an attic that the plan goes into, in a house of the years in"
        + " which vermiculite with asbestos was sold.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", "US EPA and ATSDR advice", "built 1919 to 1990, loose fill");
  }

  @Override
  public List<Finding> find(Finished finished) {
    int built = finished.placed().house().built().value();
    boolean used = finished.plan().totals().zones().stream().anyMatch(z -> z.contains("attic"));
    boolean era = built >= FROM && built <= TO && finished.place() != RulePlace.UK;
    return finished.placed().house().roofs().stream()
        .filter(r -> used && era && goesInto(r, finished))
        .filter(r -> r.fill() == Fill.LOOSE || r.fill() == Fill.UNKNOWN)
        .map(r -> finding(r, built))
        .toList();
  }

  /** Where the plan names the attics that somebody is set up in, those alone. */
  private static boolean goesInto(Roof r, Finished finished) {
    List<String> setUp =
        finished.plan().works().stream()
            .map(w -> w.id())
            .filter(id -> id.startsWith("set-up/attic/"))
            .toList();
    return setUp.isEmpty()
        || setUp.stream().anyMatch(id -> id.startsWith("set-up/attic/" + r.name()));
  }

  private Finding finding(Roof r, int built) {
    return say(
        Severity.PRACTICE,
        Place.of(r.name()),
        Source.us("US EPA and ATSDR advice").and(Source.anywhere("years: common practice")),
        false,
        new Said(
            "%s has loose or unknown fill and the house is of %d.".formatted(r.name(), built),
            "built " + built,
            "built before 1919 or after 1990",
            "Look from the hatch first: grey-brown pebbles are vermiculite, taken to hold asbestos."
                + " Then stay out and leave that attic to trained people."));
  }
}
