package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;

/**
 * No leg between joists passes over an outer wall of the storey below: joists are taken to be
 * blocked there, unless the floor says {@code blocks-over-walls: no}. Read from the walls as the
 * survey placed them, and from the leg itself.
 */
final class JettyRule implements Rule {
  /** So far off a wall's studs on both sides, millimetres, and the leg passes over it. */
  private static final double BESIDE_MM = 40;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Placed placed = evidence.house().framed().placed();
    for (Walk.At at : evidence.steps()) {
      Optional<Hollow> hollow = at.isLeg() ? evidence.hollow(at) : Optional.empty();
      if (hollow.isEmpty() || hollow.get().kind() != HollowKind.JOIST_BAY) {
        continue;
      }
      for (Wall w : outerBelow(placed, hollow.get(), evidence)) {
        if (at.spans().stream().anyMatch(s -> passes(s, w))) {
          charge.step(
              at, "passes over the outer wall %s, where joists are taken to be blocked", w.id());
        }
      }
    }
  }

  private static List<Wall> outerBelow(Placed placed, Hollow h, Evidence evidence) {
    for (var deck : evidence.house().framed().decks()) {
      if (deck.id().equals(h.owner()) && !deck.spec().clearOverWalls()) {
        PlacedLevel level = placed.getLevel(deck.level());
        return placed.walls().stream()
            .filter(Wall::isOuter)
            .filter(w -> level.isNextOver(placed.getLevel(w.level())))
            .toList();
      }
    }
    return List.of();
  }

  /**
   * The stretch has an end well off the studs on either side, and crosses them between the ends.
   */
  private static boolean passes(Span s, Wall w) {
    Mm a = local(s.a(), w);
    Mm b = local(s.b(), w);
    double lo = w.core().lo() / 1e6 - BESIDE_MM;
    double hi = w.core().hi() / 1e6 + BESIDE_MM;
    if (Math.min(a.y(), b.y()) > lo || Math.max(a.y(), b.y()) < hi) {
      return false;
    }
    double t = ((lo + hi) / 2 - a.y()) / (b.y() - a.y());
    double along = a.x() + t * (b.x() - a.x());
    return along > 0 && along < w.length() / 1e6;
  }

  private static Mm local(Mm p, Wall w) {
    Mm from = p.minus(Mm.of(w.world(0, 0, 0)));
    double ux = w.frame().u().x();
    double uy = w.frame().u().y();
    return new Mm(from.x() * ux + from.y() * uy, from.y() * ux - from.x() * uy, p.z());
  }
}
