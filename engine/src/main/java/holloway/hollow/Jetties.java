package holloway.hollow;

import holloway.framing.Deck;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.List;

/**
 * Stretches of a floor's bays that lie over no room of the storey below: what overhangs. Their
 * underside is outdoors, so nothing is worked from there. One that runs on, past a block over the
 * outer wall, from a bay over a room is a space of its own; of any other nobody can say which way
 * its short joists run, and it is shut.
 */
final class Jetties {
  private static final long TOUCHING = 1_000_000;

  private final Framed framed;
  private final List<Refused> refused;

  Jetties(Framed framed, List<Refused> refused) {
    this.framed = framed;
    this.refused = refused;
  }

  /** No room of the storey below lies under any part of the bay, and no wall under its middle. */
  boolean isOne(Deck deck, Interval v, Interval u) {
    List<PlacedRoom> below = JoistBays.roomsBelow(framed, deck);
    if (below.isEmpty()) {
      return false;
    }
    for (PlacedRoom r : below) {
      Polygon2 local = Scan.toLocal(r.outline(), deck.frame());
      for (long line : new long[] {v.lo(), v.mid(), v.hi()}) {
        for (Interval i : Scan.along(local, line)) {
          if (i.overlaps(u)) {
            return false;
          }
        }
      }
    }
    Point3 middle = deck.frame().toWorld(u.mid(), v.mid(), 0);
    String level = below.get(0).room().level();
    return framed.placed().walls().stream()
        .filter(w -> w.level().equals(level))
        .noneMatch(w -> isUnder(w, middle));
  }

  private static boolean isUnder(Wall w, Point3 p) {
    Point3 at = w.frame().toLocal(p);
    return at.x() >= 0 && at.x() <= w.length() && at.y() >= 0 && at.y() <= w.thickness();
  }

  /**
   * Whether a block over an outer wall ends the bay, so that its joists are the ones over the room
   * behind; what is shut is told.
   */
  boolean isKnown(Deck deck, Interval v, Interval u) {
    boolean leads =
        framed.members().stream()
            .filter(m -> m.owner().equals(deck.id()) && m.kind() == MemberKind.BLOCKING)
            .anyMatch(m -> meets(m, v, u));
    if (!leads) {
      String id = deck.id() + "/bay-" + Tags.of(v.lo()) + "-" + Tags.of(u.lo());
      refused.add(
          new Refused(
              id,
              deck.frame().toWorld(u.mid(), v.mid(), deck.joistZ().mid()),
              "no room lies under it, and its joists run along the outer wall below: there they"
                  + " usually turn. Maybe state the room below, or say floor: { run: ... } of the"
                  + " room above once you have seen them",
              "house"));
    }
    return leads;
  }

  private static boolean meets(Member m, Interval v, Interval u) {
    boolean same = m.box().y().overlaps(v);
    return same
        && (Math.abs(m.box().x1() - u.lo()) < TOUCHING
            || Math.abs(m.box().x0() - u.hi()) < TOUCHING);
  }
}
