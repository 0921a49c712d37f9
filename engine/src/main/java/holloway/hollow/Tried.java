package holloway.hollow;

import holloway.geometry.Point3;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Axes that were tried in one house, with what came of each: it hangs on the house alone, and a
 * slid end asks for nearly all of them again. May be used on several threads.
 */
final class Tried {
  private static final int MOST = 100_000;

  record Axis(
      String id, SiteKind kind, Point3 a, Point3 b, String hollowA, String hollowB, long radius) {}

  /**
   * @param why it cannot be bored there; empty where it can
   */
  record Answer(Optional<Site> site, String why) {
    static Answer yes(Site site) {
      return new Answer(Optional.of(site), "");
    }

    static Answer no(String why) {
      return new Answer(Optional.empty(), why);
    }
  }

  private final Known<Axis, Answer> known = new Known<>(MOST);

  Answer of(Axis axis, Supplier<Answer> look) {
    return known.of(axis, look);
  }
}
