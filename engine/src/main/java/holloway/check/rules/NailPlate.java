package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.hollow.Site;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.limits.RulePack;
import holloway.limits.TimberFigures;
import holloway.units.Length;
import java.util.List;

/**
 * B17, B19: a hole near a face of a stud or plate wants steel in front of it. Practice for data.
 */
final class NailPlate implements PlanRule {
  private static final List<MemberKind> IN_WALLS =
      List.of(
          MemberKind.TOP_PLATE,
          MemberKind.BOTTOM_PLATE,
          MemberKind.STUD,
          MemberKind.KING_STUD,
          MemberKind.JACK_STUD,
          MemberKind.CRIPPLE,
          MemberKind.POST,
          MemberKind.FIRE_BLOCK);

  @Override
  public String id() {
    return "nail-plate";
  }

  @Override
  public String about() {
    return "A hole nearer than 1-1/4 in (32 mm) to the face of a stud or plate should have a steel"
        + " plate in front of it. Law for power wiring, good practice for data cable.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "practice",
        TimberFigures.PLATE_EDGE.from().noting(" (asked for power wiring)"),
        "1-1/4 in (32 mm)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return finished.holes().stream()
        .filter(m -> needed(m, finished))
        .map(
            m ->
                say(
                    finished.severity(RuleKey.NAIL_PLATE_EDGE, Severity.PRACTICE),
                    Place.of(m.hole().id(), m.hole().at()),
                    source(finished),
                    false,
                    new Said(
                        m.hole().label() + " lies near the face of the wood.",
                        left(m, finished),
                        finished.figure(RuleKey.NAIL_PLATE_EDGE, TimberFigures.PLATE_EDGE).said(),
                        "Put a steel plate, 1.6 mm (1/16 in) or thicker, on each face of the wood"
                            + " that is nearer than that to the hole, so that no screw finds the"
                            + " cables; where the wall stays closed, mark the place and drive"
                            + " no nail or screw there, nor through the skirting board.")))
        .toList();
  }

  /** Whose figure it is: a person's own, or one asked for power wiring. */
  static Source source(Finished finished) {
    Figure figure = finished.figure(RuleKey.NAIL_PLATE_EDGE, TimberFigures.PLATE_EDGE);
    boolean own = figure.grade() == Figure.Grade.L;
    return own ? figure.from() : figure.from().noting(" (asked for power wiring)");
  }

  /** The least wood that the hole leaves in what it pierces. */
  private static String left(Finished.Made made, Finished finished) {
    Length bit = Length.mm((long) made.hole().diameterMm());
    return finished.pierced(made.site()).stream()
        .filter(m -> IN_WALLS.contains(m.kind()) && !GrommetInSteel.isSteel(m.owner(), finished))
        .map(m -> edge(m, made.site(), bit))
        .min(Length::compareTo)
        .map(e -> left(Math.max(0, e.toMm()), finished))
        .orElse("a hole wider than the place allows");
  }

  /** A tenth of a millimetre where whole ones would look like the limit itself. */
  private static String left(double mm, Finished finished) {
    double least =
        finished.figure(RuleKey.NAIL_PLATE_EDGE, TimberFigures.PLATE_EDGE).length().toMm();
    boolean close = Math.round(mm) == Math.round(least);
    return Legs.number(close ? "%.1f mm" : "%.0f mm", mm);
  }

  private static boolean needed(Finished.Made made, Finished finished) {
    if (made.hole().diameterMm() > made.site().largestBit()) {
      return true;
    }
    RulePack pack = finished.pack();
    Length bit = Length.mm((long) made.hole().diameterMm());
    return finished.pierced(made.site()).stream()
        .filter(m -> IN_WALLS.contains(m.kind()) && !GrommetInSteel.isSteel(m.owner(), finished))
        .anyMatch(
            m ->
                pack.needsNailPlate(
                    new Length(m.box().y().length()), bit, edge(m, made.site(), bit)));
  }

  /** Wood between the hole and the nearer face of the wall's framing. */
  static Length edge(Member m, Site site, Length bit) {
    long t = m.frame().toLocal(site.middle()).y();
    return new Length(Math.min(t - m.box().y0(), m.box().y1() - t) - bit.nm() / 2);
  }
}
