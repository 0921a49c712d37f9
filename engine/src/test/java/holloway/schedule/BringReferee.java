package holloway.schedule;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import holloway.schedule.Bring.Item;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What each visit has to have along, worked out from what is done in it and from the plan; what the
 * steps say they use is not believed.
 */
final class BringReferee {
  private final Plan plan;
  private final WorkSchedule schedule;
  private final List<String> faults = new ArrayList<>();

  private BringReferee(Plan plan, WorkSchedule schedule) {
    this.plan = plan;
    this.schedule = schedule;
  }

  static List<String> faults(Plan plan, WorkSchedule schedule) {
    BringReferee r = new BringReferee(plan, schedule);
    schedule.visits().forEach(r::visit);
    return r.faults;
  }

  private void visit(Visit v) {
    Map<Item, Double> usedUp = new EnumMap<>(Item.class);
    for (Step s : schedule.steps()) {
      if (v.steps().contains(s.id())) {
        boolean first = s.visit() == v.number();
        boolean second = s.other().isPresent() ? s.otherVisit() == v.number() : first;
        if (first) {
          fed(v, s, usedUp);
        }
        if (second && s.kind() == Step.Kind.PULL) {
          caught(v, s);
        }
      }
    }
    usedUp.forEach(
        (item, amount) -> {
          if (has(v, item) < amount - 1e-6) {
            faults.add("visit " + v.number() + ": " + amount + " of " + item + " are not along");
          }
        });
  }

  /** Where a step is done, or a cable fed in. */
  private void fed(Visit v, Step s, Map<Item, Double> usedUp) {
    switch (s.kind()) {
      case CHECK_FIRST -> any(v, s, Item.STUD_FINDER);
      case OPEN, CUT -> any(v, s, Item.SAW, Item.PRY_BAR, Item.HAMMER_DRILL);
      case PILOT -> {
        any(v, s, Item.DRILL, Item.HAMMER_DRILL);
        any(v, s, Item.PILOT_BIT);
        any(v, s, Item.LOCATOR_WIRE);
      }
      case DRILL -> {
        any(v, s, Item.DRILL, Item.HAMMER_DRILL);
        any(v, s, Item.TAPE_MEASURE);
      }
      case MARK -> any(v, s, Item.MARKER);
      case PULL -> pull(v, s, usedUp);
      case SEAL -> any(v, s, outdoors(s) ? Item.OUTDOOR_SEALANT : Item.FIRE_SEALANT);
      case TERMINATE -> {
        if (s.runs().stream().anyMatch(r -> !Cable.get(run(r).cable()).factoryEnds())) {
          any(v, s, Item.TERMINATION_TOOL);
        }
      }
      case LABEL -> any(v, s, Item.LABELS);
      case TEST -> any(v, s, Item.TESTER, Item.FIBRE_TESTER);
      case CLOSE -> any(v, s, Item.PATCH_KIT);
    }
  }

  private void pull(Visit v, Step s, Map<Item, Double> usedUp) {
    Pull p = pull(s);
    if (p.feed().equals("fish")) {
      any(v, s, Item.FISH_RODS);
      usedUp.merge(Item.STRING, p.stringM(), Double::sum);
    }
    for (Pull.Strand strand : p.strands()) {
      if (strand.stretch() == 0) {
        any(v, s, strand.readyMade() ? Item.LEAD : Item.CABLE_BOX);
      }
    }
  }

  /** A cable that is not ready-made is cut where it comes out last. */
  private void caught(Visit v, Step s) {
    if (pull(s).strands().stream().anyMatch(t -> t.last() && !t.readyMade())) {
      any(v, s, Item.CUTTERS);
    }
  }

  private void any(Visit v, Step s, Item... items) {
    if (Set.of(items).stream().noneMatch(i -> has(v, i) > 0)) {
      faults.add("visit " + v.number() + ", " + s.id() + ": without " + List.of(items));
    }
  }

  private static double has(Visit v, Item item) {
    return v.bring().stream().filter(b -> b.item() == item).mapToDouble(Bring::amount).sum();
  }

  private Pull pull(Step s) {
    return schedule.pulls().stream()
        .filter(p -> p.id().equals(s.subject()))
        .findFirst()
        .orElseThrow();
  }

  private Plan.PlannedRun run(String id) {
    return plan.runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private boolean outdoors(Step s) {
    return plan.holes().stream()
        .filter(h -> h.id().equals(s.subject()))
        .anyMatch(h -> h.between().stream().anyMatch(b -> b.startsWith("outside/")));
  }
}
