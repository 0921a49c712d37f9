package holloway.catalog;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a shop has and asks: lengths of boxes and of ready-made leads, and prices in hundredths of
 * one currency.
 *
 * @param name of the list, empty when none was given
 * @param boxes by cable kind; kinds without an entry come in the usual lengths, unpriced
 * @param leads by cable kind, the same
 * @param items prices by {@link ShopItem#key()}
 * @param metres price of a metre that the shop cuts off its own drum, by cable kind
 */
public record PriceList(
    String name,
    String currency,
    Map<String, List<Piece>> boxes,
    Map<String, List<Piece>> leads,
    Map<String, Long> items,
    Map<String, Long> metres) {
  /** A length that is sold, and its price if that is known. */
  public record Piece(int metres, OptionalLong cents) {}

  /** 305 m (1000 ft): trade-facts F1. 152 m and 76 m: F2, from memory. */
  private static final List<Integer> BOXES_M = List.of(76, 152, 305);

  /** F4: the ladder is from memory. */
  private static final List<Integer> LEADS_M = List.of(1, 2, 3, 5, 7, 10, 15, 20, 30, 50);

  /** No prices, the usual lengths. */
  public static final PriceList NONE =
      new PriceList("", "", Map.of(), Map.of(), Map.of(), Map.of());

  /** A shop that cuts nothing to length. */
  public PriceList(
      String name,
      String currency,
      Map<String, List<Piece>> boxes,
      Map<String, List<Piece>> leads,
      Map<String, Long> items) {
    this(name, currency, boxes, leads, items, Map.of());
  }

  public PriceList {
    boxes = Map.copyOf(boxes);
    leads = Map.copyOf(leads);
    items = Map.copyOf(items);
    metres = Map.copyOf(metres);
  }

  /** True when a person gave a price file. */
  public boolean stated() {
    return !name.isEmpty();
  }

  /** Boxes and reels of a cable kind, shortest first; none where it is sold by the metre alone. */
  public List<Piece> boxesOf(String kind) {
    return boxes.getOrDefault(kind, metres.containsKey(kind) ? List.of() : unpriced(BOXES_M));
  }

  /** True where a cable kind's boxes or metres have prices. */
  public boolean priced(String kind) {
    return boxes.containsKey(kind) || metres.containsKey(kind);
  }

  /** Hundredths of a metre cut off the drum; empty where the shop cuts none, or nobody said. */
  public OptionalLong cutOf(String kind) {
    Long cents = metres.get(kind);
    return cents == null ? OptionalLong.empty() : OptionalLong.of(cents);
  }

  /** Ready-made leads of a cable kind, shortest first. */
  public List<Piece> leadsOf(String kind) {
    return leads.getOrDefault(kind, unpriced(LEADS_M));
  }

  /** Price of one, in hundredths. */
  public OptionalLong priceOf(ShopItem item) {
    Long cents = items.get(item.key());
    return cents == null ? OptionalLong.empty() : OptionalLong.of(cents);
  }

  /** Price of a ready-made lead, in hundredths. */
  public OptionalLong leadPrice(String kind, int metres) {
    return leadsOf(kind).stream()
        .filter(p -> p.metres() == metres)
        .findFirst()
        .map(Piece::cents)
        .orElse(OptionalLong.empty());
  }

  /**
   * Hundredths for one more metre of a cable kind: in bulk the kindest box, or what a cut metre
   * costs where there are none; of ready-made leads what a longer one costs more; empty without
   * prices.
   */
  public OptionalDouble metreOf(String kind) {
    if (boxes.containsKey(kind)) {
      return boxes.get(kind).stream()
          .filter(p -> p.cents().isPresent())
          .mapToDouble(p -> (double) p.cents().getAsLong() / p.metres())
          .min();
    }
    if (metres.containsKey(kind)) {
      return OptionalDouble.of(metres.get(kind));
    }
    List<Piece> ladder =
        leads.getOrDefault(kind, List.of()).stream().filter(p -> p.cents().isPresent()).toList();
    if (ladder.size() < 2) {
      return OptionalDouble.empty();
    }
    Piece first = ladder.get(0);
    Piece last = ladder.get(ladder.size() - 1);
    double more = last.cents().getAsLong() - first.cents().getAsLong();
    return OptionalDouble.of(Math.max(0, more / (last.metres() - first.metres())));
  }

  /** Lengths in order with their prices. */
  public static List<Piece> ladder(Map<Integer, Long> byMetres) {
    return new TreeMap<>(byMetres)
        .entrySet().stream()
            .map(e -> new Piece(e.getKey(), OptionalLong.of(e.getValue())))
            .collect(Collectors.toUnmodifiableList());
  }

  private static List<Piece> unpriced(List<Integer> lengths) {
    return lengths.stream().map(m -> new Piece(m, OptionalLong.empty())).toList();
  }

  /** The currency, where prices are given. */
  public Optional<String> findCurrency() {
    return stated() ? Optional.of(currency) : Optional.empty();
  }
}
