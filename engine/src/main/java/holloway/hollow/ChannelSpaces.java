package holloway.hollow;

import holloway.geometry.Box;
import holloway.house.Fill;
import holloway.house.WallSpec;
import holloway.survey.OnWall;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;

/**
 * Strips of a solid wall's face where a channel could be cut for an outlet, from floor to ceiling.
 * The cable is drawn on the face; it lies in the plaster, so the solids behind it do not bar it.
 */
final class ChannelSpaces {
  private static final long HALF = 320_000_000;
  private static final long OUT = 80_000_000;

  private ChannelSpaces() {}

  static void find(Draft draft, List<Interest> interests) {
    for (Interest i : interests) {
      i.onWall()
          .filter(s -> !i.outside() && !s.wall().isFramed())
          .ifPresent(s -> channel(draft, s));
    }
  }

  private static void channel(Draft draft, OnWall s) {
    Wall w = s.wall();
    Optional<Wall.WallFace> face = w.findFace(s.side(), s.s());
    if (face.isEmpty() || w.isParty() || w.kind() == WallSpec.Kind.GLAZED) {
      return;
    }
    long t0 = s.side() == 0 ? -OUT : w.thickness();
    Box box =
        new Box(
            s.s() - HALF, s.s() + HALF, t0, t0 + OUT, face.get().floorZ(), face.get().ceilingZ());
    String id = w.id() + "/channel-" + s.side() + "/" + Tags.of(s.s());
    draft.hollow(
        new Hollow(
            id,
            HollowKind.CHANNEL,
            w.frame(),
            box,
            Optional.empty(),
            Fill.EMPTY,
            w.id(),
            Optional.of("room/" + face.get().room())));
  }
}
