package holloway.routing;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.request.Effort;
import holloway.request.Request;
import holloway.survey.Wall;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What money adds to the objective, in its units at the hour's worth: cable by the metre, what
 * closes a hole against fire, steel over a hole near the wood's face. All of it is nothing unless a
 * price file and an hour's worth in its currency are given. Each cable pays its own price a metre,
 * and nothing where the price file has none for its kind.
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

  private final Map<String, Double> perMetre = new TreeMap<>();
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
    for (var run : request.runs()) {
      double cents = prices.metreOf(run.cable()).orElse(0);
      if (perCent * cents > 0) {
        perMetre.put(run.cable(), perCent * cents);
      }
    }
    seal = Math.round(perCent * SEAL_SHARE * prices.priceOf(ShopItem.SEALANT).orElse(0));
    plates = Math.round(perCent * 2 * prices.priceOf(ShopItem.NAIL_PLATE).orElse(0));
  }

  /** What each kind of cable pays by the metre. */
  Fares fares() {
    return new Fares(perMetre, Map.of());
  }

  /** Units for closing a bore, whatever its size. */
  long seal(Site s) {
    boolean pays = seal > 0 && (SEALED.contains(s.kind()) || rated(s));
    if (pays) {
      sealed.put(s.id(), seal);
    }
    return pays ? seal : 0;
  }

  private boolean rated(Site s) {
    return walls.stream()
        .filter(w -> s.id().startsWith(w.id() + "/"))
        .max(Comparator.comparingInt((Wall w) -> w.id().length()).thenComparing(Wall::id))
        .map(Wall::garageSeparation)
        .orElse(false);
  }

  boolean paysForSteel() {
    return plates != 0;
  }

  /** Units for steel on both faces, where the bit wants it. */
  long plates(Site s, int bit) {
    if (plates == 0) {
      return 0;
    }
    plain.put(s.id(), s.largestBit());
    return bit > s.largestBit() ? plates : 0;
  }

  /** True when money adds nothing. */
  public boolean isNothing() {
    return perMetre.isEmpty() && seal == 0 && plates == 0;
  }

  /** Units that closing a priced bore took. */
  public long sealOf(String site) {
    return sealed.getOrDefault(site, 0L);
  }

  /** Units that steel over a priced bore of that bit took. */
  public long steelOf(String site, int bitMm) {
    return bitMm > plain.getOrDefault(site, Integer.MAX_VALUE) ? plates : 0;
  }
}
