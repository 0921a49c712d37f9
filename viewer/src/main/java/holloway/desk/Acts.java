package holloway.desk;

import holloway.look.Key;
import holloway.pipeline.LiveHouse;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.session.Change;
import holloway.session.Choice;
import holloway.session.Cut;
import holloway.session.Wanted;
import holloway.units.UnitSystem;
import holloway.view.Orbit;
import holloway.view.Storey;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Carries out what keys and buttons ask for. */
final class Acts {
  private static final long SLICE_STEP = 100_000_000L;
  private static final long SLIDE_METRIC = 100_000_000L;
  private static final long SLIDE_INCH = 101_600_000L;
  private static final float TURN = 0.13f;

  /** Lines that a key moves the help by, while it is shown. */
  private static final Map<Act, Integer> SCROLLS =
      Map.of(Act.NEXT, 2, Act.PREVIOUS, -2, Act.FAR, 12, Act.NEAR, -12);

  private final Table t;
  private final Runnable save;

  Acts(Table table, Runnable save) {
    this.t = table;
    this.save = save;
  }

  void key(Key key, boolean shift, boolean control) {
    if (control) {
      if (key == Key.Z) {
        act(shift ? Act.REDO : Act.UNDO);
      } else if (key == Key.S) {
        act(Act.SAVE);
      }
      return;
    }
    int digit = key.ordinal() - Key.DIGIT_0.ordinal();
    if (digit >= 0 && digit <= 9) {
      level(digit);
      return;
    }
    Act.of(key, shift).ifPresent(this::act);
  }

  private void level(int number) {
    List<Storey> all = t.model().storeys();
    if (number == 0) {
      t.show(t.shown.hiding(Set.of()));
    } else if (number <= all.size()) {
      t.show(t.shown.turned(all.get(number - 1).name()));
    }
  }

  void act(Act a) {
    if (t.shown.help() && SCROLLS.containsKey(a)) {
      t.moveHelp(SCROLLS.get(a));
      return;
    }
    switch (a) {
      case HELP -> t.show(t.shown.withHelp(!t.shown.help()));
      case LEAVE -> leave();
      case PEEL -> t.show(t.shown.with(t.shown.peel().deeper()));
      case COVER -> t.show(t.shown.with(t.shown.peel().shallower()));
      case LEVELS -> t.show(t.shown.hiding(Set.of()));
      case SLICE -> slice();
      case AHEAD -> along(1);
      case BACK -> along(-1);
      case THICKER -> thicker(1);
      case THINNER -> thicker(-1);
      case PAGE -> t.show(t.shown.with(t.shown.page().next()));
      case NEXT -> next(1);
      case PREVIOUS -> next(-1);
      case GO -> go();
      case WALK -> walk();
      case OUTLET -> outlet();
      case BOTH -> t.turnBoth();
      case THEME -> t.show(t.shown.withLight(!t.shown.light()));
      case FATTER -> t.show(t.shown.fatter(true));
      case FINER -> t.show(t.shown.fatter(false));
      case LARGER -> t.show(t.shown.larger(1));
      case SMALLER -> t.show(t.shown.larger(-1));
      case WHOLE -> t.look(Orbit.whole(t.model()));
      case NEAR -> t.see(t.orbit.nearer(1.25f));
      case FAR -> t.see(t.orbit.nearer(0.8f));
      case TURN_LEFT -> t.see(t.orbit.turned(-TURN, 0));
      case TURN_RIGHT -> t.see(t.orbit.turned(TURN, 0));
      case TURN_UP -> t.see(t.orbit.turned(0, TURN));
      case TURN_DOWN -> t.see(t.orbit.turned(0, -TURN));
      default -> change(a);
    }
  }

  private void change(Act a) {
    switch (a) {
      case FORBID -> forbid();
      case FORBID_SPACE -> forbidSpace();
      case PIN -> pin();
      case UNDO -> t.say(t.work.undo() ? "undone" : "nothing to undo");
      case REDO -> t.say(t.work.redo() ? "done again" : "nothing to do again");
      case SAVE -> save.run();
      case QUIT -> t.over = true;
      default -> throw new IllegalStateException("nothing does " + a);
    }
  }

  private void leave() {
    if (t.shown.help()) {
      t.show(t.shown.withHelp(false));
    } else if (t.shown.step().isPresent()) {
      t.show(t.shown.walking(Optional.empty()));
    } else {
      t.show(t.shown.choosing(Choice.NONE));
    }
  }

  private void slice() {
    Optional<Cut> now = t.shown.cut();
    boolean last = now.map(c -> c.way() == Cut.Way.FLOOR).orElse(false);
    if (last) {
      t.show(t.shown.with(Optional.<Cut>empty()));
      return;
    }
    Cut.Way way = now.map(c -> c.way().next()).orElse(Cut.Way.WEST);
    int axis = way.ordinal();
    float middle = axis == 2 ? 1.2f : t.model().centre().get(axis);
    t.show(t.shown.with(Optional.of(Cut.usual(way, Math.round(middle * 1e9)))));
  }

  private void along(int by) {
    if (t.shown.step().isPresent()) {
      step(t.shown.step().get() + by);
    } else if (t.shown.cut().isPresent()) {
      t.show(t.shown.with(t.shown.cut().map(c -> c.moved(by * SLICE_STEP))));
    }
  }

  private void step(int to) {
    int last = t.chosenRun().map(r -> r.steps().size() - 1).orElse(-1);
    if (to >= 0 && to <= last) {
      t.show(t.shown.walking(Optional.of(to)));
      t.place().ifPresent(p -> t.look(t.orbit.to(p, Math.min(t.orbit.distance(), 5))));
    }
  }

  private void thicker(int by) {
    if (t.shown.choice() instanceof Choice.Outlet o) {
      Outlet outlet = t.work.wanted().getOutlet(o.name());
      if (Wanted.slides(outlet)) {
        change(slide(t.work.house(), o.name(), by));
      } else {
        t.say(o.name() + " is on a ceiling; only an outlet on a wall slides");
      }
    } else if (t.shown.cut().isPresent()) {
      t.show(t.shown.with(t.shown.cut().map(c -> c.thicker(by > 0 ? 1.25 : 0.8))));
    }
  }

  /** One press of the key: so many steps along the wall. */
  static Change.Slide slide(LiveHouse house, String outlet, int by) {
    boolean metric = house.units() == UnitSystem.METRIC;
    return new Change.Slide(outlet, by * (metric ? SLIDE_METRIC : SLIDE_INCH));
  }

  private void next(int by) {
    List<Choice> all = t.list();
    if (all.isEmpty()) {
      return;
    }
    int at = all.indexOf(t.shown.choice());
    int to = at < 0 ? (by > 0 ? 0 : all.size() - 1) : Math.floorMod(at + by, all.size());
    t.show(t.shown.choosing(all.get(to)));
    go();
  }

  void go() {
    float away = t.shown.choice() instanceof Choice.Run ? 12 : 4;
    t.placeOf(t.shown.choice()).ifPresent(p -> t.look(t.orbit.to(p, away)));
  }

  private void walk() {
    if (t.chosenRun().isEmpty()) {
      t.say("choose a run first (Tab, Down)");
      return;
    }
    step(0);
  }

  private void outlet() {
    List<Outlet> all = t.work.wanted().outlets();
    int at = -1;
    for (int i = 0; i < all.size(); i++) {
      at = t.shown.choice().equals(new Choice.Outlet(all.get(i).name())) ? i : at;
    }
    t.show(t.shown.choosing(new Choice.Outlet(all.get((at + 1) % all.size()).name())));
    go();
  }

  private void forbid() {
    Optional<Plan.PlannedHole> hole = t.chosenHole();
    if (hole.isPresent()) {
      change(new Change.Forbid(hole.get().id(), hole.get().label()));
      return;
    }
    if (t.shown.choice() instanceof Choice.Hollow s) {
      change(new Change.Forbid(s.id(), BodyCard.name(t, s.id())));
      return;
    }
    Optional<Plan.PlanStep> step = t.step();
    if (step.isEmpty()) {
      t.say("choose a hole or hollow, or walk a run to the hollow that you doubt");
      return;
    }
    String id = step.get().id();
    boolean leg = step.get().kind().equals("leg");
    String name = leg ? t.pictures.words().hollow(t.plan(), id) : step.get().label().orElse(id);
    change(new Change.Forbid(id, name));
  }

  private void forbidSpace() {
    Optional<Plan.PlannedHole> hole = t.chosenHole();
    if (hole.isEmpty() && t.shown.choice() instanceof Choice.Hollow) {
      forbid();
      return;
    }
    if (hole.isEmpty()) {
      t.say("choose a hole first (Tab to the holes, Down)");
      return;
    }
    String space = hole.get().between().get(1);
    change(new Change.Forbid(space, t.pictures.words().hollow(t.plan(), space)));
  }

  private void pin() {
    Optional<Plan.PlannedRun> run = t.chosenRun();
    if (run.isEmpty()) {
      t.say("choose a run and walk to the hollow it has to go through");
      return;
    }
    String id = run.get().id();
    boolean pinned =
        t.work.wanted().runs().stream().anyMatch(r -> r.id().equals(id) && r.through().isPresent());
    Optional<Plan.PlanStep> leg = t.step().filter(s -> s.kind().equals("leg"));
    if (pinned) {
      change(new Change.Unpin(id));
    } else if (leg.isPresent()) {
      String name = t.pictures.words().hollow(t.plan(), leg.get().id());
      change(new Change.Pin(id, leg.get().id(), name));
    } else {
      t.say("walk to a step that lies in a hollow first (W, Right)");
    }
  }

  private void change(Change c) {
    t.work.change(c);
    t.say(c.says(t.work.house().units()));
  }
}
