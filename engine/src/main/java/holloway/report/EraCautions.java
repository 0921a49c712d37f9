package holloway.report;

import holloway.house.House;
import holloway.house.RulePlace;
import java.util.ArrayList;
import java.util.List;

/**
 * What the year a house was built makes likely behind its board; unknown years are taken as old.
 */
final class EraCautions {
  private static final String PAID_WORK =
      " In the US paid work that disturbs more than 6 sq ft (0.56 m2) a room inside or 20 sq ft"
          + " (1.86 m2) outside falls under a federal rule.";

  private static final String NONE_PUBLISHED = "common practice, no published source";

  private final int built;
  private final RulePlace place;
  private final boolean yearKnown;
  private final List<Caution> out = new ArrayList<>();

  private EraCautions(House house) {
    this.built = house.built().value();
    this.place = house.place();
    this.yearKnown = !house.built().isAssumed();
  }

  static List<Caution> of(House house, boolean attic) {
    EraCautions c = new EraCautions(house);
    c.unknownYear();
    c.lead();
    c.asbestos();
    c.vermiculite(attic);
    c.wiring();
    return List.copyOf(c.out);
  }

  private boolean before(int year) {
    return !yearKnown || built < year;
  }

  private void unknownYear() {
    if (!yearKnown) {
      add(
          "year",
          "The year the house was built is not stated: the cautions of older houses are shown.",
          "our choice");
    }
  }

  /** Behind-the-board J15 (US ban 1978) and J26 (UK retail ban 1992). */
  private void lead() {
    if (place == RulePlace.UK ? before(1992) : before(1978)) {
      add(
          "lead",
          "Lead paint is likely in a house of this age: keep dust down and wet, keep children out."
              + (place == RulePlace.US ? PAID_WORK : ""),
          place == RulePlace.US ? "40 CFR 745" : NONE_PUBLISHED);
    }
  }

  /**
   * J16 (US texture ban about 1978, stock used on for a while) and J26 (UK, the last kind 1999).
   */
  private void asbestos() {
    if (place == RulePlace.UK ? before(2000) : before(1980)) {
      add(
          "asbestos",
          "Textured ceilings, old boards, pipe lagging and tiles may hold asbestos: do not drill,"
              + " cut or sand them until a licensed laboratory has tested them.",
          NONE_PUBLISHED);
    }
  }

  /** J16 and E14: 1919 to 1990. */
  private void vermiculite(boolean attic) {
    boolean era = !yearKnown || built >= 1919 && built <= 1990;
    if (attic && era && place != RulePlace.UK) {
      add(
          "vermiculite",
          "If the attic holds grey-brown pebbly vermiculite, assume it holds asbestos: stay out and"
              + " leave that attic to trained people.",
          "US EPA and ATSDR advice");
    }
  }

  /** J14: knob-and-tube to the 1940s, aluminium branches 1965 to 1973. */
  private void wiring() {
    if (place != RulePlace.UK && before(1950)) {
      add(
          "knob-and-tube",
          "Knob-and-tube wiring may still be live in open bays and under attic insulation: do not"
              + " touch or bury it; have a licensed electrician look first.",
          NONE_PUBLISHED);
    }
    if (place == RulePlace.US && yearKnown && built >= 1965 && built <= 1973) {
      add(
          "aluminium",
          "Branch wires of this time are often aluminium: leave their joints alone.",
          "US CPSC on aluminium wiring");
    }
  }

  private void add(String name, String text, String source) {
    out.add(new Caution(name, text, source));
  }
}
