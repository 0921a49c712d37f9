package holloway.pipeline;

import holloway.finding.Finding;
import holloway.finding.Outcome;
import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.report.UnitWords;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.schedule.Tapes;
import holloway.solve.LivePlan;
import holloway.survey.Placed;
import holloway.takeoff.TakeOff;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A house that is planned again and again while a person changes what they want of it. A value: a
 * change gives another and leaves this one as it is, so undoing is going back to the old one. The
 * house itself stays; when its file changes, it is opened anew.
 */
public final class LiveHouse {
  private final Placed placed;
  private final List<Finding> surveyed;
  private final Request request;
  private final RealSite site;
  private final LivePlan live;
  private final Told told;

  private LiveHouse(
      Placed placed,
      List<Finding> surveyed,
      Request request,
      RealSite site,
      LivePlan live,
      Told told) {
    this.placed = placed;
    this.surveyed = surveyed;
    this.request = request;
    this.site = site;
    this.live = live;
    this.told = told;
  }

  /**
   * The house and its plan, as the usual effort finds it. Ends with alternatives keep the spot that
   * this first plan chose.
   *
   * @throws InputTrouble when a file is missing or wrong
   */
  public static LiveHouse open(Path houseFile, Progress progress) {
    RealStages stages = new RealStages(progress);
    Stages.Reading reading = stages.read(houseFile);
    Outcome<Placed> placed = stages.survey(reading.house());
    Request request = reading.request();
    RealSite wide = (RealSite) stages.derive(placed.value(), request);
    progress.now("finding the joint plan");
    Told told = new Told(progress, request.wishes().profile());
    LivePlan first = wide.live(request, told);
    RealSite site = wide.settled(request, first.solved().plan());
    LivePlan live = site == wide ? first : site.live(request, told);
    return new LiveHouse(placed.value(), placed.findings(), request, site, live, told);
  }

  /**
   * The plan for other bans, pins or weights of the same cabinet and outlets. The hollows and ways
   * of the house stay as they are.
   *
   * @throws InputTrouble when what is wanted cannot be
   */
  public LiveHouse with(Request wanted) {
    if (wanted.equals(request)) {
      return this;
    }
    boolean same =
        wanted.outlets().equals(request.outlets())
            && wanted.cabinet().equals(request.cabinet())
            && sameWeights(wanted);
    RealSite on = same ? site : (RealSite) new RealStages(Progress.SILENT).derive(placed, wanted);
    LivePlan next = on.live(live, wanted, told);
    return new LiveHouse(placed, surveyed, wanted, on, next, told);
  }

  /** Prices stand on the edges of the graph; bans and pins are laid over it. */
  private boolean sameWeights(Request wanted) {
    return wanted.effort().equals(request.effort())
        && wanted.wishes().hourIsWorth().equals(request.wishes().hourIsWorth())
        && wanted.wishes().visibleMetre() == request.wishes().visibleMetre()
        && wanted.wishes().attic() == request.wishes().attic()
        && wanted.wishes().avoid().equals(request.wishes().avoid())
        && wanted.wishes().crew() == request.wishes().crew();
  }

  public Placed placed() {
    return placed;
  }

  public Request request() {
    return request;
  }

  public HollowHouse hollows() {
    return site.hollows();
  }

  public UnitSystem units() {
    return UnitWords.usual(placed.house());
  }

  /** The plan as it was found: with routes, holes and totals, without findings and materials. */
  public Plan plan() {
    return site.finished(live.solved(), request);
  }

  /**
   * A plan with what the rules and the referee say of it.
   *
   * @param refusals empty when the referee agrees
   * @param cards by hole id; {@code tapes} where their lines lie
   */
  public record Judged(
      Plan plan, Map<String, HoleCard> cards, Map<String, Tapes> tapes, List<String> refusals) {}

  /** The house with a plan that was judged, as they are drawn. */
  public PlannedHouse drawn(Judged j) {
    return new PlannedHouse(hollows(), request, j.plan(), j.cards(), j.tapes(), units());
  }

  /** The whole answer, as {@code plan} gives it. */
  public Judged judged() {
    Plan noted =
        plan().withInputs(SurveyWords.inputs(placed), SurveyWords.notes(placed, List.of()));
    Plan taken = TakeOff.of(noted, request, placed);
    List<Finding> all = new ArrayList<>(surveyed);
    all.addAll(site.rules(taken, request));
    Plan whole = taken.withFindings(SurveyWords.lines(all));
    List<String> refusals = site.refusals(PlanJson.read(PlanJson.write(whole)), request);
    return new Judged(whole, site.cards(whole, units()), site.tapes(whole), refusals);
  }
}
