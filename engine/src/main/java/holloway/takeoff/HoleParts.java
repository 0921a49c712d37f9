package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import holloway.plan.Sealing;
import holloway.survey.Placed;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What goes into a hole, before and after: bits, nail plates, sealant. */
public final class HoleParts {
  /** A cartridge, and the part of it that ends up in holes (from experience). */
  static final double CARTRIDGE_ML = 300;

  private static final double USED = 2.0 / 3;

  /** A ship auger's length, an electrician's long bit's (E3), a flexible shaft's (E2). */
  private static final double AUGER_MM = 190;

  private static final double LONG_MM = 455;

  private final Plan plan;
  private final Placed placed;
  private final Map<String, Cable> cables;

  HoleParts(Plan plan, Placed placed) {
    this.plan = plan;
    this.placed = placed;
    this.cables =
        plan.runs().stream()
            .collect(Collectors.toMap(Plan.PlannedRun::id, r -> Cable.get(r.cable()), (a, b) -> a));
  }

  void count(Shopping list, Set<String> plated) {
    double fire = 0;
    double outdoor = 0;
    for (Plan.PlannedHole h : plan.holes()) {
      fire += Sealing.needsSeal(h, placed) ? sealantMl(h) : 0;
      outdoor += outdoor(h) ? sealantMl(h) : 0;
      if (plated.contains(h.id())) {
        list.add(ShopItem.NAIL_PLATE, 2.0 * h.bores());
      }
    }
    list.add(ShopItem.PATCH_KIT, plan.totals().patches());
    list.add(ShopItem.SEALANT, cartridges(fire));
    list.add(ShopItem.SEALANT_OUTDOOR, cartridges(outdoor));
    bits(list);
  }

  /** Millilitres of sealant by hole, of those that are sealed, inside or out. */
  public static Map<String, Double> sealed(Plan plan, Placed placed) {
    HoleParts parts = new HoleParts(plan, placed);
    Map<String, Double> out = new TreeMap<>();
    for (Plan.PlannedHole h : plan.holes()) {
      if (Sealing.needsSeal(h, placed) || outdoor(h)) {
        out.put(h.id(), parts.sealantMl(h));
      }
    }
    return out;
  }

  static double cartridges(double ml) {
    return Math.max(0, Math.ceil(ml / (CARTRIDGE_ML * USED) - 1e-9));
  }

  static boolean outdoor(Plan.PlannedHole h) {
    return h.between().stream().anyMatch(b -> b.startsWith("outside/"));
  }

  /**
   * Millilitres that close a hole: what the cables leave of its area, 25 mm deep, and a bead of 6
   * mm round each end. Depth and bead are from experience; a listed system's own sheet goes first.
   */
  double sealantMl(Plan.PlannedHole h) {
    double hole = Math.PI / 4 * h.diameterMm() * h.diameterMm() * h.bores();
    double jackets =
        h.runs().stream()
            .map(cables::get)
            .filter(Objects::nonNull)
            .mapToDouble(c -> Math.PI / 4 * c.outside().toMm() * c.outside().toMm())
            .sum();
    double bead = h.bores() * 2 * Math.PI * h.diameterMm() * 6 * 6 / 2;
    return (Math.max(0, hole - jackets) * 25 + bead) / 1000;
  }

  /** One of each size and kind; the deepest hole says how long it has to be. */
  private void bits(Shopping list) {
    Map<String, Double> deepest = new TreeMap<>();
    boolean angled = false;
    for (Plan.PlannedHole h : plan.holes()) {
      if (h.diameterMm() > 0 && !h.kind().contains("patch")) {
        boolean flexible = fed(h) && Fit.FLEXIBLE_MM.contains(h.diameterMm());
        angled |= fed(h) && !flexible && !stone(h);
        String key =
            (stone(h) ? "stone" : flexible ? "flex" : "wood") + " %03d".formatted(h.diameterMm());
        deepest.merge(key, h.depthMm(), Math::max);
      }
    }
    deepest.forEach((key, mm) -> bit(list, key.split(" ")[0], key.substring(key.length() - 3), mm));
    list.add(ShopItem.DRILL_ANGLE, angled ? 1 : 0);
  }

  private static void bit(Shopping list, String kind, String digits, double depthMm) {
    int wide = Integer.parseInt(digits);
    String deep = ", for holes to %.0f mm deep".formatted(Math.ceil(depthMm));
    boolean far = depthMm > LONG_MM && Fit.FLEXIBLE_MM.contains(wide);
    if (kind.equals("stone")) {
      list.add(ShopItem.BIT_MASONRY, ", %d mm%s".formatted(wide, deep), 1);
    } else if (kind.equals("flex") || far) {
      list.add(ShopItem.BIT_FLEX, ", %d mm%s".formatted(wide, deep), 1);
    } else {
      ShopItem.find("bit-" + wide)
          .ifPresent(i -> list.add(i, depthMm > AUGER_MM ? deep : ", usual length", 1));
      if (depthMm > AUGER_MM) {
        list.add(ShopItem.BIT_LONG, ", %d mm%s".formatted(wide, deep), 1);
      }
    }
  }

  /**
   * Bored through a cut-out, a patch or the like: a flexible bit is fed in, and where none is made
   * of that size the planner had a patch within an arm's reach, for a right-angle drill.
   */
  private static boolean fed(Plan.PlannedHole h) {
    return List.of("room/", "attic/", "crawlspace/", "under/").stream()
            .noneMatch(h.stand()::startsWith)
        && !h.stand().equals("outside")
        && !h.stand().equals("ladder");
  }

  static boolean stone(Plan.PlannedHole h) {
    return h.through().stream().anyMatch(t -> t.startsWith("masonry"));
  }
}
