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
 * steps say they use is not believed. Outside the zones a step has along what it says itself.
 */
final class BringReferee {
  /** An auger's length, E3: deeper holes take more than the bit. */
  /** Trade-facts E1, the nearest steps to 1/2, 3/4 and 1 in. */
  private static final List<Integer> FLEXIBLE_MM = List.of(13, 19, 25);

  private static final double AUGER_MM = 190;

  /** Cable is held up at least so often, A2-15. */
  private static final double SUPPORT_M = 1.2;

  /** From memory but for the respirator (E13): what nobody goes without, where it is dusty. */
  private static final List<Item> DUSTY =
      List.of(Item.LIGHT, Item.RESPIRATOR, Item.GLASSES, Item.GLOVES, Item.COVERALL);

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
    schedule.visits().forEach(r::worn);
    schedule.steps().forEach(r::outside);
    return r.faults;
  }

  private void worn(Visit v) {
    List<Item> wanted =
        switch (v.zone().kind()) {
          case ATTIC, CRAWLSPACE -> DUSTY;
          case CELLAR -> List.of(Item.LIGHT);
          case LADDER -> List.of(Item.LADDER);
          default -> List.of();
        };
    for (Item item : wanted) {
      if (has(v, item) < 1) {
        faults.add("visit " + v.number() + " to " + v.zone().id() + ": without " + item);
      }
    }
  }

  /** In a room nobody is far from the van, but the step has to say what it takes. */
  private void outside(Step s) {
    Map<Item, Double> usedUp = new EnumMap<>(Item.class);
    WorkPlace far = s.other().orElse(s.at());
    Visit here = new Visit(0, s.at(), 1, List.of(s.id()), s.bring());
    Visit there = s.other().isPresent() ? new Visit(0, far, 1, List.of(), s.bringOther()) : here;
    if (!s.at().isZone()) {
      fed(here, s, usedUp);
    }
    if (!far.isZone() && s.kind() == Step.Kind.PULL) {
      caught(there, s);
    }
    enough(here, usedUp);
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
    enough(v, usedUp);
  }

  private void enough(Visit v, Map<Item, Double> usedUp) {
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
      case OPEN, CUT -> {
        any(v, s, Item.SAW, Item.PRY_BAR, Item.HAMMER_DRILL);
        any(v, s, Item.GLASSES);
      }
      case PILOT -> {
        any(v, s, Item.GLASSES);
        any(v, s, Item.DRILL, Item.HAMMER_DRILL);
        any(v, s, Item.PILOT_BIT);
        any(v, s, Item.LOCATOR_WIRE);
      }
      case DRILL -> drill(v, s);
      case MARK -> any(v, s, Item.MARKER);
      case PULL -> pull(v, s, usedUp);
      case SEAL -> seal(v, s, usedUp);
      case TERMINATE -> {
        if (!s.subject().equals("cabinet")) {
          any(v, s, Item.OUTLET_PLATE);
        }
        if (s.runs().stream().anyMatch(r -> !Cable.get(run(r).cable()).factoryEnds())) {
          any(v, s, Item.TERMINATION_TOOL);
        }
      }
      case LABEL -> any(v, s, Item.LABELS);
      case TEST -> any(v, s, Item.TESTER, Item.FIBRE_TESTER);
      case CLOSE -> any(v, s, Item.PATCH_KIT);
    }
  }

  /** The bit is of the hole's own size, and fit for what it bores; eyes are covered. */
  private void drill(Visit v, Step s) {
    any(v, s, Item.TAPE_MEASURE);
    any(v, s, Item.GLASSES);
    Plan.PlannedHole h = hole(s);
    boolean stone = h.through().stream().anyMatch(x -> x.startsWith("masonry"));
    List<Item> bits = stone ? List.of(Item.MASONRY_BIT) : List.of(Item.WOOD_BIT, Item.FLEX_BIT);
    if (stone) {
      any(v, s, Item.HAMMER_DRILL);
    } else {
      any(v, s, Item.DRILL, Item.ANGLE_DRILL);
    }
    List<Item> mine =
        v.bring().stream()
            .filter(b -> bits.contains(b.item()) && b.sizeMm() == h.diameterMm())
            .map(Bring::item)
            .toList();
    if (mine.isEmpty()) {
      faults.add(s.id() + ": no bit of " + h.diameterMm() + " mm for " + h.through());
    } else if (h.depthMm() > AUGER_MM && mine.equals(List.of(Item.WOOD_BIT))) {
      any(v, s, Item.BIT_EXTENSION);
    }
    if (mine.equals(List.of(Item.FLEX_BIT)) && !FLEXIBLE_MM.contains(h.diameterMm())) {
      faults.add(s.id() + ": no flexible bit is made of " + h.diameterMm() + " mm");
    }
  }

  private void seal(Visit v, Step s, Map<Item, Double> usedUp) {
    any(v, s, outdoors(s) ? Item.OUTDOOR_SEALANT : Item.FIRE_SEALANT);
    boolean steel =
        plan.findings().stream()
            .anyMatch(f -> f.rule().equals("nail-plate") && f.place().equals(s.subject()));
    if (steel) {
      usedUp.merge(Item.NAIL_PLATE, 2.0 * hole(s).bores(), Double::sum);
    }
  }

  private Plan.PlannedHole hole(Step s) {
    return plan.holes().stream().filter(h -> h.id().equals(s.subject())).findFirst().orElseThrow();
  }

  private void pull(Visit v, Step s, Map<Item, Double> usedUp) {
    Pull p = pull(s);
    if (p.feed().equals("fish")) {
      any(v, s, Item.FISH_RODS);
      usedUp.merge(Item.STRING, p.stringM(), Double::sum);
    } else if (!laidFor(p.to()) && laidFor(v.zone())) {
      usedUp.merge(Item.SUPPORT, p.metres() / SUPPORT_M, Double::sum);
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
    if (pull(s).feed().equals("hand") && laidFor(v.zone())) {
      any(v, s, Item.SUPPORT);
    }
  }

  private static boolean laidFor(WorkPlace p) {
    return p.kind() == WorkPlace.Kind.ATTIC || p.kind() == WorkPlace.Kind.CRAWLSPACE;
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
