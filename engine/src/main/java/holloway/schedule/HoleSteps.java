package holloway.schedule;

import holloway.hollow.HollowHouse;
import holloway.plan.Drilling;
import holloway.plan.Plan;
import holloway.plan.Sealing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The steps that make openings and holes, seal and close them. */
final class HoleSteps {
  /** An auger's length, E3; deeper holes take an extension. */
  private final Plan plan;

  private final HollowHouse house;
  private final Places places;
  private final Openings openings;

  HoleSteps(Plan plan, HollowHouse house, Places places, Openings openings) {
    this.plan = plan;
    this.house = house;
    this.places = places;
    this.openings = openings;
  }

  List<Step> list() {
    List<Step> out = new ArrayList<>();
    openings.list().forEach(w -> out.add(open(w)));
    Map<String, Pilot> pilots = Pilots.of(plan, house);
    for (Plan.PlannedHole h : plan.holes()) {
      boolean assumed = h.assumed();
      Optional<Pilot> pilot = Optional.ofNullable(pilots.get(h.id()));
      if (assumed) {
        out.add(check(h));
      }
      pilot.ifPresent(p -> out.add(pilot(h, p, assumed)));
      out.add(drill(h, assumed, pilot.isPresent()));
      if (Sealing.needsSeal(h, house.framed().placed()) || isOutdoor(h)) {
        out.add(seal(h));
      }
    }
    return out;
  }

  private Step open(Plan.PlannedWork w) {
    boolean cut = w.kind().equals("cut-out");
    Step.Kind kind = cut ? Step.Kind.CUT : Step.Kind.OPEN;
    Bring.Item tool =
        switch (w.kind()) {
          case "channel" -> Bring.Item.HAMMER_DRILL;
          case "access" -> Bring.Item.PRY_BAR;
          default -> Bring.Item.SAW;
        };
    return new StepDraft(kind.word() + "/" + w.id(), kind, w.id(), openings.place(w))
        .runs(through(w))
        .makes("open:" + w.id())
        .bring(Bring.of(Bring.Item.TAPE_MEASURE), Bring.of(tool), Bring.of(Bring.Item.GLASSES))
        .done();
  }

  private List<String> through(Plan.PlannedWork w) {
    List<String> out = new ArrayList<>();
    for (Plan.PlannedRun r : plan.runs()) {
      if (openings.ofRun(r).contains(w.id())) {
        out.add(r.id());
      }
    }
    plan.holes().stream()
        .filter(h -> openings.ofHole(h).contains(w.id()))
        .forEach(h -> out.addAll(h.runs()));
    return out;
  }

  private Step check(Plan.PlannedHole h) {
    return new StepDraft("check-first/" + h.id(), Step.Kind.CHECK_FIRST, h.id(), places.hole(h))
        .runs(h.runs())
        .makes("checked:" + h.id())
        .bring(Bring.of(Bring.Item.STUD_FINDER), Bring.of(Bring.Item.TAPE_MEASURE))
        .done();
  }

  private Step pilot(Plan.PlannedHole h, Pilot p, boolean checked) {
    WorkPlace place = p.from().map(f -> inside(f, h)).orElseGet(() -> places.hole(h));
    StepDraft out =
        new StepDraft("pilot/" + h.id(), Step.Kind.PILOT, h.id(), place)
            .runs(h.runs())
            .makes("pilot:" + h.id())
            .bring(
                Bring.of(Bring.Item.TAPE_MEASURE),
                Bring.of(p.isMasonry() ? Bring.Item.HAMMER_DRILL : Bring.Item.DRILL),
                Bring.bit(Bring.Item.PILOT_BIT, p.bitMm()),
                Bring.of(Bring.Item.LOCATOR_WIRE),
                Bring.of(Bring.Item.GLASSES));
    openings.ofHole(h).forEach(o -> out.needs("open:" + o));
    return (checked ? out.needs("checked:" + h.id()) : out).done();
  }

  private WorkPlace inside(Pilot.From from, Plan.PlannedHole h) {
    return from.hollow()
        .map(id -> places.hollow(id, h.at()).orElseGet(() -> places.hole(h)))
        .orElseGet(() -> places.room(from.words()));
  }

  private Step drill(Plan.PlannedHole h, boolean checked, boolean pilot) {
    StepDraft out =
        new StepDraft("drill/" + h.id(), Step.Kind.DRILL, h.id(), places.hole(h))
            .runs(h.runs())
            .makes("hole:" + h.id())
            .bring(Bring.of(Bring.Item.TAPE_MEASURE), Bring.of(Bring.Item.GLASSES))
            .bring(bit(h));
    openings.ofHole(h).forEach(o -> out.needs("open:" + o));
    if (checked) {
      out.needs("checked:" + h.id());
    }
    return (pilot ? out.needs("pilot:" + h.id()) : out).done();
  }

  private Bring[] bit(Plan.PlannedHole h) {
    int mm = h.diameterMm();
    Bring drill = Bring.of(Bring.Item.DRILL);
    Bring wood = Bring.bit(Bring.Item.WOOD_BIT, mm);
    Bring further = Bring.of(Bring.Item.BIT_EXTENSION);
    return switch (Drilling.of(h, house)) {
      case MASONRY ->
          new Bring[] {Bring.of(Bring.Item.HAMMER_DRILL), Bring.bit(Bring.Item.MASONRY_BIT, mm)};
      case FLEXIBLE -> new Bring[] {drill, Bring.bit(Bring.Item.FLEX_BIT, mm)};
      case ANGLED ->
          Drilling.isDeep(h)
              ? new Bring[] {Bring.of(Bring.Item.ANGLE_DRILL), wood, further}
              : new Bring[] {Bring.of(Bring.Item.ANGLE_DRILL), wood};
      case LONG -> new Bring[] {drill, wood, further};
      case SHORT -> new Bring[] {drill, wood};
    };
  }

  private Step seal(Plan.PlannedHole h) {
    Bring.Item what = isOutdoor(h) ? Bring.Item.OUTDOOR_SEALANT : Bring.Item.FIRE_SEALANT;
    StepDraft out =
        new StepDraft("seal/" + h.id(), Step.Kind.SEAL, h.id(), places.hole(h))
            .runs(h.runs())
            .needs("hole:" + h.id())
            .makes("sealed:" + h.id())
            .bring(Bring.of(what));
    if (wantsSteel(h)) {
      out.bring(new Bring(Bring.Item.NAIL_PLATE, 0, 2.0 * h.bores(), ""));
    }
    plan.runs().stream()
        .filter(r -> h.runs().contains(r.id()))
        .forEach(r -> out.needs("through:" + h.id() + ":" + r.id()));
    return out.done();
  }

  /** As the rule says that asks for it. */
  private boolean wantsSteel(Plan.PlannedHole h) {
    return plan.findings().stream()
        .anyMatch(f -> f.rule().equals("nail-plate") && f.place().equals(h.id()));
  }

  private static boolean isOutdoor(Plan.PlannedHole h) {
    return h.between().stream().anyMatch(b -> b.startsWith("outside/"));
  }

  /** After everything that goes through has been tested, and the holes made there are sealed. */
  Step close(Plan.PlannedWork w, List<Step> all) {
    List<String> runs = through(w);
    StepDraft out =
        new StepDraft("close/" + w.id(), Step.Kind.CLOSE, w.id(), openings.place(w))
            .runs(runs)
            .makes("closed:" + w.id())
            .needs("open:" + w.id())
            .bring(Bring.of(Bring.Item.PATCH_KIT));
    runs.forEach(r -> out.needs("tested:" + r));
    List<String> here =
        plan.holes().stream()
            .filter(h -> openings.ofHole(h).contains(w.id()))
            .map(Plan.PlannedHole::id)
            .toList();
    all.stream()
        .filter(s -> s.kind() == Step.Kind.SEAL && here.contains(s.subject()))
        .forEach(s -> out.needs("sealed:" + s.subject()));
    return out.done();
  }
}
