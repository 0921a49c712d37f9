package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.request.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Patch panels with room to grow, and cords from each panel to the switch. */
final class CabinetParts {
  private static final Map<Integer, ShopItem> PANELS =
      Map.of(12, ShopItem.PANEL_12, 24, ShopItem.PANEL_24, 48, ShopItem.PANEL_48);

  /** One port in five stays free (from experience). */
  private static final int PERCENT = 120;

  /** A rack unit, and the unit that a panel is apart from the next; millimetres. */
  private static final double UNIT_MM = 44.45;

  /** Across a rack of 19 in, and two loops of a hand's breadth (from experience). */
  private static final double ACROSS_MM = 482.6;

  private static final double LOOPS_MM = 150;

  /** A panel of 12 ports is 10 in wide. */
  private static final double NARROW_MM = 254;

  private CabinetParts() {}

  static boolean copper(String kind) {
    return !Cable.get(kind).fibre() && !kind.equals("rg6");
  }

  /** Sizes of the panels, the ports that the cables take and one in five more. */
  static List<Integer> panels(int cables) {
    List<Integer> out = new ArrayList<>();
    int left = (cables * PERCENT + 99) / 100;
    while (left > 0) {
      int want = left;
      int panel = List.of(12, 24, 48).stream().filter(p -> p >= want).findFirst().orElse(48);
      out.add(panel);
      left -= panel;
    }
    return List.copyOf(out);
  }

  /** What ends on a panel. */
  private static List<Plan.PlannedRun> ports(Plan plan) {
    return OutletParts.ending(plan, "cabinet").stream().filter(r -> copper(r.cable())).toList();
  }

  /** Sizes of the panels that are bought for a plan. */
  static List<Integer> panels(Plan plan) {
    return panels(ports(plan).size());
  }

  static void count(Plan plan, Request request, Shopping list) {
    Set<String> spares =
        request.runs().stream().filter(Run::spare).map(Run::id).collect(Collectors.toSet());
    List<Plan.PlannedRun> ports = ports(plan);
    // Both ends of a coaxial cable are cut from the drum.
    long coax = plan.runs().stream().filter(r -> r.cable().equals("rg6")).count();
    list.add(ShopItem.PLUG_COAX, 2 * coax);
    List<Integer> panels = panels(ports.size());
    panels.forEach(p -> list.add(PANELS.get(p), 1));
    int first = 0;
    for (int p = 0; p < panels.size(); p++) {
      int last = Math.min(ports.size(), first + panels.get(p));
      long live = ports.subList(first, last).stream().filter(r -> !spares.contains(r.id())).count();
      list.add(cord(p, panels.get(p)), live);
      first = last;
    }
  }

  /** The stock length (F8) that crosses the panel and goes down to the switch below the panels. */
  static ShopItem cord(int panel, int ports) {
    double wide = ports == 12 ? NARROW_MM : ACROSS_MM;
    double mm = wide + (1 + 2 * panel) * UNIT_MM + LOOPS_MM;
    return mm <= 304.8 ? ShopItem.CORD_1FT : mm <= 914.4 ? ShopItem.CORD_3FT : ShopItem.CORD_5FT;
  }
}
