package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.house.Conduit;
import holloway.house.Fact;
import holloway.house.RulePlace;
import holloway.limits.EntryFigures;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * B32: no depth is set for data cable by articles 800 and 770; the table of article 830 is good
 * practice. Whatever is dug, what lies there already is asked for first.
 */
final class LinkDepth implements PlanRule {
  @Override
  public String id() {
    return "depth-between-buildings";
  }

  @Override
  public String about() {
    return "A buried cable or duct lies as deep as the one table of the code that gives a depth asks (450"
        + " mm bare, 300 mm in a plastic duct), which is not worded for data cable; utilities are located"
        + " before anybody digs.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "practice",
        "NEC 830.47(C), for network-powered broadband",
        "18 in (450 mm) bare, 12 in (300 mm) in a plastic duct");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    TreeSet<String> told = new TreeSet<>();
    for (LinkUse use : LinkUse.of(finished)) {
      if (use.inEarth() && told.add(use.link().name())) {
        says(use.link(), finished.place()).ifPresent(t -> out.add(finding(use, t)));
      }
    }
    return out;
  }

  private Finding finding(LinkUse use, String text) {
    return new Finding(
        id(),
        Severity.PRACTICE,
        Place.of("conduit/" + use.link().name(), use.step().path().get(0)),
        "NEC 830.47(C), which is for network-powered broadband; 800, 820 and 770 give no depth",
        text);
  }

  /** Words when something is to do: dig, or a depth that is too little or not known. */
  private static Optional<String> says(Conduit link, RulePlace place) {
    Length least = least(link);
    Optional<Length> depth = link.outdoor().flatMap(Conduit.Outdoor::depth).map(Fact::value);
    boolean shallow = place == RulePlace.US && depth.map(d -> d.compareTo(least) < 0).orElse(true);
    if (!shallow && !link.dug()) {
      return Optional.empty();
    }
    String dig =
        link.dug()
            ? " Before anybody digs, have cables, gas and water in the ground located and marked."
            : "";
    if (!shallow) {
      return Optional.of("The link %s is dug.%s".formatted(link.name(), dig));
    }
    String has =
        depth
            .map(d -> "has " + d + " of earth over it")
            .orElse("says nothing of its depth (depth: ...)");
    return Optional.of(
        "The link %s %s; %s is good practice here, less only where the local code allows it.%s"
            .formatted(link.name(), has, least, dig));
  }

  private static Length least(Conduit link) {
    return link.kind() == Conduit.Kind.BURIED
        ? EntryFigures.BURIED.length()
        : EntryFigures.BURIED_TUBE.length();
  }
}
