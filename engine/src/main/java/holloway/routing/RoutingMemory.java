package holloway.routing;

import holloway.catalog.PriceList;
import holloway.request.Effort;
import holloway.request.Profile;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Wishes;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What was found of one house's ways at one set of prices, so that an end which stands elsewhere
 * costs only what hangs on it. It belongs to the house that it was first used for.
 */
public final class RoutingMemory {
  private final Effort effort;
  private final Wishes weights;
  private final PriceList prices;
  private final Set<String> cables;
  final FishMemory fishes = new FishMemory();
  final NetMemory nets = new NetMemory();

  /**
   * @param request whose prices these are
   */
  public RoutingMemory(Request request) {
    effort = request.effort();
    weights = weights(request);
    prices = request.prices();
    cables = cables(request);
  }

  /** Whether ways cost the same by this request. */
  public boolean isOf(Request request) {
    return effort.equals(request.effort())
        && weights.equals(weights(request))
        && prices.equals(request.prices())
        && cables.equals(cables(request));
  }

  /** Bans and the profile are laid over ways that are there. */
  private static Wishes weights(Request r) {
    Wishes w = r.wishes();
    return new Wishes(
        w.hourIsWorth(),
        w.visibleMetre(),
        w.attic(),
        w.avoid(),
        List.of(),
        Profile.LEAST_WORK,
        w.crew());
  }

  private static Set<String> cables(Request r) {
    return new TreeSet<>(r.runs().stream().map(Run::cable).toList());
  }
}
