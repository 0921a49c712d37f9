package holloway.desk;

import holloway.look.Area;
import holloway.look.Panels;
import holloway.plan.Plan;
import holloway.session.Change;
import holloway.session.Choice;
import holloway.session.Shown;
import holloway.session.Wanted;
import holloway.view.Cable;
import holloway.view.HoleSheet;
import holloway.view.TwoWays;
import java.util.List;
import java.util.Locale;

/** What the panels hold; every button is a key too. */
final class Board {
  private final Table t;
  private final Acts acts;

  Board(Table table, Acts acts) {
    this.t = table;
    this.acts = acts;
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
    pages(p, list(width, height, size).width() < 20 * size);
    switch (t.shown.page()) {
      case RUNS -> runs(p, list(width, height, size).width() < 18 * size);
      case HOLES -> holes(p);
      case FINDINGS -> findings(p);
      case CHANGES -> changes(p);
    }
    p.end();
    if (hasCard(t)) {
      p.begin("card", card(width, height, size));
      card(p);
      p.end();
    }
    status(p, width, height, size);
    if (t.shown.help()) {
      Help.say(p, width, height, size);
    }
  }

  private void head(Panels p) {
    Plan.Totals now = t.plan().totals();
    p.heading(t.model().name());
    p.pair("work", t.pictures.words().minutes(now.minutes()));
    p.pair("holes", now.holes() + (now.patches() > 0 ? ", " + now.patches() + " patches" : ""));
    // Rounded up: what is not proven is not said.
    p.pair(
        "proven within",
        String.format(
            Locale.ROOT, "%.1f %%", Math.max(0.0, Math.ceil(now.gap() * 1000 - 1e-9)) / 10));
    if (now.cutByTime()) {
      p.words("ended by its time: a longer search may prove or save more");
    }
    int missing = t.plan().unrouted().size();
    if (missing > 0) {
      p.words(missing + (missing == 1 ? " run has" : " runs have") + " no route: see findings");
    }
    for (String r : t.work.judged().refusals()) {
      p.words("! refused: " + r);
    }
  }

  private void pages(Panels p, boolean narrow) {
    for (Shown.Page page : Shown.Page.values()) {
      if (page.ordinal() % (narrow ? 2 : 4) == 0) {
        p.row(narrow ? 2 : 4);
      }
      String name = page.name().toLowerCase(Locale.ROOT);
      if (p.button(name, page == t.shown.page()) && page != t.shown.page()) {
        t.show(t.shown.with(page));
      }
    }
    p.gap();
  }

  /** In a narrow list a length is left to the card, so that names can be read. */
  private void runs(Panels p, boolean narrow) {
    for (Plan.PlannedRun r : t.plan().runs()) {
      boolean chosen = t.shown.choice().equals(new Choice.Run(r.id()));
      Cable c = t.model().findCable(r.id()).orElse(null);
      if (c == null) {
        continue;
      }
      boolean pressed =
          p.run(
              r.id(),
              narrow ? "" : t.pictures.words().cable(r.routeM()),
              new Seen(t.model(), t.shown).theme().run(c.number()),
              c.dash(),
              chosen);
      choose(pressed, new Choice.Run(r.id()));
    }
    t.plan().unrouted().forEach(u -> p.quiet(u.id() + ": no route"));
  }

  private void choose(boolean pressed, Choice c) {
    if (pressed) {
      t.show(t.shown.choosing(c.equals(t.shown.choice()) ? Choice.NONE : c));
      acts.go();
    }
  }

  private void holes(Panels p) {
    for (Plan.PlannedHole h : t.plan().holes()) {
      Choice c = new Choice.Hole(h.id());
      String text = h.label() + "  " + t.pictures.words().what(h);
      choose(p.item(text, c.equals(t.shown.choice())), c);
    }
  }

  private void findings(Panels p) {
    List<Plan.FindingLine> all = t.plan().findings();
    for (int i = 0; i < all.size(); i++) {
      Choice c = new Choice.Finding(i);
      String text = all.get(i).severity() + ": " + t.pictures.words().finding(all.get(i));
      choose(p.item(text, c.equals(t.shown.choice())), c);
    }
    t.plan().unrouted().forEach(u -> u.whyNot().forEach(w -> p.words(u.id() + ": " + w)));
  }

  private void changes(Panels p) {
    p.row(3);
    press(p, "undo", Act.UNDO);
    press(p, "again", Act.REDO);
    press(p, "save", Act.SAVE);
    p.gap();
    if (t.work.changes().done().isEmpty()) {
      p.quiet("Nothing is changed. Choose a hole and press F to forbid it.");
    }
    for (Change c : t.work.changes().done()) {
      p.words(c.says(t.work.house().units()));
    }
    p.gap();
    p.heading("Against the files as they are");
    for (TwoWays.Row r : t.ways().rows()) {
      p.pair(r.name(), r.more());
      p.quiet("  " + r.first() + ", now " + r.second());
    }
    p.row(1);
    press(p, t.both ? "one picture (V)" : "both side by side (V)", Act.BOTH);
  }

  private void press(Panels p, String text, Act act) {
    if (p.button(text, false)) {
      acts.act(act);
    }
  }

  private void card(Panels p) {
    if (t.chosenHole().isPresent()) {
      hole(p, t.pictures.findHole(t.chosenHole().get().id()).orElseThrow());
    } else if (t.chosenRun().isPresent()) {
      run(p, t.chosenRun().get());
    } else if (t.shown.choice() instanceof Choice.Finding f) {
      Plan.FindingLine line = t.plan().findings().get(f.number());
      p.heading(line.severity() + ", " + line.rule());
      String said = t.pictures.words().finding(line);
      p.words(said);
      if (!said.contains(line.remedy())) {
        p.words(line.remedy());
      }
      p.quiet(line.source());
    } else if (t.shown.choice() instanceof Choice.Member m) {
      BodyCard.member(p, t, m.id());
    } else if (t.shown.choice() instanceof Choice.Hollow h) {
      BodyCard.hollow(p, t, h.id());
      p.row(1);
      press(p, "forbid (F)", Act.FORBID);
    } else if (t.shown.choice() instanceof Choice.Outlet o) {
      BodyCard.outlet(p, t, o.name());
      if (Wanted.slides(t.work.wanted().getOutlet(o.name()))) {
        p.quiet("Slide it along its wall:");
        p.row(2);
        press(p, "back (,)", Act.THINNER);
        press(p, "farther (.)", Act.THICKER);
      }
    }
  }

  private void hole(Panels p, HoleSheet h) {
    p.heading(h.pin().label() + ": " + h.what());
    p.words("From: " + h.from());
    h.tapesA().forEach(x -> p.words(x.length() + " from " + x.landmark()));
    p.words("Comes out: " + h.out());
    h.tapesB().forEach(x -> p.words(x.length() + " from " + x.landmark()));
    for (HoleSheet.Line l : h.lines()) {
      p.gap();
      p.heading(l.title());
      l.words().forEach(p::words);
    }
    p.gap();
    p.heading("Runs through it");
    h.pin().runs().forEach(p::words);
    p.row(2);
    press(p, "forbid (F)", Act.FORBID);
    press(p, "forbid behind (G)", Act.FORBID_SPACE);
  }

  private void run(Panels p, Plan.PlannedRun r) {
    p.heading(r.id());
    p.pair("length", t.pictures.words().cable(r.routeM()));
    p.pair("to cut", t.pictures.words().cable(r.cableM()));
    p.pair("holes", String.valueOf(r.steps().stream().filter(s -> s.label().isPresent()).count()));
    double minutes = r.steps().stream().mapToDouble(s -> s.minutes().orElse(0.0)).sum();
    p.pair("pulling it", t.pictures.words().minutes(minutes));
    p.gap();
    List<String> steps = t.pictures.words().steps(r);
    for (int i = 0; i < steps.size(); i++) {
      boolean here = t.shown.step().equals(java.util.Optional.of(i));
      p.words((here ? "> " : "") + (i + 1) + ". " + steps.get(i));
    }
    p.row(3);
    press(p, "walk (W)", Act.WALK);
    press(p, "back", Act.BACK);
    press(p, "on", Act.AHEAD);
    if (t.step().isPresent()) {
      p.row(2);
      press(p, "forbid (F)", Act.FORBID);
      press(p, "keep in (I)", Act.PIN);
    }
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
      p.quiet(t.work.isPlanning() ? "planning ..." : t.message);
    }
    trouble.forEach(l -> p.words("! " + l));
    p.end();
  }
}
