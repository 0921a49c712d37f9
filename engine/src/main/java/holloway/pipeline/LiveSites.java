package holloway.pipeline;

import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Profile;
import holloway.request.Request;
import holloway.request.Wishes;
import holloway.survey.Placed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The hollows and ways of one house for each place of its ends and each set of weights that was
 * asked for; the latest are kept, so that a change undone finds the very graph it had. May be asked
 * on several threads.
 */
final class LiveSites {
  /** Each is some megabytes, and what is kept makes whoever waits wait for memory to be tidied. */
  private static final int MOST = 4;

  /**
   * What the graph hangs on: where the ends are, and the prices that stand on its edges. Bans, pins
   * and the profile are laid over it.
   */
  private record Key(Request.Cabinet cabinet, List<Outlet> outlets, Effort effort, Wishes weights) {
    static Key of(Request r) {
      Wishes w = r.wishes();
      Wishes weights =
          new Wishes(
              w.hourIsWorth(),
              w.visibleMetre(),
              w.attic(),
              w.avoid(),
              List.of(),
              Profile.LEAST_WORK,
              w.crew());
      return new Key(r.cabinet(), r.outlets(), r.effort(), weights);
    }
  }

  private final Placed placed;
  private final HouseBase base;
  private final Map<Key, RealSite> known = new LinkedHashMap<>(16, 0.75f, true);
  private int derived;

  /**
   * @param first the ways of the house for {@code request}
   */
  LiveSites(Placed placed, Request request, RealSite first) {
    this.placed = placed;
    this.base = first.base();
    known.put(Key.of(request), first);
  }

  /** Whether two requests have the same hollows and ways. */
  static boolean alike(Request one, Request other) {
    return Key.of(one).equals(Key.of(other));
  }

  /**
   * @throws InputTrouble when an end cannot be where it is wanted
   */
  RealSite of(Request request) {
    Key key = Key.of(request);
    RealSite was = was(key);
    if (was != null) {
      return was;
    }
    // Long, and so beside the lock: two that ask the same at once both work, and one is kept.
    RealSite made = made(request);
    synchronized (known) {
      derived++;
      RealSite kept = known.computeIfAbsent(key, k -> made);
      known.keySet().removeIf(k -> known.size() > MOST && !k.equals(key));
      return kept;
    }
  }

  /**
   * As {@link #of}, but not kept, so that what a person asked for stays in its place.
   *
   * @throws InputTrouble when an end cannot be where it is wanted
   */
  RealSite passing(Request request) {
    RealSite was = was(Key.of(request));
    return was == null ? made(request) : was;
  }

  private RealSite was(Key key) {
    synchronized (known) {
      return known.get(key);
    }
  }

  private RealSite made(Request request) {
    RealStages stages = new RealStages(Progress.SILENT);
    return base.memory().isOf(request)
        ? stages.derive(base, request)
        : (RealSite) stages.derive(placed, request);
  }

  /** How often the ways of the house were listed since it was opened. */
  int derived() {
    synchronized (known) {
      return derived;
    }
  }
}
