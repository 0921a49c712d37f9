package holloway.desk;

import holloway.pipeline.LiveHouse;
import holloway.plan.Plan;
import holloway.session.Choice;
import holloway.session.Shown;
import holloway.session.Work;
import holloway.view.Cable;
import holloway.view.Model;
import holloway.view.Orbit;
import holloway.view.Pictures;
import holloway.view.TwoWays;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** What lies on the desk: the house and its plan, what is shown of it, and from where. */
final class Table {
  final Work work;
  Shown shown = Shown.FIRST;
  Orbit orbit;
  Pictures pictures;
  private Pointed pointed;
  String message = "";
  boolean over;
  private int helpBy;

  /** The plan of before is shown beside the one of now. */
  boolean both;

  /** What judging made of the sketch that was shown before; empty where there was none. */
  private Optional<Outcome> outcome = Optional.empty();

  private Pictures before;
  private LiveHouse.Judged beforeOf;

  /** How far right of its middle the house is seen beside a card, as a part of its width. */
  DoubleSupplier beside = () -> 0;

  /** Grows with everything that changes what is seen. */
  int version;

  Table(Work work) {
    this.work = work;
    refresh();
    orbit = Orbit.whole(model());
  }

  /** Makes the model of the plan as it is now; what is no longer there is no longer chosen. */
  void refresh() {
    pictures = new Pictures(work.drawn());
    pointed = null;
    outcome = work.replaced().map(s -> Outcome.of(s, plan(), pictures.words()));
    boolean gone =
        shown.choice() instanceof Choice.Hole x && hole(x.id()).isEmpty()
            || shown.choice() instanceof Choice.Member m && model().findPiece(m.id()).isEmpty()
            || shown.choice() instanceof Choice.Hollow s && model().findSpace(s.id()).isEmpty()
            || shown.choice() instanceof Choice.Run r && run(r.id()).isEmpty()
            || shown.choice() instanceof Choice.Finding f && f.number() >= plan().findings().size();
    if (gone) {
      shown = shown.choosing(Choice.NONE);
    }
    if (shown.step().isPresent()) {
      int last = chosenRun().map(r -> r.steps().size() - 1).orElse(-1);
      shown = shown.walking(shown.step().filter(s -> s <= last));
    }
    version++;
  }

  Optional<Outcome> outcome() {
    return outcome;
  }

  /** Takes answers that have come in. */
  void take() {
    if (!work.poll()) {
      return;
    }
    refresh();
    if (outcome.isPresent()) {
      say(outcome.get().inShort());
    } else if (work.trouble().isEmpty() && message.isEmpty()) {
      say("planned");
    }
  }

  /** What can be pointed at; made when it is first asked for. */
  Pointed pointed() {
    if (pointed == null) {
      pointed = new Pointed(model());
    }
    return pointed;
  }

  /** Moves the help so many lines down. */
  void moveHelp(int lines) {
    helpBy += lines;
    version++;
  }

  /** Lines that the help is still to be moved; told once. */
  int helpMoved() {
    int by = helpBy;
    helpBy = 0;
    return by;
  }

  void turnBoth() {
    both = !both;
    version++;
  }

  /** The plan as the files want it. */
  Model before() {
    if (beforeOf != work.before()) {
      beforeOf = work.before();
      before = new Pictures(work.filesHouse().drawn(beforeOf));
    }
    return before.model();
  }

  /** What differs between the files' plan and the one of now. */
  TwoWays ways() {
    return new TwoWays(work.before().plan(), plan(), pictures.words());
  }

  Plan plan() {
    return work.plan();
  }

  Model model() {
    return pictures.model();
  }

  void show(Shown next) {
    if (!next.equals(shown)) {
      shown = next;
      version++;
    }
  }

  void see(Orbit next) {
    orbit = next;
    version++;
  }

  /** Looks from another place, the target in the middle of what no card covers. */
  void look(Orbit next) {
    see(next.aside((float) beside.getAsDouble()));
  }

  void say(String words) {
    message = words;
    version++;
  }

  Optional<Plan.PlannedHole> hole(String id) {
    return plan().holes().stream().filter(h -> h.id().equals(id)).findFirst();
  }

  Optional<Plan.PlannedRun> run(String id) {
    return plan().runs().stream().filter(r -> r.id().equals(id)).findFirst();
  }

  Optional<Plan.PlannedRun> chosenRun() {
    return shown.choice() instanceof Choice.Run r ? run(r.id()) : Optional.empty();
  }

  Optional<Plan.PlannedHole> chosenHole() {
    return shown.choice() instanceof Choice.Hole h ? hole(h.id()) : Optional.empty();
  }

  /** The step of the chosen run that the person is at. */
  Optional<Plan.PlanStep> step() {
    return chosenRun().flatMap(r -> shown.step().map(s -> r.steps().get(s)));
  }

  /** Half-way along the step, where the person is; empty when they are not walking. */
  Optional<Vector3f> place() {
    Optional<Cable> cable = chosenRun().flatMap(r -> model().findCable(r.id()));
    if (cable.isEmpty() || shown.step().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(cable.get().middle(shown.step().get()));
  }

  /** What the list beside the model holds, as choices. */
  List<Choice> list() {
    List<Choice> out = new ArrayList<>();
    switch (shown.page()) {
      case RUNS -> plan().runs().forEach(r -> out.add(new Choice.Run(r.id())));
      case HOLES -> plan().holes().forEach(h -> out.add(new Choice.Hole(h.id())));
      case FINDINGS -> {
        for (int i = 0; i < plan().findings().size(); i++) {
          out.add(new Choice.Finding(i));
        }
      }
      case CHANGES -> {}
    }
    return out;
  }

  /** Where a choice is in the house; empty for what has no place. */
  Optional<Vector3fc> placeOf(Choice c) {
    if (c instanceof Choice.Hole h) {
      return model().findPin(h.id()).map(p -> p.middle());
    }
    if (c instanceof Choice.Run r) {
      return model().findCable(r.id()).map(x -> x.middle());
    }
    if (c instanceof Choice.Outlet o) {
      return model().ends().stream()
          .filter(e -> e.name().equals(o.name()))
          .findFirst()
          .map(e -> e.at());
    }
    if (c instanceof Choice.Member m) {
      return model().findPiece(m.id()).map(p -> p.centre());
    }
    if (c instanceof Choice.Hollow s) {
      return model().findSpace(s.id()).map(p -> p.centre());
    }
    if (c instanceof Choice.Finding f) {
      return plan().findings().get(f.number()).at().map(holloway.view.Models::place);
    }
    return Optional.empty();
  }
}
