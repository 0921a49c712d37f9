package holloway.routing;

import holloway.catalog.PriceList;
import holloway.framing.Framed;
import holloway.hollow.Solids;
import holloway.house.Opening;
import holloway.request.Effort;
import holloway.request.Profile;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Wishes;
import holloway.survey.Placed;
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
  private volatile House house;

  /**
   * What routing looks up of a house again and again.
   *
   * @param solids its members, found by where they are
   */
  record House(Framed framed, String ground, Solids solids, FaceLines lines) {
    private static House of(Framed framed) {
      String ground = groundLevel(framed.placed());
      FaceLines lines = new FaceLines(framed.placed(), ground);
      return new House(framed, ground, new Solids(framed.members()), lines);
    }

    /**
     * The lowest level with a door in an outer wall, else the lowest: what "outside" starts from.
     */
    private static String groundLevel(Placed placed) {
      return placed.levels().stream()
          .filter(
              l ->
                  placed.walls().stream()
                      .anyMatch(
                          w ->
                              w.level().equals(l.name())
                                  && w.isOuter()
                                  && w.openings().stream()
                                      .anyMatch(o -> o.opening().kind() == Opening.Kind.DOOR)))
          .findFirst()
          .orElse(placed.levels().get(0))
          .name();
    }
  }

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

  /** What is known of the house, which is the first that was asked for. */
  House house(Framed framed) {
    House known = house;
    if (known == null) {
      known = House.of(framed);
      house = known;
    }
    if (known.framed() != framed) {
      throw new IllegalArgumentException("ways of another house are remembered");
    }
    return known;
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
