package holloway.report;

import holloway.check.rules.PullTension;
import holloway.takeoff.BoxPlan;
import holloway.takeoff.BoxPlanner;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which run is cut from which box, how good that is, and how many boxes at once save pulls. */
final class BoxesSection {
  private final Sheet sheet;
  private final Page page;
  private final UnitWords units;

  BoxesSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
    this.units = sheet.units();
  }

  void write() {
    BoxPlan plan =
        BoxPlanner.of(sheet.plan(), sheet.request().prices(), sheet.placed().house().ownRules());
    if (plan.orders().isEmpty()) {
      return;
    }
    page.title("BOXES AND PULLS");
    for (BoxPlan.Order order : plan.orders()) {
      order.reels().forEach(this::reel);
      page.put("  ", 6, order.cable() + ": " + proof(order));
    }
    pulls(plan);
    tension();
  }

  /** Why two cables of one outlet come out of different boxes. */
  private static String parted(BoxPlan plan) {
    Map<String, TreeSet<String>> boxes = new TreeMap<>();
    for (BoxPlan.Order o : plan.orders()) {
      for (BoxPlan.Reel r : o.reels()) {
        for (BoxPlan.Cut c : r.cuts()) {
          String outlet = o.cable() + " " + c.run().replaceAll("/[^/]*$", "");
          boxes.computeIfAbsent(outlet, k -> new TreeSet<>()).add(r.name());
        }
      }
    }
    return boxes.values().stream().anyMatch(b -> b.size() > 1)
        ? " Here cables of one outlet are cut from different boxes: two out of one box cannot be"
            + " drawn at once."
        : "";
  }

  /** Each pull that needs a tenth of what its cable bears or more; else the hardest of all. */
  private void tension() {
    List<PullTension.Pull> all =
        PullTension.list(sheet.plan(), sheet.placed().house().conduits()).stream()
            .sorted(Comparator.comparingDouble(p -> -p.newtons() / p.most()))
            .toList();
    if (all.isEmpty()) {
      return;
    }
    List<PullTension.Pull> hard = all.stream().filter(p -> p.newtons() >= p.most() / 10).toList();
    String which =
        hard.isEmpty()
            ? "The hardest of the pulls needs " + force(all.get(0))
            : "Pulls that need a tenth of what the cable bears, or more: "
                + String.join("; ", hard.stream().map(this::force).toList());
    page.put(
        "  ",
        which + ". Reckoned for dry cable, with friction 0.5 (generic), each cable by itself.");
  }

  private String force(PullTension.Pull p) {
    return "%s of the %s it bears (%s, fish %d)"
        .formatted(units.force(p.newtons()), units.mostForce(p.most()), p.run(), p.fish());
  }

  private void reel(BoxPlan.Reel reel) {
    List<String> cuts = new ArrayList<>();
    reel.cuts().forEach(c -> cuts.add(c.run() + " " + units.cut(c.metres())));
    if (reel.cut()) {
      String text = "%s, %s off the shop's own drum: for %s";
      page.put(
          "  ",
          6,
          text.formatted(reel.name(), units.cable(reel.metres()), String.join(", ", cuts)));
      return;
    }
    page.put(
        "  ",
        6,
        "%s, %s: cut %s; %s left, less what is lost"
            .formatted(
                reel.name(),
                BoxPlan.words(reel.metres()),
                String.join(", ", cuts),
                units.cable(reel.leftM())));
  }

  private String proof(BoxPlan.Order order) {
    String bought = order.byPrice() ? amount(order, order.amount()) : order.metres() + " m";
    String counted =
        order.byPrice()
            ? ""
            : "; a metre that the shop cuts is counted as %d of a box (from experience, a price file knows better)"
                .formatted(BoxPlan.CUT_COUNTS);
    String least =
        order.proven()
            ? ", and no boxes that hold these pieces come to less"
            : ", and none that hold these pieces come to less than " + amount(order, order.bound());
    String tooLong =
        order.tooLong().isEmpty()
            ? ""
            : "; longer than any box: "
                + String.join(", ", order.tooLong().stream().map(BoxPlan.Cut::run).toList());
    String sum =
        order.byPrice() || order.amount() == order.metres()
            ? ""
            : " (counted as " + amount(order, order.amount()) + ")";
    return bought + " bought with 5 % kept back in each box" + sum + least + counted + tooLong;
  }

  private String amount(BoxPlan.Order order, long amount) {
    return order.byPrice()
        ? String.format(Locale.ROOT, "%.2f %s", amount / 100.0, sheet.request().prices().currency())
        : amount + " m";
  }

  private void pulls(BoxPlan plan) {
    List<String> atOnce = new ArrayList<>();
    int last = Integer.MAX_VALUE;
    for (BoxPlan.AtOnce a : plan.pulls()) {
      if (a.pulls() >= last) {
        continue;
      }
      last = a.pulls();
      String best = a.pulls() == a.bound() ? "" : " (at least " + a.bound() + ")";
      atOnce.add(a.boxes() + " at once: " + UnitWords.count(a.pulls(), "pull") + best);
    }
    page.put("  ", 6, "Boxes of a kind " + String.join("; ", atOnce) + ".");
    page.put(
        "  ",
        "A pull draws one blind stretch, with every cable that is at hand. Cut as above it takes "
            + UnitWords.count(plan.pullsAsCut(), "pull")
            + "; with the pieces measured out on the floor first, "
            + plan.fewestPulls()
            + "."
            + parted(plan));
  }
}
