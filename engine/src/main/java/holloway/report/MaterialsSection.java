package holloway.report;

import holloway.plan.Plan;
import java.util.Locale;

/** What to buy. */
final class MaterialsSection {
  private final Sheet sheet;
  private final Page page;

  MaterialsSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    page.title("MATERIALS");
    for (Plan.Material m : sheet.plan().materials()) {
      String price =
          m.price()
              .map(
                  p -> String.format(Locale.ROOT, "  %.2f %s", p, sheet.plan().totals().currency()))
              .orElse("");
      page.put(
          "  %8s  ".formatted(sheet.units().quantity(m.quantity(), m.unit())), m.item() + price);
    }
    if (sheet.plan().materials().isEmpty()) {
      page.put("  ", "Nothing counted.");
    }
  }
}
