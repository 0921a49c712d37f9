package holloway.desk;

import holloway.look.Panels;
import holloway.plan.Plan;
import holloway.session.Choice;
import holloway.session.Wanted;
import holloway.view.HoleSheet;
import java.util.List;

/** The card of what is chosen. */
final class Cards {
  private final Table t;
  private final Acts acts;

  Cards(Table table, Acts acts) {
    this.t = table;
    this.acts = acts;
  }

  void say(Panels p) {
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
    if (t.work.isSketch()) {
      unjudged(p);
    } else {
      judged(p, h);
    }
    p.gap();
    p.heading("Runs through it");
    h.pin().runs().forEach(p::words);
    p.row(2);
    press(p, "forbid (F)", Act.FORBID);
    press(p, "forbid behind (G)", Act.FORBID_SPACE);
  }

  private static void judged(Panels p, HoleSheet h) {
    p.words("From: " + h.from());
    h.tapesA().forEach(x -> p.words(x.length() + " from " + x.landmark()));
    p.words("Comes out: " + h.out());
    h.tapesB().forEach(x -> p.words(x.length() + " from " + x.landmark()));
    for (HoleSheet.Line l : h.lines()) {
      p.gap();
      p.heading(l.title());
      l.words().forEach(p::words);
    }
  }

  /** No place, no size to rely on, no tape: nothing that anybody could drill by. */
  private static void unjudged(Panels p) {
    p.heading(Board.SKETCH);
    p.words(
        "Do not drill by this card. Neither rules nor referee have looked at this hole, and no tape"
            + " lines are known. In the judged plan its number, its size and its way may be others,"
            + " or it may not be there.");
  }

  private void run(Panels p, Plan.PlannedRun r) {
    p.heading(r.id());
    if (t.work.isSketch()) {
      p.heading(Board.SKETCH);
    }
    p.pair("length", t.pictures.words().cable(r.routeM()));
    boolean sketch = t.work.isSketch();
    p.pair("to cut", sketch ? "not known yet" : t.pictures.words().cable(r.cableM()));
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

  private void press(Panels p, String text, Act act) {
    if (p.button(text, false)) {
      acts.act(act);
    }
  }
}
