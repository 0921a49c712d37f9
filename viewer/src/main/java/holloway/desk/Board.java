package holloway.desk;

import holloway.look.Area;
import holloway.look.Panels;
import holloway.plan.Plan;
import holloway.session.Choice;
import holloway.session.Shown;
import java.util.List;
import java.util.Locale;

/** What the panels hold; every button is a key too. */
final class Board {
  /** What is said of a plan that was only mended, wherever it is shown. */
  static final String SKETCH = "Sketch: not judged yet";

  private final Table t;
  private final Acts acts;
  private final Lists lists;
  private final Cards cards;

  Board(Table table, Acts acts) {
    this.t = table;
    this.acts = acts;
    this.lists = new Lists(table, acts);
    this.cards = new Cards(table, acts);
  }

  /** Where the list stands. */
  static Area list(int width, int height, float size) {
    float w = Math.min(width * 0.42f, size * 21);
    return new Area(width - w - size * 0.5f, size * 0.5f, w, height - size);
  }

  /** Where the card of what is chosen stands. */
  static Area card(int width, int height, float size) {
    float w = Math.min(width * 0.36f, size * 20);
    return new Area(size * 0.5f, size * 0.5f, w, Math.min(height * 0.62f, size * 26));
  }

  /** What is chosen has a card, but for two pictures side by side: it would cover the first. */
  static boolean hasCard(Table t) {
    return !t.shown.choice().equals(Choice.NONE) && !t.both;
  }

  void say(Panels p, int width, int height, float size) {
    p.begin("list", list(width, height, size));
    head(p);
    pages(p);
    switch (t.shown.page()) {
      case RUNS -> lists.runs(p, list(width, height, size).width() < 18 * size);
      case HOLES -> lists.holes(p);
      case FINDINGS -> lists.findings(p);
      case CHANGES -> lists.changes(p);
    }
    p.end();
    if (hasCard(t)) {
      p.begin("card", card(width, height, size));
      cards.say(p);
      p.end();
    }
    status(p, width, height, size);
    if (t.shown.help()) {
      boolean turned = t.pictures.north().isPresent();
      Help.say(p, width, height, size, t.helpMoved(), turned);
    }
  }

  private void head(Panels p) {
    Plan.Totals now = t.plan().totals();
    p.heading(t.model().name());
    p.pair("work", t.pictures.words().minutes(now.minutes()));
    p.pair("holes", now.holes() + (now.patches() > 0 ? ", " + now.patches() + " patches" : ""));
    if (t.work.isSketch()) {
      p.pair("proven within", "not proven yet");
      p.heading(SKETCH);
      p.words("Only mended after your change. Do not drill by it.");
    } else {
      // Rounded up: what is not proven is not said.
      p.pair(
          "proven within",
          String.format(
              Locale.ROOT, "%.1f %%", Math.max(0.0, Math.ceil(now.gap() * 1000 - 1e-9)) / 10));
    }
    if (now.cutByTime()) {
      p.words("ended by its time: a longer search may prove or save more");
    }
    t.outcome().filter(o -> !o.isAsSketched()).ifPresent(o -> o.lines().forEach(p::words));
    int missing = t.plan().unrouted().size();
    if (missing > 0) {
      String none = t.work.isSketch() ? " no route yet" : " no route: see findings";
      p.words(missing + (missing == 1 ? " run has" : " runs have") + none);
    }
    for (String r : t.work.refusals()) {
      p.words("! refused: " + r);
    }
  }

  private void pages(Panels p) {
    for (Shown.Page page : Shown.Page.values()) {
      // Four in a row cut the longest name off where a bar to scroll by stands beside them.
      if (page.ordinal() % 2 == 0) {
        p.row(2);
      }
      String name = page.name().toLowerCase(Locale.ROOT);
      if (p.button(name, page == t.shown.page()) && page != t.shown.page()) {
        t.show(t.shown.with(page));
      }
    }
    p.gap();
  }

  private void press(Panels p, String text, Act act) {
    if (p.button(text, false)) {
      acts.act(act);
    }
  }

  /** What is going on, or was said last. */
  private String doing() {
    if (t.work.isSketch()) {
      return "a sketch; it is being proven and judged ...";
    }
    return t.work.isPlanning() ? "planning ..." : t.message;
  }

  /** How much of the window's lower edge the status takes, as wide as it is. */
  static float statusHeight(Table t, float width, float size) {
    float buttons = inRow(width, size) == 5 ? 0 : 1.8f;
    return size * (buttons + (t.work.trouble().isEmpty() ? 4.4f : 7.5f));
  }

  /** How many buttons of the status stand in a row. */
  private static int inRow(float width, float size) {
    return width < 30 * size ? 3 : 5;
  }

  private void status(Panels p, int width, int height, float size) {
    List<String> trouble = t.work.trouble();
    float right = list(width, height, size).x();
    float h = statusHeight(t, right, size);
    p.begin("status", new Area(size * 0.5f, height - h - size * 0.5f, right - size, h));
    int first = inRow(right, size);
    p.row(first);
    press(p, t.shown.peel().word(), Act.PEEL);
    press(p, t.shown.cut().map(c -> c.way().word() + " slice").orElse("slice"), Act.SLICE);
    press(p, t.shown.light() ? "light" : "dusk", Act.THEME);
    if (first == 3) {
      p.row(2);
    }
    press(p, "whole", Act.WHOLE);
    press(p, "help (H)", Act.HELP);
    if (trouble.isEmpty()) {
      p.quiet(doing());
    }
    trouble.forEach(l -> p.words("! " + l));
    p.end();
  }
}
