package holloway.desk;

import holloway.look.Panels;
import holloway.plan.Plan;
import holloway.session.Change;
import holloway.session.Choice;
import holloway.view.Cable;
import holloway.view.TwoWays;
import java.util.List;

/** What the list beside the model holds, page by page. */
final class Lists {
  private final Table t;
  private final Acts acts;

  Lists(Table table, Acts acts) {
    this.t = table;
    this.acts = acts;
  }

  /** In a narrow list a length is left to the card, so that names can be read. */
  void runs(Panels p, boolean narrow) {
    for (Plan.PlannedRun r : t.plan().runs()) {
      boolean chosen = t.shown.choice().equals(new Choice.Run(r.id()));
      Cable c = t.model().findCable(r.id()).orElse(null);
      if (c == null) {
        continue;
      }
      boolean pressed =
          p.run(
              r.id() + (t.work.moved().contains(r.id()) ? ": another way" : ""),
              narrow ? "" : t.pictures.words().cable(r.routeM()),
              new Seen(t.model(), t.shown).theme().run(c.number()),
              c.dash(),
              chosen);
      choose(pressed, new Choice.Run(r.id()));
    }
    String none = t.work.isSketch() ? ": no route yet" : ": no route";
    t.plan().unrouted().forEach(u -> p.quiet(u.id() + none));
  }

  private void choose(boolean pressed, Choice c) {
    if (pressed) {
      t.show(t.shown.choosing(c.equals(t.shown.choice()) ? Choice.NONE : c));
      acts.go();
    }
  }

  void holes(Panels p) {
    for (Plan.PlannedHole h : t.plan().holes()) {
      Choice c = new Choice.Hole(h.id());
      String text = h.label() + "  " + t.pictures.words().what(h);
      choose(p.item(text, c.equals(t.shown.choice())), c);
    }
  }

  void findings(Panels p) {
    if (t.work.isSketch()) {
      p.words("Not judged yet: no rule has looked at this plan.");
      return;
    }
    List<Plan.FindingLine> all = t.plan().findings();
    for (int i = 0; i < all.size(); i++) {
      Choice c = new Choice.Finding(i);
      String text = all.get(i).severity() + ": " + t.pictures.words().finding(all.get(i));
      choose(p.item(text, c.equals(t.shown.choice())), c);
    }
    t.plan().unrouted().forEach(u -> u.whyNot().forEach(w -> p.words(u.id() + ": " + w)));
  }

  void changes(Panels p) {
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
      if (t.work.isSketch() && r.name().equals(TwoWays.TO_CUT)) {
        continue; // slack is taken off when it is judged
      }
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
}
