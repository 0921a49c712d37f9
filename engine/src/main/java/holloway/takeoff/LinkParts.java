package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.ShopItem;
import holloway.house.Conduit;
import holloway.plan.Plan;
import holloway.survey.Placed;

/** What a way to another building is made of, where a run of the plan goes along it. */
final class LinkParts {
  private LinkParts() {}

  static void count(Plan plan, Placed placed, Shopping list) {
    for (Conduit c : placed.house().conduits()) {
      if (c.outdoor().isEmpty()) {
        continue;
      }
      long copper = 0;
      boolean used = false;
      for (Plan.PlannedRun r : plan.runs()) {
        boolean along = r.steps().stream().anyMatch(s -> s.id().equals("conduit/" + c.name()));
        used |= along;
        copper += along && !Cable.get(r.cable()).fibre() ? 1 : 0;
      }
      if (used) {
        way(c, list);
        // One where it leaves and one where it comes in, bonded to each building's own earth.
        list.add(ShopItem.SURGE, 2.0 * copper);
      }
    }
  }

  private static void way(Conduit c, Shopping list) {
    double metres = Math.ceil(c.length().value().toMetres() - 1e-9);
    boolean there = c.outdoor().map(Conduit.Outdoor::there).orElse(true);
    if (c.kind() == Conduit.Kind.SPAN) {
      list.add(ShopItem.SPAN_METRE, there ? 0 : metres);
      list.add(ShopItem.SPAN_END, there ? 0 : 2);
    } else if (c.dug()) {
      list.add(ShopItem.DUCT_METRE, c.kind() == Conduit.Kind.TUBE ? metres : 0);
      list.add(ShopItem.TAPE_METRE, metres);
    }
  }
}
