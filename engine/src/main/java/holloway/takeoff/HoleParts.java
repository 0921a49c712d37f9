package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.ShopItem;
import holloway.plan.Drilling;
import holloway.plan.Plan;
import holloway.plan.Sealing;
import holloway.survey.Placed;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What goes into a hole, before and after: bits, nail plates, sealant. */
public final class HoleParts {
  /** A cartridge, and the part of it that ends up in holes (from experience). */
  static final double CARTRIDGE_ML = 300;

  private static final double USED = 2.0 / 3;

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

  void count(Shopping list, HoleNeeds needs) {
    double fire = 0;
    double outdoor = 0;
    for (Plan.PlannedHole h : plan.holes()) {
      fire += Sealing.needsSeal(h, placed) ? sealantMl(h) : 0;
      outdoor += outdoor(h) ? sealantMl(h) : 0;
      if (needs.plated().contains(h.id())) {
        list.add(ShopItem.NAIL_PLATE, 2.0 * h.bores());
      }
    }
    list.add(ShopItem.PATCH_KIT, plan.totals().patches());
    list.add(ShopItem.SEALANT, cartridges(fire));
    list.add(ShopItem.SEALANT_OUTDOOR, cartridges(outdoor));
    bits(list, needs.drilling());
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
  private void bits(Shopping list, Map<String, Drilling> drilling) {
    Map<Drilling, Map<Integer, Double>> deepest = new EnumMap<>(Drilling.class);
    Map<Integer, Double> far = new TreeMap<>();
    for (Plan.PlannedHole h : plan.holes()) {
      if (h.diameterMm() > 0 && !h.kind().contains("patch")) {
        Drilling how = drilling.getOrDefault(h.id(), Drilling.SHORT);
        deepest
            .computeIfAbsent(how, k -> new TreeMap<>())
            .merge(h.diameterMm(), h.depthMm(), Math::max);
        if (how == Drilling.ANGLED && Drilling.isDeep(h)) {
          far.merge(h.diameterMm(), h.depthMm(), Math::max);
        }
      }
    }
    deepest
        .getOrDefault(Drilling.LONG, Map.of())
        .forEach((wide, mm) -> far.merge(wide, mm, Math::max));
    wood(list, deepest, far);
    far.forEach((wide, mm) -> list.add(ShopItem.BIT_LONG, size(wide, mm), 1));
    deepest
        .getOrDefault(Drilling.MASONRY, Map.of())
        .forEach((wide, mm) -> list.add(ShopItem.BIT_MASONRY, size(wide, mm), 1));
    deepest
        .getOrDefault(Drilling.FLEXIBLE, Map.of())
        .forEach((wide, mm) -> list.add(ShopItem.BIT_FLEX, size(wide, mm), 1));
    list.add(ShopItem.DRILL_ANGLE, deepest.containsKey(Drilling.ANGLED) ? 1 : 0);
  }

  /** The same wood bit serves a drill, a right-angle drill and an extension. */
  private static void wood(
      Shopping list, Map<Drilling, Map<Integer, Double>> deepest, Map<Integer, Double> far) {
    Set<Integer> sizes = new TreeSet<>(far.keySet());
    sizes.addAll(deepest.getOrDefault(Drilling.SHORT, Map.of()).keySet());
    sizes.addAll(deepest.getOrDefault(Drilling.ANGLED, Map.of()).keySet());
    for (int wide : sizes) {
      String how = far.containsKey(wide) ? deep(far.get(wide)) : ", usual length";
      ShopItem.find("bit-" + wide).ifPresent(i -> list.add(i, how, 1));
    }
  }

  private static String size(int wide, double depthMm) {
    return ", %d mm".formatted(wide) + deep(depthMm);
  }

  private static String deep(double depthMm) {
    return ", for holes to %.0f mm deep".formatted(Math.ceil(depthMm));
  }
}
