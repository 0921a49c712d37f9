package holloway.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is carried along on one visit: what its steps use, and what is worn and stood on there. */
final class BringList {
  private BringList() {}

  static List<Bring> of(WorkPlace zone, List<Step> steps, int visit) {
    List<Bring> all = new ArrayList<>(worn(zone));
    for (Step s : steps) {
      if (s.visit() == visit) {
        all.addAll(s.bring());
      }
      if (s.otherVisit() == visit) {
        all.addAll(s.bringOther());
      }
    }
    return merged(all);
  }

  /** Things used again once, things used up added together. */
  static List<Bring> merged(List<Bring> all) {
    Map<String, Bring> out = new TreeMap<>();
    for (Bring b : all) {
      out.merge(
          b.key(),
          b,
          (x, y) -> {
            boolean again = x.item().reusable();
            double amount = again ? Math.max(x.amount(), y.amount()) : x.amount() + y.amount();
            return new Bring(x.item(), x.sizeMm(), amount, x.name());
          });
    }
    return List.copyOf(out.values());
  }

  /** Common practice, no published source but E12 and E13. */
  static List<Bring> worn(WorkPlace zone) {
    List<Bring.Item> items =
        switch (zone.kind()) {
          case ATTIC ->
              List.of(
                  Bring.Item.LIGHT,
                  Bring.Item.GLASSES,
                  Bring.Item.GLOVES,
                  Bring.Item.RESPIRATOR,
                  Bring.Item.COVERALL,
                  Bring.Item.KNEE_PADS,
                  Bring.Item.PLANKS,
                  Bring.Item.STEP_LADDER);
          case CRAWLSPACE ->
              List.of(
                  Bring.Item.LIGHT,
                  Bring.Item.GLASSES,
                  Bring.Item.GLOVES,
                  Bring.Item.RESPIRATOR,
                  Bring.Item.COVERALL,
                  Bring.Item.KNEE_PADS);
          case CELLAR -> List.of(Bring.Item.LIGHT, Bring.Item.GLOVES, Bring.Item.STEP_LADDER);
          case LADDER -> List.of(Bring.Item.LADDER, Bring.Item.GLOVES);
          default -> List.of();
        };
    return items.stream().map(Bring::of).toList();
  }
}
