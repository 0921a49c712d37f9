package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import java.util.List;
import java.util.Set;

/** E9: a hole to the outside lets water in unless it slopes and the cable drips before it. */
final class OuterWallHole implements PlanRule {
  private static final String THROUGH =
      "Bore it sloping down to the outside, line it with a bushing, bring the cable to it from below"
          + " with a drip loop, and seal round it with silicone.";

  /** What bridges a cavity must not lead water inwards over it. */
  private static final String THROUGH_BOTH =
      "Bore it sloping down to the outside, line it with one sleeve right through both leaves, so"
          + " that no rubble and no water gets into the cavity along it, bring the cable to it from"
          + " below with a drip loop, and seal round it with silicone.";

  private static final Set<HollowKind> OUTDOORS =
      Set.of(HollowKind.OUTSIDE_FACE, HollowKind.PORCH_VOID, HollowKind.TRENCH);

  @Override
  public String id() {
    return "outer-wall-hole";
  }

  @Override
  public String about() {
    return "A hole to the outside slopes down outwards, the cable comes to it from below, and it is"
        + " sealed.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", Source.PRACTICE, "slopes down outwards, drip loop, sealed");
  }

  @Override
  public List<Finding> find(Finished finished) {
    return finished.holes().stream()
        .filter(m -> isOutside(finished, m.site()))
        .map(
            m ->
                say(
                    Severity.PRACTICE,
                    Place.of(m.hole().id(), m.hole().at()),
                    Source.PRACTICE,
                    false,
                    new Said(
                        m.hole().label() + " goes through to the outside.",
                        SealAtPlate.bored(m),
                        "slopes down outwards, sealed",
                        isCavity(m.site()) ? THROUGH_BOTH : THROUGH)))
        .toList();
  }

  /** It meets a leaf of a cavity wall. */
  private static boolean isCavity(Site site) {
    return site.pierces().stream().anyMatch(m -> m.contains("-leaf-"));
  }

  /** From indoors to outdoors; one from the open into the void over a porch stays outdoors. */
  static boolean isOutside(Finished finished, Site site) {
    return List.of(site.hollowA(), site.hollowB()).stream()
            .filter(
                h ->
                    finished
                        .house()
                        .findHollow(h)
                        .map(x -> OUTDOORS.contains(x.kind()))
                        .orElse(false))
            .count()
        == 1;
  }
}
