package holloway.report;

import holloway.plan.Plan;

/** Runs that have no route, and which limit stopped each. */
final class UnroutedSection {
  private final Plan plan;
  private final Page page;

  UnroutedSection(Sheet sheet, Page page) {
    this(sheet.plan(), page);
  }

  UnroutedSection(Plan plan, Page page) {
    this.plan = plan;
    this.page = page;
  }

  void write() {
    if (plan.unrouted().isEmpty()) {
      return;
    }
    page.title("WITHOUT A ROUTE");
    for (Plan.Unrouted u : plan.unrouted()) {
      page.put("  ", 6, u.id());
      u.whyNot().forEach(why -> page.put("      - ", why));
      if (u.whyNot().isEmpty()) {
        page.put("      - ", "no way between its ends was found");
      }
    }
  }
}
