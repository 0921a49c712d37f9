package holloway.report;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.plan.Plan;
import holloway.takeoff.Jackets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What to buy, in the order of a shop's shelves, with what each shelf comes to. */
final class MaterialsSection {
  private final Sheet sheet;
  private final Page page;
  private final PriceList prices;

  MaterialsSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
    this.prices = sheet.request().prices();
  }

  void write() {
    page.title("MATERIALS");
    Map<String, Double> sums = sums(sheet.plan().materials());
    String group = "";
    for (Plan.Material m : sheet.plan().materials()) {
      if (!m.group().equals(group)) {
        group = m.group();
        page.line("  " + group + (sums.get(group) > 0 ? ": " + money(sums.get(group)) : ""));
      }
      String price = m.price().map(p -> ": " + money(p)).orElse("");
      page.put(
          "  %8s  ".formatted(sheet.units().quantity(m.quantity(), m.unit())), m.item() + price);
    }
    if (sheet.plan().materials().isEmpty()) {
      page.put("  ", "Nothing counted.");
    }
    notes();
  }

  /** What each shelf comes to; lines without a price count nothing. */
  static Map<String, Double> sums(List<Plan.Material> materials) {
    Map<String, Double> out = new LinkedHashMap<>();
    materials.forEach(m -> out.merge(m.group(), m.price().orElse(0.0), Double::sum));
    return out;
  }

  private String money(double amount) {
    return String.format(Locale.ROOT, "%.2f %s", amount, prices.currency());
  }

  /** What is bought in another jacket than was asked for. */
  private void outdoors() {
    Map<String, String> jackets = Jackets.changed(sheet.plan(), sheet.placed().house().ownRules());
    if (!jackets.isEmpty()) {
      boolean thin = jackets.values().stream().anyMatch(j -> j.contains("no thicker"));
      page.put(
          "  ",
          "The cable of "
              + String.join(", ", jackets.keySet())
              + " lies outside in part and stands in the list in an outdoor, sunlight-resistant"
              + " jacket, see FINDINGS."
              + (thin
                  ? " It says how thick that may be where a hole on the way takes no more; else"
                      + " bore that hole a size larger where the rules let you."
                  : ""));
    }
  }

  private String weighed() {
    var hour = sheet.request().wishes().hourIsWorth();
    if (hour.isPresent() && hour.get().currency().equals(prices.currency())) {
      return String.format(
          Locale.ROOT,
          "the routes weigh cable and sealing against work at %.2f %s an hour",
          hour.get().cents() / 100.0,
          hour.get().currency());
    }
    String why =
        hour.isPresent() ? "the hour is worth another currency" : "no hour-is-worth is wished";
    return "the routes are chosen by work alone, because " + why;
  }

  private void notes() {
    outdoors();
    if (!sheet.request().shop().have().isEmpty()) {
      page.put(
          "  ",
          "Not bought, because you have it: "
              + sheet.request().shop().have().stream()
                  .sorted()
                  .map(k -> ShopItem.find(k).map(ShopItem::words).orElse(k))
                  .collect(Collectors.joining("; "))
              + ".");
    }
    if (prices.stated()) {
      long unpriced = sheet.plan().materials().stream().filter(m -> m.price().isEmpty()).count();
      page.put(
          "  ",
          "%s by '%s', %s without a price there. Prices choose boxes and plates; %s."
              .formatted(
                  money(sheet.plan().totals().money().orElse(0.0)),
                  prices.name(),
                  UnitWords.count(unpriced, "line"),
                  weighed()));
    }
    page.put(
        "  ",
        "Plates have a port for each spare, under a blank. Supports stand 1.2 m (4 ft) apart, and"
            + " 1 panel port in 5 stays free. Clips, ties, cords, string and sealant are counted"
            + " from experience, no published source.");
  }
}
