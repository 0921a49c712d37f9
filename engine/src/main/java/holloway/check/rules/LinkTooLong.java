package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.limits.CablingFigures;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.units.Length;
import java.util.List;

/** A1-1 to A1-3: a copper run, cut length, against the permanent link of the cabling standard. */
final class LinkTooLong implements PlanRule {
  /** Loss of a stranded cord over that of the link, 24 AWG. */
  private static final double CORD_LOSS = 0.2;

  @Override
  public String id() {
    return "link-too-long";
  }

  @Override
  public String about() {
    return "A four-pair cable between panel and outlet, slack and all, and the channel that it makes"
        + " with its cords, against the lengths that every speed is made for.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "standard", CablingFigures.LINK_MOST.cited(), "90 m, and 100 m with 10 m of cords");
  }

  @Override
  public List<Finding> find(Finished finished) {
    Figure most = finished.figure(RuleKey.LINK, CablingFigures.LINK_MOST);
    return Legs.of(finished.plan()).stream()
        .filter(r -> r.copperPairs() && r.run().cableM() > link(most, finished) + 1e-9)
        .map(r -> finding(r, most, finished))
        .toList();
  }

  /** With cords of more than 10 m the link has to be shorter (A1-4, cords of 24 AWG). */
  private static double link(Figure most, Finished finished) {
    double cords = cords(finished);
    double left = CablingFigures.CORD_SUM.value() - (1 + CORD_LOSS) * cords;
    boolean usual = cords <= CablingFigures.CORDS_MOST.value();
    return usual ? most.length().toMetres() : Math.min(most.length().toMetres(), left);
  }

  private static double cords(Finished finished) {
    return finished.job().cords().map(Length::toMetres).orElse(CablingFigures.CORDS_MOST.value());
  }

  private Finding finding(Legs r, Figure most, Finished finished) {
    double cords = cords(finished);
    double link = link(most, finished);
    String assumed = finished.job().cords().isPresent() ? "" : ", which are assumed,";
    double m = r.run().cableM();
    String what =
        "%s is cut to %s; with %s of cords%s the channel is %s."
            .formatted(
                r.run().id(), Legs.metres(m), Legs.metres(cords), assumed, Legs.metres(m + cords));
    String remedy =
        "Pull fibre instead, or put a switch between; a link of more than "
            + Legs.number("%.0f m", link)
            + " may not carry its speed.";
    return say(
        finished.severity(RuleKey.LINK, Severity.STANDARD),
        r.place(),
        most.cited(),
        true,
        new Said(what, Legs.metres(m), Legs.metres(link), remedy));
  }
}
