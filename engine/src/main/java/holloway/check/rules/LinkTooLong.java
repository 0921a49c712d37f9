package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.limits.CablingFigures;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import java.util.List;

/** A1-1 to A1-3: a copper run, cut length, against the permanent link of the cabling standard. */
final class LinkTooLong implements PlanRule {
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
        .filter(r -> r.copperPairs() && r.run().cableM() > most.length().toMetres())
        .map(r -> finding(r, most, finished.severity(RuleKey.LINK, Severity.STANDARD)))
        .toList();
  }

  private Finding finding(Legs r, Figure most, Severity severity) {
    double m = r.run().cableM();
    String what =
        "%s is cut to %s; with %s of cords the channel is %s."
            .formatted(
                r.run().id(),
                Legs.metres(m),
                Legs.metres(CablingFigures.CORDS_MOST.value()),
                Legs.metres(m + CablingFigures.CORDS_MOST.value()));
    String remedy =
        "Pull fibre instead, or put a switch between; a link of more than "
            + Legs.number("%.0f m", most.length().toMetres())
            + " may not carry its speed.";
    return say(
        severity,
        r.place(),
        most.cited(),
        true,
        new Said(what, Legs.metres(m), Legs.metres(most.length().toMetres()), remedy));
  }
}
