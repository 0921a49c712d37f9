package holloway.report;

import holloway.catalog.Cable;
import holloway.hollow.SiteKind;
import holloway.house.Chase;
import holloway.house.House;
import holloway.house.Obstacle;
import holloway.house.RulePlace;
import holloway.house.Thing;
import holloway.plan.Plan;
import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The cautions that apply to one house and plan only: era, stands, what lies near the holes. */
public final class Cautions {
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
    return List.copyOf(c.out);
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
          "OSHA 1926.501(b)(13) on falls; the rest common practice, no published source");
    }
    if (usesZone("crawlspace")) {
      add(
          "crawlspace",
          "Crawlspace: look for wiring, standing water, animals and sharp metal before you go in;"
              + " do not go in alone.",
          "common practice, no published source");
    }
  }

  private void ladder() {
    if (usesZone("ladder")) {
      add(
          "ladder",
          "Ladder: base out a quarter of the working length, rails 3 ft (0.9 m) above a landing,"
              + " never on the top three rungs.",
          "OSHA 1926.1053");
    }
  }

  private void power() {
    boolean near =
        house.things().stream()
                .anyMatch(
                    t ->
                        Set.of(
                                Thing.Kind.SOCKET,
                                Thing.Kind.SWITCH,
                                Thing.Kind.LIGHT,
                                Thing.Kind.PANEL)
                            .contains(t.kind()))
            || hasObstacle(Obstacle.Kind.POWER);
    if (near && !plan.holes().isEmpty()) {
      add(
          "power",
          "Power is near: switch off the circuits of every wall you open and prove them dead"
              + " before drilling; keep 2 in (50 mm) from power wires and never share a box with"
              + " them. Power wiring itself is for a licensed electrician.",
          "NEC 800.133 for the distance and the box; next to sheathed cable it is practice");
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
          "common practice, no published source");
    }
  }

  private void structure() {
    if (plan.holes().stream().anyMatch(h -> STRUCTURE.contains(h.kind()))) {
      add(
          "structure",
          "Structure: keep to the diameters and edge distances given; never notch, and never cut"
              + " or bore a truss, I-joist flange, beam or laminated member without its maker's or"
              + " an engineer's word.",
          house.place() == RulePlace.US
              ? "IRC R502.8, R602.6, R802.7"
              : house.place() == RulePlace.UK
                  ? "BS 5268-2, NHBC Standards 6.4"
                  : "common practice, no published source");
    }
  }

  private void fireSeparation() {
    boolean crossed =
        placed.walls().stream()
            .filter(w -> w.garageSeparation())
            .anyMatch(w -> plan.holes().stream().anyMatch(h -> h.id().startsWith(w.id() + "/")));
    // the ceiling of a garage parts it from the house as its wall does
    boolean found = plan.findings().stream().anyMatch(f -> f.rule().equals("garage-separation"));
    if (crossed || found) {
      add(
          "fire-separation",
          "Fire separation: a hole goes into the wall or ceiling between garage and house. Seal it with an"
              + " approved material and keep the board whole; ask your building office first.",
          "IRC R302.5.3, R302.11 item 4");
    }
  }

  private void entry() {
    boolean feed =
        plan.runs().stream().anyMatch(r -> Cable.find(r.cable()).map(Cable::outdoor).orElse(false));
    if (feed) {
      add(
          "entry",
          "Cable from outside: bonding and surge protection at the entry are the provider's or a"
              + " licensed electrician's work.",
          "NEC 800.100, 820.100");
    }
  }

  private boolean hasObstacle(Obstacle.Kind kind) {
    return house.obstacles().stream().anyMatch(o -> o.kind() == kind);
  }

  private void add(String name, String text, String source) {
    out.add(new Caution(name, text, source));
  }
}
