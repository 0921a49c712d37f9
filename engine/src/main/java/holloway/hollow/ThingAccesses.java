package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Lining;
import holloway.house.Thing;
import holloway.survey.OnWall;
import java.util.Locale;
import java.util.Optional;

/**
 * What is in a wall already and lets a hand in behind the board: a low-voltage box with its plate
 * off, and a register with its grille off. A box with power in it is never opened, and a return
 * grille opens on air that the whole house breathes.
 */
final class ThingAccesses {
  private static final long IN_BAY = 25_000_000;

  private ThingAccesses() {}

  static void find(Draft draft) {
    for (Thing t : draft.framed.placed().house().things()) {
      kind(t)
          .ifPresent(
              k ->
                  draft
                      .framed
                      .placed()
                      .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
                      .ifPresent(s -> place(draft, t, k, s)));
    }
  }

  private static Optional<AccessPlace.Kind> kind(Thing t) {
    return switch (t.kind()) {
      case DATA_BOX -> Optional.of(AccessPlace.Kind.DATA_BOX);
      case REGISTER -> Optional.of(AccessPlace.Kind.REGISTER);
      default -> Optional.empty();
    };
  }

  private static void place(Draft draft, Thing t, AccessPlace.Kind kind, OnWall s) {
    for (Hollow bay : BoardVoids.behind(draft, s.wall(), s.side())) {
      Box b = bay.clear();
      boolean behind =
          bay.owner().equals(s.wall().id()) && b.x().contains(s.s()) && b.z().contains(s.z());
      if (behind && b.x().length() > 2 * IN_BAY) {
        long along = new Interval(b.x0() + IN_BAY, b.x1() - IN_BAY).clamp(s.s());
        Point3 at = bay.frame().toWorld(along, b.y().mid(), s.z());
        String word = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        draft.accesses.add(
            new AccessPlace(
                bay.id() + "/" + word + "-" + Tags.of(s.s()) + "-z" + Tags.of(s.z()),
                bay.id(),
                at,
                t.at().face().room(),
                kind,
                Lining.OPEN));
        return;
      }
    }
  }
}
