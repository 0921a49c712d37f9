package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.limits.TimberFigures;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;

/** C2-10, C2-11: a bearing wall's top plate of which more than half is cut. */
final class PlateOverHalf implements PlanRule {
  private static final Source SOURCE =
      TimberFigures.US_PLATE_SHARE.cited().noting(" (worded for pipes and ducts)");

  @Override
  public String id() {
    return "plate-over-half";
  }

  @Override
  public String about() {
    return "A hole of more than half the width of a top plate in a bearing or outer wall wants a"
        + " steel tie over it. Worded for pipes and ducts, so practice for cable.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SOURCE, "50 % of the plate's width");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Finished.Made made : finished.holes()) {
      for (Member m : finished.pierced(made.site())) {
        boolean top =
            m.kind() == MemberKind.TOP_PLATE && !GrommetInSteel.isSteel(m.owner(), finished);
        if (top && bearing(m, finished) && over(m, made)) {
          out.add(finding(made, m));
          break;
        }
      }
    }
    return out;
  }

  private static boolean bearing(Member m, Finished finished) {
    return finished.wall(m.owner()).map(w -> w.bearing().value() || w.isOuter()).orElse(true);
  }

  private static boolean over(Member m, Finished.Made made) {
    return 2_000_000L * made.hole().diameterMm() > m.box().y().length();
  }

  private Finding finding(Finished.Made made, Member m) {
    double share = 1e8 * made.hole().diameterMm() / m.box().y().length();
    return say(
        Severity.PRACTICE,
        Place.of(made.hole().id(), made.hole().at()),
        SOURCE,
        false,
        new Said(
            "%s takes more than half of the top plate, which is %s wide."
                .formatted(made.hole().label(), new Length(m.box().y().length())),
            Legs.number("%.0f %%", share),
            "50 %",
            "Bore two smaller holes apart instead, or put a galvanised tie of 1.37 mm (0.054 in) by"
                + " 38 mm (1-1/2 in) over it, 150 mm (6 in) past the hole each way."));
  }
}
