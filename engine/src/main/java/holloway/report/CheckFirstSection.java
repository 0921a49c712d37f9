package holloway.report;

import holloway.house.Assumption;
import holloway.plan.Plan;
import holloway.schedule.HoleCard;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What has to be looked at before anything is drilled, because the plan hangs on it. */
final class CheckFirstSection {
  private final Sheet sheet;
  private final Page page;
  private final WallDoubts walls;
  private int written;

  CheckFirstSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
    this.walls = new WallDoubts(sheet.plan(), sheet.placed());
  }

  void write() {
    page.title("CHECK FIRST");
    DoubtWords doubts = new DoubtWords(sheet.placed(), sheet.units());
    assumedHoles();
    cards();
    written += doubts.misclosures(page, "does not close: ");
    openShafts();
    each("unaccounted: ", doubts.unaccounted());
    assumptions();
    each("", FloorDoubts.lines(sheet.plan(), sheet.placed()));
    each("", new UnseenDoubts(sheet).lines());
    if (written == 0) {
      page.put("  ", "Nothing: no route hangs on an assumption.");
    }
  }

  /** Spaces nobody knows are never used; what a look may be worth is said. */
  private void openShafts() {
    for (Plan.OpenShaft o : sheet.plan().survey().checkFirst()) {
      String worth =
          o.moreRuns() > 0
              ? UnitWords.count(o.moreRuns(), "run") + " more would have a route"
              : "the plan would take %s less"
                  .formatted(UnitWords.count(Math.round(o.minutesLess()), "minute"));
      each(
          "",
          List.of(
              ("check this first: if %s is a shaft that is open from bottom to top, %s. Look for a"
                      + " flue (then never), pipes and ducts in it. This plan does not use it; to"
                      + " let it, write under hollows what you find: %s")
                  .formatted(o.space(), worth, o.say())));
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
      if (!Set.of("", HouseWords.findFirst(h.kind())).contains(text)) {
        each(h.label() + ": ", List.of(text));
      }
    }
  }

  /** What the survey assumed of a wall matters here only if a route goes through that wall. */
  private void assumptions() {
    List<String> all = sheet.plan().survey().assumed();
    List<String> used = all.stream().filter(this::isHungOn).toList();
    each("", walls.lines(used).stream().map(sheet.words()::sentence).distinct().toList());
    if (used.size() < all.size()) {
      each(
          "",
          List.of(
              "%s more that no route hangs on; holloway check lists them"
                  .formatted(UnitWords.count(all.size() - used.size(), "assumption"))));
    }
  }

  private boolean isHungOn(String assumption) {
    if (assumption.startsWith(Assumption.LEAD)) {
      return false; // what of it matters is said of the single wall or hole
    }
    Optional<Wall> wall = walls.wall(assumption);
    return wall.isEmpty()
        || sheet.plan().runs().stream()
            .flatMap(r -> r.steps().stream())
            .anyMatch(s -> s.id().startsWith(wall.get().id() + "/"));
  }

  private void each(String lead, List<String> lines) {
    for (String line : lines) {
      page.put("  - ", lead + line);
      written++;
    }
  }
}
