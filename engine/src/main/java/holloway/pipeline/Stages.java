package holloway.pipeline;

import holloway.catalog.PriceList;
import holloway.finding.Finding;
import holloway.finding.Outcome;
import holloway.house.House;
import holloway.limits.LocalRules;
import holloway.plan.Certificate;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.scene.Scene;
import holloway.schedule.HoleCard;
import holloway.schedule.Views;
import holloway.schedule.WorkSchedule;
import holloway.survey.Placed;
import holloway.takeoff.HoleNeeds;
import holloway.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The stages as the verbs need them. Inputs that are wrong are an {@link InputTrouble}. */
interface Stages {
  Reading read(Path houseFile);

  /** With the rules, prices and profile of a command in place of the house file's own. */
  default Reading read(Path houseFile, PlanSettings settings) {
    Reading reading = read(houseFile);
    House house = reading.house();
    Request request = reading.request();
    Optional<Ruled> ruled = settings.rules().map(this::rules);
    if (ruled.isPresent()) {
      house = house.with(ruled.get().rules(), ruled.get().inputs());
    }
    Optional<Priced> priced = settings.prices().map(this::prices);
    if (priced.isPresent()) {
      house = house.with(house.ownRules(), priced.get().inputs());
      request = request.with(priced.get().list());
    }
    if (settings.profile().isPresent()) {
      request = Ways.with(request, settings.profile().get());
    }
    return new Reading(house, request);
  }

  /** A price list, and the fingerprint of its file. */
  record Priced(PriceList list, List<House.InputFile> inputs) {}

  /** A price file. */
  default Priced prices(Path file) {
    throw new InputTrouble("no price file can be read here");
  }

  /** Rules of one's own, and the fingerprint of their file. */
  record Ruled(LocalRules rules, List<House.InputFile> inputs) {}

  /** A rule file. */
  default Ruled rules(Path file) {
    throw new InputTrouble("no rule file can be read here");
  }

  Outcome<Placed> survey(House house);

  /** Refuses a cabinet or outlet that stands in a window, off its wall or above its ceiling. */
  void checkEnds(Placed placed, Request request);

  Site derive(Placed placed, Request request);

  /** The published JSON Schema of an input file: house, found, wishes or rules. */
  String inputSchema(String of);

  /** A house file to begin with; {@code schema} is what its editor line names. */
  String startFile(StartWishes wishes);

  /**
   * A house file to finish by hand, out of a building model.
   *
   * @param name of the house; else the model's own
   */
  String importFile(Path model, StartWishes wishes, Optional<String> name);

  /** A house and what is wanted in it, without problems. */
  record Reading(House house, Request request) {}

  /** A plan and, where there is one, the proof of its bound. */
  record Proven(Plan plan, Optional<Certificate> certificate) {}

  /** One house with its members, hollows and routing graph. */
  interface Site {
    /** The ways of working, by their words, that this house has at all. */
    Set<String> ways();

    List<Finding> findings();

    /** The joint plan, without findings, materials or cut lengths; unrouted runs are in it. */
    Plan plan(Request request, Thoroughness thoroughness);

    /**
     * As {@link #plan}, with what proves its bound; without where the bound is of other runs than
     * the plan's.
     */
    default Proven proven(Request request, Search search) {
      return new Proven(plan(request, search.thoroughness()), Optional.empty());
    }

    /** What is wrong with the proof of a plan's bound, recomputed from this house's own graph. */
    default List<String> unproven(Plan plan, Certificate certificate, Request request) {
      return List.of("the bound is not proven: nothing here can recompute it");
    }

    /** Really different routes of one run, cheapest first, each as the plan of that run alone. */
    List<Plan> routes(Request request, String runId, int most);

    /** What rules and schedule say of its holes, for what is bought. */
    default HoleNeeds needs(Plan plan, Request request) {
      return HoleNeeds.NONE;
    }

    /** What the rules say of a plan that is true of this house. */
    List<Finding> rules(Plan plan, Request request);

    /**
     * What the referee has against a plan, without the solver. It reads the plan's findings too: a
     * nail plate that is needed has to be asked for.
     */
    List<String> refusals(Plan plan, Request request);

    /** The house and a plan for it as shapes. */
    default Scene scene(Plan plan) {
      throw new InputTrouble("no shapes can be made here");
    }

    /** Cards by hole id. */
    Map<String, HoleCard> cards(Plan plan, UnitSystem units);

    /** The work of a plan in its order. */
    default WorkSchedule work(Plan plan, Request request) {
      throw new InputTrouble("no order of work can be made here");
    }

    /** The house and its plan as they are drawn; empty where there is nothing to draw. */
    default Optional<PlannedHouse> drawn(Answers.Planned planned) {
      return Optional.empty();
    }

    /** How holes and floors look where cable passes. */
    default Views views(Plan plan) {
      return Views.NONE;
    }
  }
}
