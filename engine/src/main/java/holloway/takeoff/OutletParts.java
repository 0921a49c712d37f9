package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.survey.Placed;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What an outlet is made of. A plate has a port for every cable, spares too, so that a spare comes
 * into use with a jack and no new plate; a port without a jack gets a blank.
 */
final class OutletParts {
  private final Request request;
  private final Shopping list;
  private final Placed placed;
  private final Set<String> spares;

  OutletParts(Request request, Placed placed, Shopping list) {
    this.request = request;
    this.placed = placed;
    this.list = list;
    this.spares =
        request.runs().stream().filter(Run::spare).map(Run::id).collect(Collectors.toSet());
  }

  void count(Plan plan) {
    OutletBoxes boxes = new OutletBoxes(plan, request, placed);
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

  private void plates(Outlet o, OutletBoxes boxes, int cables, int jacks) {
    int ports = 0;
    for (OutletBoxes.Box box : boxes.of(o, cables)) {
      box.item()
          .ifPresent(
              b -> {
                boolean sized = b == ShopItem.RING_SINGLE || b == ShopItem.RING_DOUBLE;
                list.add(b, sized ? "" : box.two() ? ", double gang" : ", single gang", 1);
              });
      list.add(box.plate(), 1);
      ports += box.ports();
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
