package holloway.report;

import holloway.plan.Plan;
import holloway.schedule.OpenPlace;
import holloway.schedule.OutletPlace;
import holloway.schedule.OutletPlaces;
import holloway.schedule.Pull;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The same words as in the text of a plan, piece by piece: for a work pack that lays them out on a
 * page of its own. Lengths in the sheet's units.
 */
public final class SheetWords {
  private final Sheet sheet;
  private final PlaceWords places;
  private final PlainWords plain;
  private final RunsSection runs;

  public SheetWords(Sheet sheet) {
    this.sheet = sheet;
    this.places = new PlaceWords(sheet.placed(), sheet.units());
    this.plain = sheet.words();
    this.runs = new RunsSection(sheet, new Lines());
  }

  /** What to look at before anything is cut. */
  public List<String> checkFirst() {
    Lines lines = new Lines();
    new CheckFirstSection(sheet, lines).write();
    return lines.entries();
  }

  /** What can hurt here, with its source. */
  public List<String> cautions() {
    List<String> out = new ArrayList<>();
    for (Caution c : Cautions.of(sheet.plan(), sheet.placed())) {
      out.add(c.text() + " [" + c.source() + "]");
    }
    return out;
  }

  /** How near to the least possible the plan is proven to be. */
  public String proof() {
    return new HeadSection(sheet, new Lines()).proof();
  }

  /** Where each outlet's cut-out goes, by name. */
  public Map<String, String> outlets() {
    OutletWords words =
        new OutletWords(sheet.plan(), sheet.request(), sheet.placed(), sheet.units());
    Map<String, String> out = new LinkedHashMap<>();
    for (OutletPlace p : OutletPlaces.of(sheet.plan(), sheet.request(), sheet.placed())) {
      out.put(p.name(), words.text(p));
    }
    return out;
  }

  public String where(Plan.PlannedHole hole) {
    return places.of(hole.at());
  }

  /** What is opened before anything is drilled: a cut-out, a patch, boards, a panel, a trench. */
  public String opening(String id) {
    return OpenedWords.of(id).orElseGet(() -> crossed(id));
  }

  /** Where to open: along the wall and over the floor, or from two walls of the room. */
  public String openedAt(OpenPlace p) {
    return p.on() == OpenPlace.On.WALL
        ? places.of(p.at())
        : places.inPlan(p.room(), p.at(), p.on() == OpenPlace.On.FLOOR);
  }

  /** What a pull lies in, in order, each once. */
  public List<String> liesIn(Pull pull) {
    HouseWords house = new HouseWords(sheet.placed());
    List<String> out = new ArrayList<>();
    for (Plan.PlannedRun r : sheet.plan().runs()) {
      if (r.id().equals(pull.runs().get(0))) {
        r.steps().stream()
            .filter(s -> s.kind().equals("leg") && pull.hollows().contains(s.id()))
            .map(house::leg)
            .forEach(out::add);
      }
    }
    return out.stream().distinct().toList();
  }

  /** A pull on a cable, never shown less than it is. */
  public String force(double newtons) {
    return sheet.units().force(newtons);
  }

  /** What a cable bears, never shown more than it is. */
  public String mostForce(double newtons) {
    return sheet.units().mostForce(newtons);
  }

  private String crossed(String id) {
    HouseWords house = new HouseWords(sheet.placed());
    return sheet.plan().runs().stream()
        .flatMap(r -> r.steps().stream())
        .filter(s -> s.id().equals(id))
        .findFirst()
        .map(house::crossing)
        .orElseGet(
            () ->
                id.endsWith("/cut-out")
                    ? "the cut-out of " + HouseWords.plain(id.substring(0, id.length() - 8))
                    : PlainWords.unlabelled(sheet.plan(), id));
  }

  public String stand(Plan.PlannedHole hole) {
    return plain.stand(hole);
  }

  public String method(Plan.PlannedHole hole) {
    return plain.method(hole.method());
  }

  public List<String> others(Plan.PlannedHole hole) {
    return plain.others(hole);
  }

  /** Hollows with their lengths and holes by label, from end to end. */
  public String way(Plan.PlannedRun run) {
    return runs.way(run);
  }

  /** Route and what to cut, or the ready-made lead. */
  public String lengths(Plan.PlannedRun run) {
    return runs.lengths(run);
  }

  /** A finding's text or remedy with the ids of walls put in words. */
  public String sentence(String text) {
    return plain.sentence(text);
  }

  /** The one hole, run or place that a finding is of, as its text names it. */
  public Optional<String> subject(Plan.FindingLine finding) {
    return AlikeFindings.subject(finding);
  }

  /** Route or leg, metres. */
  public String length(double metres) {
    return sheet.units().cable(metres);
  }

  /** Never shown shorter than it is. */
  public String cut(double metres) {
    return sheet.units().cut(metres);
  }

  public String bit(int diameterMm) {
    return sheet.units().bit(diameterMm);
  }

  public String quantity(Plan.Material m) {
    return sheet.units().quantity(m.quantity(), m.unit());
  }

  /** Hours and minutes. */
  public String time(double minutes) {
    return UnitWords.minutes(minutes);
  }

  /** A spread of position: millimetres, and what a tape in inches shows where they are used. */
  public String offBy(double mm) {
    String plain = Math.round(mm) + " mm";
    String tape = sheet.units().tape(Math.round(mm * 1e6));
    return tape.equals(plain) ? plain : plain + " (" + tape + ")";
  }
}
