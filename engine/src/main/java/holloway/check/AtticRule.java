package holloway.check;

import holloway.framing.Attic;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.plan.Plan;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A leg in an attic lies where a person under these slopes can lay it, and not over a room whose
 * ceiling is vaulted; nothing drops from an attic into a wall of such a room.
 */
final class AtticRule implements Rule {
  private static final double SLACK_MM = 1;

  /** Plates of an attic and the ceiling of a room under it lie within this of each other. */
  private static final double CEILING_MM = 300;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      Optional<Attic> attic = at.isLeg() ? attic(at.hollow(), evidence) : Optional.empty();
      if (attic.isPresent()) {
        judgeVaults(at, attic.get(), evidence, charge);
        if (attic.get().roof().knees().isEmpty()) {
          judgeReach(at, attic.get(), evidence, charge);
        }
      }
    }
    evidence.plan().holes().forEach(h -> judgeHole(h, evidence, charge));
  }

  private static Optional<Attic> attic(String hollow, Evidence evidence) {
    return evidence.house().framed().attics().stream()
        .filter(a -> hollow.equals("attic/" + a.id()))
        .findFirst();
  }

  private static List<PlacedRoom> vaulted(Evidence evidence) {
    return evidence.house().framed().placed().rooms().stream()
        .filter(r -> r.room().vaulted())
        .toList();
  }

  private static void judgeVaults(Walk.At at, Attic attic, Evidence evidence, Charge charge) {
    for (PlacedRoom room : vaulted(evidence)) {
      boolean level = Math.abs(room.ceilingZ() - attic.plateZ()) / 1e6 < CEILING_MM;
      Outline outline = new Outline(room.outline());
      if (level && at.spans().stream().anyMatch(s -> outline.entered(s, SLACK_MM))) {
        charge.step(at, "lies over the %s, whose ceiling is vaulted", room.name());
        return;
      }
    }
  }

  private static void judgeReach(Walk.At at, Attic attic, Evidence evidence, Charge charge) {
    Slopes slopes = new Slopes(attic);
    for (Span span : at.spans()) {
      for (Mm p : List.of(span.a(), span.b())) {
        double beyond = slopes.beyondArm(p, evidence.house().framed().attics());
        if (beyond > SLACK_MM && ways(attic, evidence).noneMatch(w -> w.reaches(p))) {
          charge.step(
              at, "is laid at %s, %.0f mm further than an arm reaches under this roof", p, beyond);
          return;
        }
      }
    }
  }

  /** What other roofs that run onto this one leave of height over its joists. */
  private static Stream<AtticWay> ways(Attic attic, Evidence evidence) {
    return evidence.house().framed().attics().stream()
        .flatMap(
            a ->
                a.roof().joins().stream()
                    .filter(j -> j.to().equals(attic.roof().name()))
                    .map(j -> new AtticWay(a, attic, j)));
  }

  private static void judgeHole(Plan.PlannedHole hole, Evidence evidence, Charge charge) {
    Optional<Site> site = evidence.house().findSite(hole.id());
    if (site.isEmpty()) {
      return;
    }
    List<Hollow> ends =
        List.of(site.get().hollowA(), site.get().hollowB()).stream()
            .flatMap(h -> evidence.house().findHollow(h).stream())
            .toList();
    if (ends.stream().noneMatch(h -> h.kind() == HollowKind.ATTIC)) {
      return;
    }
    Mm axis = Mm.of(site.get().middle());
    for (Wall w : evidence.house().framed().placed().walls()) {
      if (ends.stream().anyMatch(h -> h.owner().equals(w.id()))) {
        double thick = w.thickness() / 1e6;
        vaulted(evidence).stream()
            .filter(r -> w.faces().stream().anyMatch(f -> f.room().equals(r.name())))
            .filter(r -> new Outline(r.outline()).near(axis, thick))
            .forEach(
                r ->
                    charge.plan(
                        hole.id(),
                        "drops into a wall of the %s, whose ceiling is vaulted",
                        r.name()));
      }
    }
  }
}
