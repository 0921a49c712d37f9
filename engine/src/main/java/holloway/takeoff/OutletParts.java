package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.survey.Placed;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What an outlet is made of. A plate has a port for every cable, spares too, so that a spare comes
 * into use with a jack and no new plate; a port without a jack gets a blank.
 */
final class OutletParts {
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

  private final Request request;
  private final Shopping list;
  private final Placed placed;
  private final List<Integer> plates;
  private final Set<String> spares;

  OutletParts(Request request, Placed placed, Shopping list) {
    this.request = request;
    this.placed = placed;
    this.list = list;
    this.plates = plates(request.prices());
    this.spares =
        request.runs().stream().filter(Run::spare).map(Run::id).collect(Collectors.toSet());
  }

  /** The sizes that the shop has a price for; without any, all there are. */
  private static List<Integer> plates(PriceList prices) {
    List<Integer> priced =
        PLATES.keySet().stream().filter(n -> prices.priceOf(PLATES.get(n)).isPresent()).toList();
    return priced.isEmpty() ? List.copyOf(PLATES.keySet()) : priced;
  }

  void count(Plan plan) {
    BoxSorts boxes = new BoxSorts(plan, placed);
    for (Outlet o : request.outlets()) {
      List<Plan.PlannedRun> here = ending(plan, o.name());
      if (here.isEmpty()) {
        continue;
      }
      if (o.spots().get(0) instanceof Spot.Outside) {
        outside(o, here);
        continue;
      }
      List<Plan.PlannedRun> live = here.stream().filter(r -> !spares.contains(r.id())).toList();
      plates(o, boxes, here.size(), live.size());
      live.forEach(r -> list.add(jack(r.cable()), 1));
      live.forEach(r -> ownCord(r.cable()));
      boolean ceiling = o.spots().get(0) instanceof Spot.OnCeiling;
      live.stream()
          .filter(r -> !Cable.get(r.cable()).fibre() && !r.cable().equals("rg6"))
          .forEach(r -> list.add(ceiling ? ShopItem.CORD_3FT : ShopItem.CORD_10FT, 1));
    }
  }

  /** What hangs outside is plugged in there; the provider's box is the provider's. */
  private void outside(Outlet o, List<Plan.PlannedRun> here) {
    if (!o.feed()) {
      list.add(ShopItem.BOX_OUTSIDE, 1);
      list.add(
          ShopItem.PLUG_FIELD,
          here.stream()
              .filter(r -> !spares.contains(r.id()) && CabinetParts.copper(r.cable()))
              .count());
    }
  }

  /** From a coupler at the outlet to the gear; four-pair cords are counted by where it stands. */
  private void ownCord(String kind) {
    if (kind.equals("rg6")) {
      list.add(ShopItem.CORD_COAX, 1);
    } else if (Cable.get(kind).fibre()) {
      list.add(kind.equals("om4") ? ShopItem.CORD_FIBRE : ShopItem.CORD_FIBRE_SINGLE, 1);
    }
  }

  static List<Plan.PlannedRun> ending(Plan plan, String end) {
    return plan.runs().stream().filter(r -> r.from().equals(end) || r.to().equals(end)).toList();
  }

  private void plates(Outlet o, BoxSorts boxes, int cables, int jacks) {
    int most = plates.get(plates.size() - 1);
    int ports = 0;
    for (int left = cables; left > 0; left -= most) {
      int want = Math.min(left, most);
      int plate = plates.stream().filter(p -> p >= want).findFirst().orElseThrow();
      boolean two = plate > 6;
      boxes
          .of(o, two)
          .ifPresent(
              b -> {
                boolean sized = b == ShopItem.RING_SINGLE || b == ShopItem.RING_DOUBLE;
                list.add(b, sized ? "" : two ? ", double gang" : ", single gang", 1);
              });
      list.add(PLATES.get(plate), 1);
      ports += plate;
    }
    list.add(ShopItem.BLANK, ports - jacks);
  }

  private static ShopItem jack(String kind) {
    return switch (kind) {
      case "rg6" -> ShopItem.COUPLER_COAX;
      case "om4" -> ShopItem.COUPLER_FIBRE;
      case "os2", "outdoor-fibre" -> ShopItem.COUPLER_FIBRE_SINGLE;
      case "cat5e" -> ShopItem.JACK_CAT5E;
      case "cat6a" -> ShopItem.JACK_CAT6A;
      default -> ShopItem.JACK_CAT6;
    };
  }
}
