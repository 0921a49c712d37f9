package holloway.report;

import holloway.plan.Plan;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.schedule.OutletPlaces;
import holloway.survey.Placed;
import holloway.survey.WallNames;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words that stand beside a picture of the house: what a step is, what a hole is. */
public final class SeenWords {
  private final HouseWords words;
  private final PlainWords plain;
  private final PlaceWords places;
  private final UnitWords units;
  private final Placed placed;
  private final Request request;

  public SeenWords(Placed placed, Request request, UnitSystem system) {
    this.placed = placed;
    this.request = request;
    units = new UnitWords(system);
    words = new HouseWords(placed);
    plain = new PlainWords(placed, request, units);
    places = new PlaceWords(placed, units);
  }

  /** One sentence for each step of a run, holes by their label. */
  public List<String> steps(Plan.PlannedRun run) {
    List<String> out = new ArrayList<>();
    for (Plan.PlanStep s : run.steps()) {
      if (s.kind().equals("leg")) {
        boolean blind = s.feed().map("blind"::equals).orElse(false);
        String how = blind ? ", fished blind" : "";
        out.add(sentence(words.leg(s)) + ", " + units.cable(s.m()) + how);
      } else {
        out.add(s.label().map(l -> "Through " + l).orElseGet(() -> sentence(words.crossing(s))));
      }
    }
    return out;
  }

  /** A hollow that a run passes, as a person says it; the kind's word when no run does. */
  public String hollow(Plan plan, String id) {
    return plan.runs().stream()
        .flatMap(r -> r.steps().stream())
        .filter(s -> s.kind().equals("leg") && s.id().equals(id))
        .findFirst()
        .map(words::leg)
        .orElse("the hollow there");
  }

  /** Kind and size of a hole. */
  public String what(Plan.PlannedHole h) {
    return h.kind() + ", " + units.bit(h.diameterMm()) + (h.bores() > 1 ? ", two of them" : "");
  }

  /** Where an outlet's cut-out goes; empty when no run leads there. */
  public Optional<String> outlet(Plan plan, String name) {
    OutletWords outlets = new OutletWords(plan, request, placed, units);
    return OutletPlaces.of(plan, request, placed).stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .map(outlets::text)
        .map(SeenWords::sentence);
  }

  /** A wall by the rooms along it, or what else a member or hollow is part of. */
  public String owner(String id) {
    return placed.walls().stream()
        .filter(w -> w.id().equals(id))
        .findFirst()
        .map(WallNames::of)
        .orElse(id.replace('/', ' '));
  }

  /** Where a hole is. */
  public String where(Plan.PlannedHole h) {
    return places.of(h.at());
  }

  /** Where the person is who makes a hole. */
  public String stand(Plan.PlannedHole h) {
    return plain.stand(h);
  }

  /** How a hole is made, and how long it takes. */
  public String method(Plan.PlannedHole h) {
    return plain.method(h.method()) + ", " + UnitWords.minutes(h.minutes());
  }

  /** Bit and what makes it longer. */
  public String bit(HoleCard c) {
    return c.extension().isEmpty() ? c.bit() : c.bit() + "; " + c.extension();
  }

  /** A length of cable. */
  public String cable(double metres) {
    return units.cable(metres);
  }

  /** The length to cut for a run, never shown shorter than it is. */
  public String cut(Plan.PlannedRun run) {
    return units.cut(run.cableM());
  }

  /** A time. */
  public String minutes(double minutes) {
    return UnitWords.minutes(minutes);
  }

  /** A finding's own sentence without ids. */
  public String finding(Plan.FindingLine f) {
    return plain.sentence(f.text());
  }

  /** The card's caution, if it has one. */
  public Optional<String> caution(Plan.PlannedHole h, HoleCard c) {
    boolean bare = c.checkFirst().isEmpty() && h.assumed();
    String first = bare ? HouseWords.findFirst(h.kind()) : c.checkFirst();
    return first.isEmpty() ? Optional.empty() : Optional.of(sentence(first));
  }

  private static String sentence(String s) {
    return s.isEmpty() ? s : Character.toUpperCase(s.charAt(0)) + s.substring(1);
  }
}
