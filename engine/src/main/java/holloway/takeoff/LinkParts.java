package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.ShopItem;
import holloway.house.Conduit;
import holloway.house.TubeWay;
import holloway.plan.Plan;
import holloway.survey.Placed;

/**
 * What a way to another building is made of, where a run of the plan goes along it. Draw string is
 * counted with that of all blind stretches.
 */
final class LinkParts {
  /**
   * Duct is sold in lengths of 10 ft, one end of each widened to take the next; from experience.
   */
  private static final double LENGTH_M = 3.048;

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
      return;
    }
    if (c.kind() == Conduit.Kind.TUBE) {
      // Water and vermin follow a duct into the house, also one that lies there.
      list.add(ShopItem.DUCT_PLUG, 2);
    }
    if (c.dug()) {
      list.add(ShopItem.TAPE_METRE, metres);
      if (c.kind() == Conduit.Kind.TUBE) {
        duct(c, metres, list);
      }
    }
  }

  private static void duct(Conduit c, double metres, Shopping list) {
    list.add(ShopItem.DUCT_METRE, metres);
    list.add(ShopItem.DUCT_BOX, c.way().pullBoxes());
    for (TubeWay.Part p : c.way().parts()) {
      double lengths = Math.ceil(p.length().toMetres() / LENGTH_M - 1e-9);
      list.add(ShopItem.DUCT_JOINT, Math.max(0, lengths + p.angles().size() - 1));
      p.angles().forEach(a -> list.add(ShopItem.DUCT_BEND, ", %d degrees".formatted(a), 1));
    }
  }
}
