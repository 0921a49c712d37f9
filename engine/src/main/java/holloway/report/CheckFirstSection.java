package holloway.report;

import holloway.plan.Plan;
import holloway.schedule.HoleCard;
import java.util.List;
import java.util.Set;

/** What has to be looked at before anything is drilled, because the plan hangs on it. */
final class CheckFirstSection {
  private final Sheet sheet;
  private final Page page;
  private int written;

  CheckFirstSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    page.title("CHECK FIRST");
    DoubtWords doubts = new DoubtWords(sheet.placed(), sheet.units());
    assumedHoles();
    cards();
    each("does not close: ", doubts.misclosures());
    each("unaccounted: ", doubts.unaccounted());
    each("assumed: ", sheet.plan().survey().assumed());
    if (written == 0) {
      page.put("  ", "Nothing: no route hangs on an assumption.");
    }
  }

  private void assumedHoles() {
    List<String> labels =
        sheet.plan().holes().stream()
            .filter(Plan.PlannedHole::assumed)
            .map(Plan.PlannedHole::label)
            .toList();
    if (!labels.isEmpty()) {
      each(
          "",
          List.of(
              String.join(", ", labels)
                  + ": find the stud or joist first; nobody has found it yet and its place is"
                  + " assumed."));
    }
  }

  private void cards() {
    for (Plan.PlannedHole h : sheet.plan().holes()) {
      String text = sheet.findCard(h.id()).map(HoleCard::checkFirst).orElse("");
      if (!Set.of("", "find the stud first").contains(text)) {
        each(h.label() + ": ", List.of(text));
      }
    }
  }

  private void each(String lead, List<String> lines) {
    for (String line : lines) {
      page.put("  - ", lead + line);
      written++;
    }
  }
}
