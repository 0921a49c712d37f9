package holloway.report;

import holloway.plan.Plan;
import java.util.List;

/** What the referee says of a plan: each refusal a line, then the findings. */
public final class RefereeText {
  private RefereeText() {}

  public static String of(
      Plan plan,
      List<String> refusals,
      List<Plan.FindingLine> findings,
      boolean certified,
      Ink ink) {
    Page page = new Page(ink);
    if (refusals.isEmpty()) {
      page.line(
          "The referee accepts this plan: %s, %s, every leg and price gone over."
              .formatted(
                  UnitWords.count(plan.runs().size(), "run"),
                  UnitWords.count(plan.holes().size(), "hole")));
      page.line(
          certified
              ? "The checker accepts its certificate: the bound was recomputed and holds."
              : "It holds no certificate, so its bound was not recomputed (plan --certificate).");
    } else {
      refusals.forEach(r -> page.line("refused: " + r));
    }
    FindingsSection.write(findings, text -> text, page);
    return page.text();
  }
}
