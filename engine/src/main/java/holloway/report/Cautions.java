package holloway.report;

import holloway.catalog.Cable;
import holloway.hollow.SiteKind;
import holloway.house.Chase;
import holloway.house.House;
import holloway.house.Obstacle;
import holloway.house.RulePlace;
import holloway.limits.WiringFigures;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.units.BothUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The cautions that apply to one house and plan only: era, stands, what lies near the holes. */
public final class Cautions {
  private static final String NONE_PUBLISHED = "common practice, no published source";

  private static final Set<String> STRUCTURE =
      Set.of(
          SiteKind.TOP_PLATE.word(),
          SiteKind.BOTTOM_PLATE.word(),
          SiteKind.PLATE_STACK.word(),
          SiteKind.STUD.word(),
          SiteKind.JOIST.word(),
          SiteKind.BLOCKING.word(),
          SiteKind.RIM.word(),
          SiteKind.CEILING_AND_FLOOR.word());

  /** What a finding tells of in the same words. */
  private static final Map<String, String> TOLD =
      Map.of("vermiculite", "vermiculite", "knob-and-tube", "old-wiring");

  private final Plan plan;
  private final Placed placed;
  private final House house;
  private final List<Caution> out = new ArrayList<>();

  private Cautions(Plan plan, Placed placed) {
    this.plan = plan;
    this.placed = placed;
    this.house = placed.house();
  }

  public static List<Caution> of(Plan plan, Placed placed) {
    Cautions c = new Cautions(plan, placed);
    c.out.addAll(EraCautions.of(placed.house(), c.usesZone("attic")));
    c.attic();
    c.ladder();
    c.power();
    c.gas();
    c.structure();
    c.fireSeparation();
    c.entry();
    c.out.removeIf(said -> c.isFound(TOLD.getOrDefault(said.name(), "")));
    return List.copyOf(c.out);
  }

  private boolean isFound(String rule) {
    return plan.findings().stream().anyMatch(f -> f.rule().equals(rule));
  }

  /** Whose rule it is here; a US or UK clause is no source elsewhere. */
  private String source(String us, String uk) {
    return switch (house.place()) {
      case US -> us;
      case UK -> uk;
      case EU, NONE -> NONE_PUBLISHED;
    };
  }

  private boolean usesZone(String word) {
    return plan.totals().zones().stream().anyMatch(z -> z.contains(word));
  }

  private void attic() {
    if (usesZone("attic")) {
      add(
          "attic",
          "Attic: step on framing or planks, never on board; by midday it can be 120 F (50 C), so"
              + " go early, drink, wear a respirator, and have somebody below.",
          source(
              "OSHA 1926.501(b)(13) on falls; the rest common practice, no published source",
              NONE_PUBLISHED));
    }
    if (usesZone("crawlspace")) {
      add(
          "crawlspace",
          "Crawlspace: look for wiring, standing water, animals and sharp metal before you go in;"
              + " do not go in alone.",
          NONE_PUBLISHED);
    }
  }

  private void ladder() {
    if (usesZone("ladder")) {
      add(
          "ladder",
          "Ladder: base out a quarter of the working length, rails 3 ft (0.9 m) above a landing,"
              + " never on the top three rungs.",
          source("OSHA 1926.1053", NONE_PUBLISHED));
    }
  }

  private void power() {
    boolean near =
        house.things().stream().anyMatch(t -> t.kind().isPower())
            || hasObstacle(Obstacle.Kind.POWER);
    if (near && !plan.holes().isEmpty()) {
      add(
          "power",
          "Power is near: switch off the circuits of every wall you open and prove them dead"
              + " before drilling; keep 2 in (50 mm) from power wires and never share a box with"
              + " them. Power wiring itself is for a licensed electrician.",
          source(
              "NEC 800.133 for the distance and the box; next to sheathed cable it is practice",
              WiringFigures.UK_FROM_POWER.cited().words()));
    }
  }

  private void gas() {
    boolean pipes =
        hasObstacle(Obstacle.Kind.PIPE)
            || hasObstacle(Obstacle.Kind.CHIMNEY)
            || house.chases().stream()
                .anyMatch(
                    c ->
                        c.contents().contains(Chase.Contents.PIPE)
                            || c.contents().contains(Chase.Contents.FLUE)
                            || c.contents().contains(Chase.Contents.VENT));
    if (pipes) {
      add(
          "gas",
          "Pipes, a flue or a vent are stated: a pipe may carry gas, a vent may be a boiler's. Know"
              + " what each is before you drill near it; if you smell gas, leave and call the supplier from outside.",
          NONE_PUBLISHED);
    }
  }

  private void structure() {
    if (plan.holes().stream().anyMatch(h -> STRUCTURE.contains(h.kind()))) {
      add(
          "structure",
          "Structure: keep to the diameters and edge distances given; never notch, and never cut"
              + " or bore a truss, I-joist flange, beam or laminated member without its maker's or"
              + " an engineer's word.",
          source("IRC R502.8, R602.6, R802.7", "BS 5268-2, NHBC Standards 6.4"));
    }
  }

  private void fireSeparation() {
    boolean crossed =
        placed.walls().stream()
            .filter(w -> w.garageSeparation())
            .anyMatch(w -> plan.holes().stream().anyMatch(h -> h.id().startsWith(w.id() + "/")));
    // the ceiling of a garage parts it from the house as its wall does
    if (crossed || isFound("garage-separation")) {
      add(
          "fire-separation",
          "Fire separation: a hole goes into the wall or ceiling between garage and house. Seal it with an"
              + " approved material and keep the board whole; ask your building office first.",
          source(
              "IRC R302.5.3, R302.11 item 4", "Approved Document B, fire-stopping (from memory)"));
    }
  }

  private void entry() {
    List<Cable> outside =
        plan.runs().stream()
            .flatMap(r -> Cable.find(r.cable()).stream())
            .filter(Cable::outdoor)
            .toList();
    if (outside.stream().anyMatch(c -> !c.fibre())) {
      add(
          "entry",
          "Cable from outside: bonding and surge protection at the entry are the provider's or a"
              + " licensed electrician's work.",
          source("NEC 800.100, 820.100", NONE_PUBLISHED));
    } else if (!outside.isEmpty()) {
      add(
          "entry",
          "Fibre from outside: without metal in it there is nothing to bond. Armour, or a wire to"
              + " find it by, is bonded or cut back at the entry: the provider's or a licensed"
              + " electrician's work.",
          NONE_PUBLISHED);
    }
  }

  private boolean hasObstacle(Obstacle.Kind kind) {
    return house.obstacles().stream().anyMatch(o -> o.kind() == kind);
  }

  private void add(String name, String text, String source) {
    String words =
        house.place() == RulePlace.US ? BothUnits.feetFirst(text) : BothUnits.metricFirst(text);
    out.add(new Caution(name, words, source));
  }
}
