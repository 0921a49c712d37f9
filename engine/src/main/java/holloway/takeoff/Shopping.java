package holloway.takeoff;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;

/** A shopping list that is being filled: lines of the same thing are added up. */
final class Shopping {
  private record Line(ShopItem.Shelf shelf, int order, String words, String unit) {}

  private static final Comparator<Line> IN_ORDER =
      Comparator.comparing(Line::shelf)
          .thenComparing(Line::order)
          .thenComparing(Line::words)
          .thenComparing(Line::unit);

  private final PriceList prices;
  private final Set<String> have;
  private final Map<Line, Double> quantity = new TreeMap<>(IN_ORDER);
  private final Map<Line, OptionalLong> each = new TreeMap<>(IN_ORDER);

  /**
   * @param have keys of items that are in the workshop already and not bought
   */
  Shopping(PriceList prices, Set<String> have) {
    this.prices = prices;
    this.have = have;
  }

  void add(ShopItem item, double n) {
    add(item, "", n);
  }

  /**
   * @param detail what has to be said of this one, or nothing
   */
  void add(ShopItem item, String detail, double n) {
    if (have.contains(item.key())) {
      return;
    }
    String unit = item.name().endsWith("_METRE") ? "m" : "piece";
    put(
        new Line(item.shelf(), item.ordinal(), item.words() + detail, unit),
        n,
        prices.priceOf(item));
  }

  /** Cable and leads, which are no shop items of a fixed kind. */
  void addCable(String words, double n, String unit, OptionalLong cents) {
    put(new Line(ShopItem.Shelf.CABLE, -1, words, unit), n, cents);
  }

  private void put(Line line, double n, OptionalLong cents) {
    if (n > 0) {
      quantity.merge(line, n, Double::sum);
      each.put(line, cents);
    }
  }

  List<Plan.Material> list() {
    List<Plan.Material> out = new ArrayList<>();
    quantity.forEach(
        (line, n) -> {
          OptionalLong cents = each.get(line);
          Optional<Double> price =
              cents.isPresent()
                  ? Optional.of(Math.round(cents.getAsLong() * n) / 100.0)
                  : Optional.empty();
          out.add(new Plan.Material(line.words(), n, line.unit(), price, line.shelf().words()));
        });
    return List.copyOf(out);
  }
}
