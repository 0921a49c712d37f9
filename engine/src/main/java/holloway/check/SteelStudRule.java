package holloway.check;

import holloway.catalog.Cable;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.hollow.Site;
import holloway.house.Timber;
import holloway.limits.SteelPractice;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Steel studs are passed through their knockouts alone, and a knockout holds no more than its size.
 */
final class SteelStudRule implements Rule {
  private static final double HEIGHT_MM = 5;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Map<String, Wall> steel = new TreeMap<>();
    evidence.house().framed().placed().walls().stream()
        .filter(w -> w.isFramed() && w.studs().value().kind() == Timber.Kind.STEEL)
        .forEach(w -> steel.put(w.id(), w));
    if (steel.isEmpty()) {
      return;
    }
    Map<String, List<Cable>> through = new TreeMap<>();
    for (Walk.At at : evidence.steps()) {
      if (!at.isCrossing() || at.step().path().size() < 2) {
        continue;
      }
      Optional<Wall> wall = studWall(at, steel, evidence);
      if (wall.isPresent()) {
        judge(at, wall.get(), evidence, charge);
        Cable.find(at.run().cable())
            .ifPresent(c -> through.computeIfAbsent(at.step().id(), k -> new ArrayList<>()).add(c));
      }
    }
    through.forEach(
        (id, cables) -> {
          if (!BoreFill.fits(cables, SteelPractice.KNOCKOUT_MM, 1)) {
            charge.plan(id, "%d cables are too many for one knockout", cables.size());
          }
        });
  }

  /** The steel wall whose stud a crossing passes, found by its path and not by what it says. */
  private static Optional<Wall> studWall(Walk.At at, Map<String, Wall> steel, Evidence evidence) {
    for (Span span : at.spans()) {
      for (int i : evidence.grid().near(span, 1)) {
        Member m = evidence.grid().member(i);
        boolean stud =
            m.kind() == MemberKind.STUD
                || m.kind() == MemberKind.POST
                || m.kind() == MemberKind.KING_STUD
                || m.kind() == MemberKind.JACK_STUD
                || m.kind() == MemberKind.CRIPPLE;
        if (stud && steel.containsKey(m.owner()) && evidence.grid().solid(i).entered(span, 1)) {
          return Optional.of(steel.get(m.owner()));
        }
      }
    }
    return Optional.empty();
  }

  private static void judge(Walk.At at, Wall wall, Evidence evidence, Charge charge) {
    double z = new Solid(wall.frame(), new Box(0, 1, 0, 1, 0, 1)).local(at.start())[2];
    boolean punched =
        wall.traits().knockouts().stream()
            .anyMatch(k -> Math.abs(k.value().toMm() - z) <= HEIGHT_MM);
    Optional<Site> site = evidence.site(at);
    if (!punched
        || evidence.hole(at.step().id()).isPresent()
        || site.filter(Site::made).isEmpty()) {
      charge.step(
          at,
          "goes through a steel stud of %s %.0f mm over its foot, where no knockout is",
          wall.id(),
          z);
    }
  }
}
