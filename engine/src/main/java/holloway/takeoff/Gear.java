package holloway.takeoff;

import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.request.Spot;

/**
 * What a person stands on and wears, by where the plan has them work (E12, E13; the rest is common
 * practice, no published source).
 */
final class Gear {
  private Gear() {}

  static void count(Plan plan, Request request, HoleNeeds needs, Shopping list) {
    int crew = request.wishes().crew();
    boolean attic = inZone(plan, "attic");
    boolean under = inZone(plan, "crawl");
    boolean boring = !plan.holes().isEmpty() || !plan.works().isEmpty();
    if (boring) {
      list.add(ShopItem.GLASSES, crew);
      list.add(ShopItem.GLOVES, crew);
    }
    tools(plan, needs, list);
    if (attic || under) {
      list.add(ShopItem.RESPIRATOR, crew);
      list.add(ShopItem.COVERALL, crew);
      list.add(ShopItem.KNEE_PADS, 1);
    }
    if (attic) {
      list.add(ShopItem.PLANKS, 2);
    }
    if (inZone(plan, "ladder")) {
      list.add(ShopItem.LADDER, 1);
    }
    if (attic || overhead(plan, request)) {
      list.add(ShopItem.STEP_LADDER, 1);
    }
  }

  /** Bits apart, what the order of work has people bring up. */
  private static void tools(Plan plan, HoleNeeds needs, Shopping list) {
    boolean bored = plan.holes().stream().anyMatch(h -> !h.kind().contains("patch"));
    boolean cut =
        plan.totals().patches() > 0
            || plan.works().stream().anyMatch(w -> w.kind().equals("cut-out"));
    boolean fished =
        plan.runs().stream().flatMap(r -> r.steps().stream()).anyMatch(s -> s.fish().isPresent());
    boolean copper = plan.runs().stream().anyMatch(r -> CabinetParts.copper(r.cable()));
    list.add(ShopItem.BIT_PILOT, bored ? 1 : 0);
    list.add(ShopItem.BIT_PILOT_MASONRY, needs.masonryPilots() ? 1 : 0);
    list.add(ShopItem.SAW, cut ? 1 : 0);
    list.add(ShopItem.FISH_RODS, fished ? 1 : 0);
    list.add(ShopItem.PUNCH_DOWN, copper ? 1 : 0);
    list.add(ShopItem.TESTER, copper ? 1 : 0);
  }

  private static boolean inZone(Plan plan, String word) {
    return plan.totals().zones().stream().anyMatch(z -> z.startsWith(word));
  }

  /** Work at a ceiling: an outlet there, or a hole through it from the room. */
  private static boolean overhead(Plan plan, Request request) {
    return plan.holes().stream().anyMatch(h -> h.kind().startsWith("ceiling"))
        || request.outlets().stream().anyMatch(o -> o.spots().get(0) instanceof Spot.OnCeiling);
  }
}
