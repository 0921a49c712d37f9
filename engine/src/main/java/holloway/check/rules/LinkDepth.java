package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.house.Conduit;
import holloway.house.Fact;
import holloway.house.RulePlace;
import holloway.limits.EntryFigures;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
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
        Source.us("NEC 830.47(C), for network-powered broadband"),
        "18 in (450 mm) bare, 12 in (300 mm) in a plastic duct");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    TreeSet<String> told = new TreeSet<>();
    for (LinkUse use : LinkUse.of(finished)) {
      if (use.inEarth() && told.add(use.link().name())) {
        says(use.link(), finished).ifPresent(s -> out.add(finding(use, s, finished)));
      }
    }
    return out;
  }

  private Finding finding(LinkUse use, Said said, Finished finished) {
    boolean own = finished.figure(key(use.link()), usual(use.link())).grade() == Figure.Grade.L;
    return say(
        finished.severity(key(use.link()), Severity.PRACTICE),
        Place.of("conduit/" + use.link().name(), use.step().path().get(0)),
        own
            ? finished.figure(key(use.link()), usual(use.link())).from()
            : Source.us(
                "NEC 830.47(C), which is for network-powered broadband; 800, 820 and 770 give no depth"),
        false,
        said);
  }

  /** Words when something is to do: dig, or a depth that is too little or not known. */
  private static Optional<Said> says(Conduit link, Finished finished) {
    Figure figure = finished.figure(key(link), usual(link));
    Length least = figure.length();
    boolean asked = finished.place() == RulePlace.US || figure.grade() == Figure.Grade.L;
    Optional<Length> depth = link.outdoor().flatMap(Conduit.Outdoor::depth).map(Fact::value);
    boolean shallow = asked && depth.map(d -> d.compareTo(least) < 0).orElse(true);
    if (!shallow && !link.dug()) {
      return Optional.empty();
    }
    String has =
        depth.map(d -> "has " + d + " of earth over it").orElse("says nothing of its depth");
    String deep =
        shallow
            ? "Lay it %s deep, less only where the local code allows it, or state its depth (depth: ...)."
                .formatted(least)
            : "";
    String dig =
        link.dug()
            ? "Before anybody digs, have cables, gas and water in the ground located and marked."
            : "";
    return Optional.of(
        new Said(
            "The link %s %s%s.".formatted(link.name(), link.dug() ? "is dug and " : "", has),
            depth.map(Length::toString).orElse("not stated"),
            least + " of earth",
            (deep + " " + dig).strip()));
  }

  private static RuleKey key(Conduit link) {
    return link.kind() == Conduit.Kind.BURIED ? RuleKey.BURIED_CABLE : RuleKey.BURIED_TUBE;
  }

  private static Figure usual(Conduit link) {
    return link.kind() == Conduit.Kind.BURIED ? EntryFigures.BURIED : EntryFigures.BURIED_TUBE;
  }
}
