package holloway.takeoff;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The boxes and plates of each outlet: what is bought and what is told of it are the same. */
public final class OutletBoxes {
  /** Ports of plates (F6: five is not seen): single gang to six, double gang to twelve. */
  private static final Map<Integer, ShopItem> PLATES =
      new TreeMap<>(
          Map.of(
              1, ShopItem.PLATE_1,
              2, ShopItem.PLATE_2,
              3, ShopItem.PLATE_3,
              4, ShopItem.PLATE_4,
              6, ShopItem.PLATE_6,
              12, ShopItem.PLATE_12));

  private final Plan plan;
  private final Request request;
  private final BoxSorts sorts;
  private final List<Integer> sizes;

  public OutletBoxes(Plan plan, Request request, Placed placed) {
    this.plan = plan;
    this.request = request;
    this.sorts = new BoxSorts(plan, placed);
    this.sizes = sizes(request.prices());
  }

  /**
   * One box and the plate on it.
   *
   * @param item what is bought to hold the plate; empty where the box that hangs there serves
   * @param two of two gangs
   */
  public record Box(Optional<ShopItem> item, boolean two, ShopItem plate, int ports) {}

  /** The sizes that the shop has a price for; without any, all there are. */
  private static List<Integer> sizes(PriceList prices) {
    List<Integer> priced =
        PLATES.keySet().stream().filter(n -> prices.priceOf(PLATES.get(n)).isPresent()).toList();
    return priced.isEmpty() ? List.copyOf(PLATES.keySet()) : priced;
  }

  /** By the outlet's name; none outside, and where no cable ends. */
  public List<Box> of(String name) {
    return request.outlets().stream()
        .filter(o -> o.name().equals(name) && !(o.spots().get(0) instanceof Spot.Outside))
        .findFirst()
        .map(o -> of(o, OutletParts.ending(plan, name).size()))
        .orElse(List.of());
  }

  /** A port for every cable, spares too. */
  List<Box> of(Outlet outlet, int cables) {
    List<Box> out = new ArrayList<>();
    int most = sizes.get(sizes.size() - 1);
    for (int left = cables; left > 0; left -= most) {
      int want = Math.min(left, most);
      int ports = sizes.stream().filter(p -> p >= want).findFirst().orElseThrow();
      boolean two = ports > 6;
      out.add(new Box(sorts.of(outlet, two), two, PLATES.get(ports), ports));
    }
    return List.copyOf(out);
  }
}
