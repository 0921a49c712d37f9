package holloway.hollow;

import holloway.framing.Framed;
import holloway.geometry.Point3;
import holloway.house.Conduit;
import holloway.house.Room;
import holloway.house.WallSpot;
import holloway.survey.OnWall;
import holloway.survey.Wall;
import java.util.Optional;

/** Where links between buildings leave an outer wall, and which of them cannot be used. */
public final class OutdoorLinks {
  /** Cable clipped to the outside is this far off it; the link begins a little further out. */
  private static final long OFF_FACE = 12_000_000;

  private static final long OUT = 50_000_000;

  /** What two taped ends may be further apart than the link is long. */
  private static final long TAPED = 300_000_000;

  /** The same where one building is drawn at a place that nobody taped. */
  private static final long DRAWN = 1_500_000_000;

  private OutdoorLinks() {}

  /** The spot on its wall; empty where it is no face of an outer wall. */
  public static Optional<OnWall> spot(Framed framed, WallSpot at) {
    return framed
        .placed()
        .findSpot(at.face(), at.along(), at.height().value().nm())
        .filter(s -> s.wall().isOuter());
  }

  /** On the outside of the wall, where cable is clipped. */
  public static Point3 face(OnWall s) {
    return out(s, OFF_FACE);
  }

  /** The end of the link. */
  public static Point3 mouth(OnWall s) {
    return out(s, OFF_FACE + OUT);
  }

  private static Point3 out(OnWall s, long off) {
    Wall w = s.wall();
    return w.world(s.s(), w.outside() == 0 ? -off : w.thickness() + off, s.z());
  }

  /** Why nobody leads cable through it; empty for what is no such link, or a good one. */
  static Optional<String> whyNot(Framed framed, Conduit c) {
    if (c.outdoor().isEmpty()) {
      return Optional.empty();
    }
    Point3 a = mouth(spot(framed, c.from()).orElseThrow());
    Point3 b = mouth(spot(framed, c.to()).orElseThrow());
    boolean drawn =
        framed.placed().house().rooms().stream()
            .anyMatch(r -> r.placing() instanceof Room.Placing.Apart);
    long length = c.length().value().nm();
    if (a.distanceTo(b) > length + (drawn ? DRAWN : TAPED)) {
      return Optional.of(
          "its ends lie %.1f m apart, further than its %.1f m: check 'length', or where the"
                  .formatted(a.distanceTo(b) / 1e9, length / 1e9)
              + " buildings stand ('at')");
    }
    return Optional.empty();
  }
}
