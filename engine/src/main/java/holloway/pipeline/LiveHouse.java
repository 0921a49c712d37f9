package holloway.pipeline;

import holloway.finding.Finding;
import holloway.finding.Outcome;
import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.report.UnitWords;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.schedule.Tapes;
import holloway.solve.LivePlan;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

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
  private final PlanSettings settings;

  private LiveHouse(
      Placed placed,
      List<Finding> surveyed,
      Request request,
      RealSite site,
      LivePlan live,
      Told told,
      PlanSettings settings) {
    this.placed = placed;
    this.surveyed = surveyed;
    this.request = request;
    this.site = site;
    this.live = live;
    this.told = told;
    this.settings = settings;
  }

  /** As {@link #open(Path, PlanSettings, Progress)}, by the house file alone. */
  public static LiveHouse open(Path houseFile, Progress progress) {
    return open(houseFile, PlanSettings.USUAL, progress);
  }

  /**
   * The house and its plan. The search of the settings holds for every plan of it: how thorough it
   * is, how near to the least is enough, and the time that each plan has. Ends with alternatives
   * keep the spot that this first plan chose.
   *
   * @throws InputTrouble when a file is missing or wrong
   */
  public static LiveHouse open(Path houseFile, PlanSettings settings, Progress progress) {
    RealStages stages = new RealStages(progress);
    Stages.Reading reading = stages.read(houseFile, settings);
    Outcome<Placed> placed = stages.survey(reading.house());
    Request request = reading.request();
    RealSite wide = (RealSite) stages.derive(placed.value(), request);
    progress.now("finding the joint plan");
    Told told = new Told(progress, request.wishes().profile());
    Search search = settings.search();
    int parts = wide.searches();
    LivePlan first = wide.live(request, search, parts, told);
    RealSite site = wide.settled(request, first.solved().plan());
    LivePlan live = site == wide ? first : site.live(request, search, parts, told);
    return new LiveHouse(placed.value(), placed.findings(), request, site, live, told, settings);
  }

  /**
   * A house file, usually the same read again, planned by the settings of this house.
   *
   * @throws InputTrouble when a file is missing or wrong
   */
  public LiveHouse reopened(Path houseFile) {
    return open(houseFile, settings, Progress.SILENT);
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
    LivePlan next = on.live(live, wanted, settings.search(), told);
    return new LiveHouse(placed, surveyed, wanted, on, next, told, settings);
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
    return settings.units().orElse(UnitWords.usual(placed.house()));
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

  /**
   * The whole answer, as {@code plan} gives it, but for one thing: whether a look into an
   * unaccounted space is worth while takes plans of other houses, and is not asked at each change.
   */
  public Judged judged() {
    Judging judging = new Judging(placed, surveyed, request, site);
    Plan whole = judging.whole(plan(), List.of());
    // Neither looks at the other's answer, and a person waits for both.
    CompletableFuture<List<String>> refusals =
        CompletableFuture.supplyAsync(() -> judging.refusals(whole));
    Map<String, HoleCard> cards = site.cards(whole, units());
    Map<String, Tapes> tapes = site.tapes(whole);
    return new Judged(whole, cards, tapes, refusals.join());
  }
}
