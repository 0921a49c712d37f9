package holloway.report;

import holloway.plan.Plan;
import java.util.Locale;
import java.util.Map;

/** The house, the totals, and how close to the least possible they are. */
final class HeadSection {
  /** One hole in the objective of fewest-holes. */
  private static final long PER_HOLE = 10_000_000_000L;

  private static final Map<String, String> AIMS =
      Map.of(
          "least-work", "the least work",
          "fewest-holes", "the fewest holes, then the least work",
          "shortest", "the shortest routes, then the least work");

  private final Plan plan;
  private final double visibleMetre;
  private final UnitWords units;
  private final Page page;

  HeadSection(Sheet sheet, Page page) {
    this.plan = sheet.plan();
    this.visibleMetre = sheet.request().wishes().visibleMetre();
    this.units = sheet.units();
    this.page = page;
  }

  void write() {
    Plan.Totals t = plan.totals();
    page.title(plan.house() + ": plan for " + AIMS.getOrDefault(plan.profile(), plan.profile()));
    page.put("  work     ", UnitWords.minutes(t.minutes()) + " in all" + money(t));
    double dislike = visibleMetre * t.visibleM();
    if (dislike >= 0.5) {
      page.put("  of this  ", dislike(dislike));
    }
    page.put(
        "  holes    ",
        UnitWords.count(t.holes(), "hole")
            + " to make"
            + (t.patches() == 0
                ? ""
                : ", of them " + UnitWords.count(t.patches(), "patch") + " to make good"));
    page.put(
        "  cable    ",
        "%s, %s of route, %s to cut or buy"
            .formatted(
                UnitWords.count(plan.runs().size(), "run"),
                units.cable(t.routeM()),
                units.cut(t.cableM())));
    if (t.visibleM() > 0) {
      page.put("  in sight ", units.cable(t.visibleM()) + " of cable stays visible");
    }
    page.put(
        "  set up   ",
        t.zones().isEmpty() ? "nothing but the rooms" : String.join(", ", t.zones()));
    page.put("  proven   ", proof());
    if (t.cutByTime()) {
      page.put("  cut      ", "time ended the search; another time the plan may be another one");
    }
    PlaceWords.turned(plan.site().turn()).ifPresent(n -> page.put("  north    ", n));
    if (!plan.unrouted().isEmpty()) {
      page.put(
          "  missing  ",
          UnitWords.count(plan.unrouted().size(), "run") + " without a route, see the end");
    }
  }

  /**
   * Whether the minutes hold the dislike is the pricing's matter: it is part of a leg's minutes.
   */
  static String dislike(double minutes) {
    return UnitWords.minutes(minutes) + " stand for dislike of cable in sight, no work";
  }

  private static String money(Plan.Totals t) {
    return t.money()
        .map(m -> String.format(Locale.ROOT, ", materials %.2f %s", m, t.currency()))
        .orElse("");
  }

  /** How near to the least possible the plan is proven to be. */
  String proof() {
    Plan.Totals t = plan.totals();
    if (t.objective() <= t.bound()) {
      return "this is the least there is" + priced(t);
    }
    if (plan.profile().equals("fewest-holes")) {
      return "no plan needs fewer than "
          + UnitWords.count(t.bound() / PER_HOLE, "hole")
          + "; the work that goes with them is not proven least";
    }
    if (plan.profile().equals("least-work")) {
      return "no plan can cost less than %s, this one costs %s%s: within %s"
          .formatted(
              UnitWords.minutes(t.bound() / (double) plan.perMinute()),
              UnitWords.minutes(t.objective() / (double) plan.perMinute()),
              priced(t),
              percent(t.gap()));
    }
    return "within " + percent(t.gap()) + " of the least possible";
  }

  /** Dislike is within the minutes already; what the objective holds beside them is money. */
  private String priced(Plan.Totals t) {
    double money = t.objective() / (double) plan.perMinute() - t.minutes();
    boolean plain = money < 0.5 || !plan.profile().equals("least-work");
    return plain
        ? ""
        : ", of it %s that cable and sealing cost at the hour's worth"
            .formatted(UnitWords.minutes(money));
  }

  static String percent(double gap) {
    return String.format(Locale.ROOT, "%.1f %%", Math.ceil(gap * 1000) / 10);
  }
}
