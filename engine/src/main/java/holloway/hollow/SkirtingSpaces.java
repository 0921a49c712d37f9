package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.house.Fill;
import holloway.house.Skirting;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Stretches of skirting that may come off, each from corner or door to corner or door. The cable is
 * drawn on the face of the wall; it lies in the gap under the board or in a groove in the back of
 * the skirting.
 */
final class SkirtingSpaces {
  /** Room for a cable behind the board; common practice, no published source. */
  static final long DEPTH = 15_000_000;

  /** Casing beside a door, where the skirting ends; common practice, no published source. */
  private static final long CASING = 60_000_000;

  private static final long SHORTEST = 200_000_000;

  private SkirtingSpaces() {}

  static void find(Draft draft) {
    for (Skirting k : draft.framed.placed().house().skirtings()) {
      for (Wall w : draft.framed.placed().walls()) {
        for (Wall.WallFace f : w.faces()) {
          if (!w.isParty()
              && !w.isOpen()
              && f.room().equals(k.room())
              && k.sides().contains(f.roomSide())) {
            for (Interval s : f.s().without(doors(w, f, k), SHORTEST)) {
              draft.hollow(stretch(k, w, f, s));
            }
          }
        }
      }
    }
  }

  /** What opens down to the skirting, with its casing. */
  private static List<Interval> doors(Wall w, Wall.WallFace f, Skirting k) {
    List<Interval> out = new ArrayList<>();
    for (Wall.WallOpening o : w.openings()) {
      if (o.z().lo() < f.floorZ() + k.height().value().nm()) {
        out.add(new Interval(o.s().lo() - CASING, o.s().hi() + CASING));
      }
    }
    return out;
  }

  private static Hollow stretch(Skirting k, Wall w, Wall.WallFace f, Interval s) {
    long t0 = f.side() == 0 ? -DEPTH : w.thickness();
    long z1 = f.floorZ() + k.height().value().nm();
    Box box = new Box(s.lo(), s.hi(), t0, t0 + DEPTH, f.floorZ(), z1);
    String id =
        k.room() + "/skirting/" + f.roomSide().word() + "-" + w.id() + "-" + Tags.of(s.lo());
    return new Hollow(
        id,
        HollowKind.SKIRTING,
        w.frame(),
        box,
        Optional.empty(),
        Fill.EMPTY,
        k.room(),
        Optional.of("room/" + k.room()));
  }
}
