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
import holloway.solve.Sketch;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;

/**
 * A house that is planned again and again while a person changes what they want of it. A value: a
 * change gives another and leaves this one as it is, so undoing is going back to the old one. The
 * house itself stays; when its file changes, it is opened anew.
 */
public final class LiveHouse {
  private final Placed placed;
  private final List<Finding> surveyed;
  private final Request request;
  private final LiveSites sites;
  private final RealSite site;
  private final LivePlan live;
  private final Told told;
  private final PlanSettings settings;

  private LiveHouse(
      Placed placed,
      List<Finding> surveyed,
      Request request,
      LiveSites sites,
      RealSite site,
      LivePlan live,
      Told told,
      PlanSettings settings) {
    this.placed = placed;
    this.surveyed = surveyed;
    this.request = request;
    this.sites = sites;
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
    LivePlan first = wide.live(request, search, told);
    RealSite site = wide.settled(request, first.solved().plan());
    LivePlan live = site == wide ? first : site.settledLive(first, search, told);
    LiveSites sites = new LiveSites(placed.value(), request, site);
    return new LiveHouse(
        placed.value(), placed.findings(), request, sites, site, live, told, settings);
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
   * The plan for other bans, pins or weights, or with outlets elsewhere. Where the ends stay the
   * hollows and ways of the house stay as they are.
   *
   * @throws InputTrouble when what is wanted cannot be
   */
  public LiveHouse with(Request wanted) {
    return with(wanted, () -> false);
  }

  /**
   * As without {@code overtaken}, and the very same plan.
   *
   * @param overtaken asked now and then, on any thread: whether nobody waits for the answer any
   *     more
   * @throws CancellationException once it is overtaken
   */
  public LiveHouse with(Request wanted, BooleanSupplier overtaken) {
    if (wanted.equals(request)) {
      return this;
    }
    RealSite on = ways(wanted);
    LivePlan next = on.live(live, wanted, settings.search().unless(overtaken), told);
    return new LiveHouse(placed, surveyed, wanted, sites, on, next, told, settings);
  }

  /**
   * A plan that was only mended: neither proven nor judged.
   *
   * @param touched ids of the runs that were laid anew
   */
  public record Sketched(PlannedHouse drawn, Set<String> touched) {
    public Plan plan() {
      return drawn.plan();
    }
  }

  /**
   * This plan mended for something else that is wanted, within a moment: runs that the change does
   * not touch stay where they are. What {@link #with} answers to the same does not hang on it.
   *
   * @throws InputTrouble when what is wanted cannot be
   */
  public Sketched sketch(Request wanted) {
    return sketch(ways(wanted), wanted);
  }

  /**
   * The very same sketch, for nobody: of all that it took only what was learnt about the house
   * itself is kept, so that one that is like it and is waited for comes sooner.
   *
   * @throws InputTrouble when what is wanted cannot be
   */
  public Sketched rehearse(Request wanted) {
    return sketch(sites.passing(wanted), wanted);
  }

  /** Where the ends stay they are this house's own. */
  private RealSite ways(Request wanted) {
    return LiveSites.alike(wanted, request) ? site : sites.of(wanted);
  }

  private Sketched sketch(RealSite on, Request wanted) {
    Sketch mended = on.sketched(live, wanted);
    Plan plan = on.named(mended, wanted);
    return new Sketched(
        PlannedHouse.sketched(on.hollows(), wanted, plan, units()), mended.touched());
  }

  /** How often the ways of the house were listed anew since it was opened: once a place of ends. */
  public int derived() {
    return sites.derived();
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
