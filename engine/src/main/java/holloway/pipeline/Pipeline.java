package holloway.pipeline;

import holloway.finding.Finding;
import holloway.finding.Outcome;
import holloway.plan.Certificate;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.plan.PlanJsonException;
import holloway.report.UnitWords;
import holloway.request.Request;
import holloway.schedule.Views;
import holloway.schedule.WorkSchedule;
import holloway.survey.Placed;
import holloway.takeoff.TakeOff;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One method a verb; every method begins at files and ends at records. */
public final class Pipeline {
  private final Stages stages;
  private final Progress progress;

  public Pipeline(Progress progress) {
    this(new RealStages(progress), progress);
  }

  Pipeline(Stages stages, Progress progress) {
    this.stages = stages;
    this.progress = progress;
  }

  /** Plans every run and lets the referee look at the plan as it will be written. */
  public Answers.Planned plan(Path houseFile, PlanSettings settings) {
    return plan(open(houseFile, settings), settings);
  }

  /** A plan as {@link #plan(Path, PlanSettings)} gives it, and its house as shapes. */
  public Answers.Drawn draw(Path houseFile, PlanSettings settings) {
    Opened o = open(houseFile, settings);
    Answers.Planned planned = plan(o, settings);
    return new Answers.Drawn(planned, o.site.scene(planned.plan()));
  }

  /**
   * As {@link #plan}, with the order of the work and views of holes; of a refused plan both are
   * empty.
   */
  public Answers.Packed pack(Path houseFile, PlanSettings settings) {
    Opened o = open(houseFile, settings);
    Answers.Planned planned = plan(o, settings);
    if (!planned.refusals().isEmpty()) {
      WorkSchedule none =
          new WorkSchedule(List.of(), List.of(), List.of(), 0, 1, List.of(), List.of());
      return new Answers.Packed(planned, none, Views.NONE, Optional.empty());
    }
    progress.now("ordering the work");
    return new Answers.Packed(
        planned,
        o.site.work(planned.plan(), o.request),
        o.site.views(planned.plan()),
        o.site.drawn(planned));
  }

  /**
   * A plan as {@link #plan(Path, PlanSettings)} gives it, as it is drawn; whether a look into an
   * unaccounted space is worth while is not asked, since no picture shows it.
   *
   * @param without a way of working, hole or hollow that the plan does without
   */
  public Answers.Pictured picture(Path houseFile, PlanSettings settings, List<String> without) {
    Opened all = open(houseFile, settings);
    Opened o = without.isEmpty() ? all : all.with(Ways.banning(all.request, without));
    Answers.Planned planned = plan(o, settings, bare -> List.of());
    // What the referee refuses may not be true of the house, and is not looked up in it.
    return new Answers.Pictured(
        planned, planned.refusals().isEmpty() ? o.site.drawn(planned) : Optional.empty());
  }

  private Answers.Planned plan(Opened o, PlanSettings settings) {
    OpenShafts shafts = new OpenShafts(stages, progress);
    return plan(o, settings, bare -> shafts.worthALook(o.placed, o.request, bare));
  }

  private Answers.Planned plan(
      Opened o, PlanSettings settings, Function<Plan, List<Plan.OpenShaft>> looks) {
    progress.now("finding the joint plan");
    Stages.Proven proven = o.site.proven(o.request, settings.search());
    Plan bare = proven.plan();
    Judging judging = new Judging(o.placed, o.findings, o.request, o.site);
    Plan whole = judging.whole(bare, looks.apply(bare));
    progress.now("asking the referee");
    List<String> refusals = new ArrayList<>(judging.refusals(whole));
    Optional<Certificate> certificate = proven.certificate().filter(c -> settings.certify());
    refusals.addAll(unproven(o, whole, certificate));
    UnitSystem units = settings.units().orElse(UnitWords.usual(o.placed.house()));
    return new Answers.Planned(
        o.placed, o.request, whole, o.site.cards(whole, units), units, refusals, certificate);
  }

  private List<String> unproven(Opened o, Plan plan, Optional<Certificate> certificate) {
    if (certificate.isEmpty()) {
      return List.of();
    }
    progress.now("recomputing the bound");
    return o.site.unproven(plan, certificate.get(), o.request);
  }

  /** The best plan of each way of working, ways that change nothing folded together. */
  public Answers.Compared compare(Path houseFile, PlanSettings settings) {
    Opened o = open(houseFile, settings);
    List<Answers.WayOfWorking> ways =
        Ways.compare(
            o.request,
            o.site.ways(),
            (name, request) -> {
              progress.now("planning: " + name);
              Plan bare = o.site.proven(request, settings.search()).plan();
              return TakeOff.of(bare, request, o.placed, o.site.needs(bare, request));
            });
    return new Answers.Compared(o.placed, ways);
  }

  /**
   * Where the cabinet could stand, best first.
   *
   * @throws InputTrouble when the house file gives one place only, or one where it cannot stand
   */
  public Answers.Cabinets cabinets(Path houseFile, PlanSettings settings) {
    Stages.Reading reading = stages.read(houseFile, settings);
    Request asked = reading.request();
    Placed placed = stages.survey(reading.house()).value();
    return new Answers.Cabinets(
        placed,
        CabinetPlaces.ranked(
            placed,
            asked,
            request -> {
              progress.now("planning from a cabinet in " + request.cabinet().at().face().room());
              Stages.Site site = stages.derive(placed, request);
              Plan bare = site.proven(request, settings.search()).plan();
              return TakeOff.of(bare, request, placed, site.needs(bare, request));
            }));
  }

  /**
   * Several really different routes of one run.
   *
   * @throws UnknownName when the house has no such run
   */
  public Answers.Routed routes(Path houseFile, String run, int most, PlanSettings settings) {
    Stages.Reading reading = stages.read(houseFile, settings);
    List<String> names = reading.request().runs().stream().map(r -> r.id()).toList();
    if (!names.contains(run)) {
      throw new UnknownName("run", run, names);
    }
    Opened o = open(houseFile, settings);
    progress.now("listing routes of " + run);
    List<Plan> routes =
        o.site.routes(o.request, run, most).stream()
            .map(p -> TakeOff.of(p, o.request, o.placed, o.site.needs(p, o.request)))
            .toList();
    return new Answers.Routed(o.placed, run, routes);
  }

  /** What was understood of a house file, before any planning. */
  public Answers.Understood understand(Path houseFile) {
    return understand(houseFile, PlanSettings.USUAL);
  }

  /** The same by a rule file of the settings. */
  public Answers.Understood understand(Path houseFile, PlanSettings settings) {
    Stages.Reading reading = stages.read(houseFile, settings);
    Outcome<Placed> placed = stages.survey(reading.house());
    stages.checkEnds(placed.value(), reading.request());
    List<Plan.FindingLine> notes = new ArrayList<>(SurveyWords.lines(placed.findings()));
    notes.addAll(RoofNotes.of(placed.value()));
    notes.addAll(PorchNotes.of(placed.value()));
    notes.addAll(LoweredNotes.of(placed.value()));
    return new Answers.Understood(placed.value(), reading.request(), List.copyOf(notes));
  }

  /** Verifies a plan file, and its certificate if it holds one, without the solver. */
  public Answers.Refereed referee(Path houseFile, Path planFile) {
    return referee(houseFile, planFile, PlanSettings.USUAL);
  }

  /** The same by a rule file of the settings. */
  public Answers.Refereed referee(Path houseFile, Path planFile, PlanSettings settings) {
    Plan plan;
    Optional<Certificate> certificate;
    try {
      plan = PlanJson.read(planFile);
      certificate = PlanJson.readCertificate(planFile);
    } catch (PlanJsonException e) {
      throw new InputTrouble(e.getMessage());
    }
    Opened o = open(houseFile, settings);
    progress.now("asking the referee");
    List<String> refusals = new ArrayList<>(o.site.refusals(plan, o.request));
    refusals.addAll(unproven(o, plan, certificate));
    if (!refusals.isEmpty()) {
      refusals.addAll(missing(plan, o));
    }
    // The rules look things up in the house; they are for plans that are true of it.
    List<Finding> findings = refusals.isEmpty() ? o.site.rules(plan, o.request) : List.of();
    return new Answers.Refereed(
        plan, List.copyOf(refusals), SurveyWords.lines(findings), certificate.isPresent());
  }

  /** A price or rule file that the plan was made with and nobody named here. */
  private static List<String> missing(Plan plan, Opened o) {
    List<String> here = o.inputs().stream().map(Plan.Input::file).toList();
    return plan.inputs().stream()
        .map(Plan.Input::file)
        .filter(f -> !here.contains(f))
        .map(
            f ->
                "the plan was made with %s too, which is not given here (--prices FILE, --rules FILE)"
                    .formatted(f))
        .toList();
  }

  /** The JSON Schema of a kind of file: house, found, wishes, rules or plan. */
  public String schema(String of) {
    return of.equals("plan") ? PlanJson.schema() : stages.inputSchema(of);
  }

  /** A first house file. */
  public String start(StartWishes wishes) {
    return stages.startFile(wishes);
  }

  /**
   * A first house file out of a building model (IFC), to finish by hand.
   *
   * @param name of the house; else the model's own
   * @throws InputTrouble when the model is missing or wrong
   */
  public String start(StartWishes wishes, Path model, Optional<String> name) {
    return stages.importFile(model, wishes, name);
  }

  private record Opened(Placed placed, Request request, List<Finding> findings, Stages.Site site) {
    Opened with(Request other) {
      return new Opened(placed, other, findings, site);
    }

    /** The house file and those beside it, then files given by the command. */
    List<Plan.Input> inputs() {
      return SurveyWords.inputs(placed).stream().distinct().toList();
    }
  }

  private Opened open(Path houseFile, PlanSettings settings) {
    progress.now("reading the house");
    Stages.Reading reading = stages.read(houseFile, settings);
    Request request = reading.request();
    progress.now("placing rooms and walls");
    Outcome<Placed> placed = stages.survey(reading.house());
    progress.now("framing walls and listing hollows");
    Stages.Site site = stages.derive(placed.value(), request);
    return new Opened(placed.value(), request, placed.findings(), site);
  }
}
