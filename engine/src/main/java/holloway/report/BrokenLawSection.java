package holloway.report;

import holloway.plan.Plan;

/** A plan that goes against a rule of law says so before anything else is read. */
final class BrokenLawSection {
  private final Plan plan;
  private final Page page;

  BrokenLawSection(Plan plan, Page page) {
    this.plan = plan;
    this.page = page;
  }

  void write() {
    if (plan.findings().stream().noneMatch(Plan.FindingLine::breaksLaw)) {
      return;
    }
    page.title("DO NOT CARRY THIS OUT AS IT STANDS: IT BREAKS A RULE OF LAW");
    plan.findings().stream()
        .filter(Plan.FindingLine::breaksLaw)
        .forEach(f -> page.put("  - ", HouseWords.plain(f.text()) + " [" + f.source() + "]"));
  }
}
