package holloway.routing;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.hollow.WorkKind;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.request.Request;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What money adds to the objective, in its units at the hour's worth: cable by the metre, what
 * closes a hole against fire, steel over a hole near the wood's face. All of it is nothing unless a
 * price file and an hour's worth in its currency are given. Each metre is priced alike, at the mean
 * of the cables asked for, because an edge has one price for all runs.
 */
public final class Spending {
  /** Sealant in one hole, of the 200 ml of a cartridge that end up in holes; from experience. */
  private static final double SEAL_SHARE = 0.05;

  private static final Set<SiteKind> SEALED =
      EnumSet.of(
          SiteKind.TOP_PLATE,
          SiteKind.BOTTOM_PLATE,
          SiteKind.PLATE_STACK,
          SiteKind.BLOCK,
          SiteKind.FLOOR,
          SiteKind.CEILING,
          SiteKind.CEILING_AND_FLOOR,
          SiteKind.CHASE_FLOOR);

  private final double perMetre;
  private final long seal;
  private final long plates;
  private final List<Wall> walls;
  private final Map<String, Long> sealed = new TreeMap<>();
  private final Map<String, Integer> plain = new TreeMap<>();

  Spending(Request request, List<Wall> walls) {
    PriceList prices = request.prices();
    double perCent =
        request
            .wishes()
            .hourIsWorth()
            .filter(h -> prices.stated() && h.currency().equals(prices.currency()) && h.cents() > 0)
            .map(h -> 60.0 * Effort.PER_MINUTE / h.cents())
            .orElse(0.0);
    this.walls = List.copyOf(walls);
    perMetre = perCent * metre(request);
    seal = Math.round(perCent * SEAL_SHARE * prices.priceOf(ShopItem.SEALANT).orElse(0));
    plates = Math.round(perCent * 2 * prices.priceOf(ShopItem.NAIL_PLATE).orElse(0));
  }

  /** Cents of a metre, mean over the runs whose cable has a price. */
  private static double metre(Request request) {
    return request.runs().stream()
        .flatMapToDouble(r -> request.prices().metreOf(r.cable()).stream())
        .average()
        .orElse(0);
  }

  /** Units for so much cable. */
  long cable(long nm) {
    return Math.round(perMetre * nm / 1e9);
  }

  /** Units for closing a bore, whatever its size. */
  long seal(Site s) {
    long units = SEALED.contains(s.kind()) || rated(s) ? seal : 0;
    if (units > 0) {
      sealed.put(s.id(), units);
    }
    return units;
  }

  private boolean rated(Site s) {
    return walls.stream()
        .filter(w -> s.id().startsWith(w.id() + "/"))
        .max(Comparator.comparingInt((Wall w) -> w.id().length()).thenComparing(Wall::id))
        .map(Wall::garageSeparation)
        .orElse(false);
  }

  /** Units for steel on both faces, where the bit wants it. */
  long plates(Site s, int bit) {
    plain.put(s.id(), s.largestBit());
    return bit > s.largestBit() ? plates : 0;
  }

  /**
   * A plan as the search wrote it holds money in the minutes of its bores and of its total; here
   * both are the minutes of the work alone again. The objective keeps it.
   */
  public Plan labour(Plan plan, RouteGraph graph) {
    if (perMetre == 0 && seal == 0 && plates == 0) {
      return plan;
    }
    Map<String, Double> less = new TreeMap<>();
    List<Plan.PlannedHole> made = new ArrayList<>();
    for (Plan.PlannedHole h : plan.holes()) {
      double money = money(h, graph) / (double) Effort.PER_MINUTE;
      h.works().stream()
          .filter(w -> w.startsWith(h.id() + "/bore/"))
          .forEach(w -> less.put(w, money));
      made.add(h.withMinutes(exact(h.minutes() - money)));
    }
    List<Plan.PlannedWork> works =
        plan.works().stream()
            .map(w -> w.withMinutes(exact(w.minutes() - less.getOrDefault(w.id(), 0.0))))
            .toList();
    double minutes =
        works.stream().mapToDouble(Plan.PlannedWork::minutes).sum()
            + plan.runs().stream()
                .flatMap(r -> r.steps().stream())
                .mapToDouble(s -> s.minutes().orElse(0.0))
                .sum();
    return plan.withWork(made, works, exact(minutes));
  }

  private static double exact(double minutes) {
    return Math.round(minutes * Effort.PER_MINUTE) / (double) Effort.PER_MINUTE;
  }

  /** The seal, and steel for each bore whose bit wants it. */
  private long money(Plan.PlannedHole h, RouteGraph graph) {
    RouteGraph.Hole hole =
        graph.holes().stream().filter(g -> g.site().equals(h.id())).findFirst().orElseThrow();
    if (hole.made()) {
      return 0;
    }
    long units = sealed.getOrDefault(h.id(), 0L);
    units += h.diameterMm() > plain.get(h.id()) ? plates : 0;
    return units + (h.bores() == 2 ? secondPlates(h, hole, graph) : 0);
  }

  /** A plan names the wider of two bits; what is left of the price tells the other. */
  private long secondPlates(Plan.PlannedHole h, RouteGraph.Hole hole, RouteGraph graph) {
    long left = Math.round(h.minutes() * Effort.PER_MINUTE) - hole.second().orElse(0);
    for (RouteGraph.Work w : graph.works()) {
      left -= w.kind() == WorkKind.BORE && h.works().contains(w.name()) ? w.price() : 0;
    }
    for (RouteGraph.Step s : hole.steps()) {
      left -= s.diameterMm() == h.diameterMm() ? s.extra() : 0;
    }
    long other = left;
    return hole.steps().stream()
        .filter(s -> s.extra() == other && s.diameterMm() > plain.get(h.id()))
        .mapToLong(s -> plates)
        .findFirst()
        .orElse(0);
  }
}
