package holloway.pipeline;

import holloway.house.WallSpot;
import holloway.plan.Certificate;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.scene.Scene;
import holloway.schedule.HoleCard;
import holloway.schedule.Views;
import holloway.schedule.WorkSchedule;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the verbs answer with. */
public final class Answers {
  private Answers() {}

  /**
   * @param system the units of the cards
   * @param refusals empty when the referee agrees, and the checker with the proof if it was asked
   * @param cards by hole id
   * @param certificate of the plan's bound, when it was asked for and there is one
   */
  public record Planned(
      Placed placed,
      Request request,
      Plan plan,
      Map<String, HoleCard> cards,
      UnitSystem system,
      List<String> refusals,
      Optional<Certificate> certificate) {}

  /** A plan as it is drawn; of a refused one there is nothing to draw. */
  public record Pictured(Planned planned, Optional<PlannedHouse> house) {}

  /** A plan and its house as shapes. */
  public record Drawn(Planned planned, Scene scene) {}

  /**
   * A plan and the order in which it is carried out.
   *
   * @param views of holes and of floors where cable passes
   * @param house as it is drawn; empty when the referee refuses the plan, or nothing can be drawn
   */
  public record Packed(
      Planned planned, WorkSchedule work, Views views, Optional<PlannedHouse> house) {}

  /**
   * One way of working.
   *
   * @param sameAs other names of ways that lead to the very same plan
   */
  public record WayOfWorking(String name, List<String> bans, List<String> sameAs, Plan plan) {}

  public record Compared(Placed placed, List<WayOfWorking> ways) {}

  /**
   * A place where the cabinet could stand, and the plan from there.
   *
   * @param stated true for the place that plans use
   * @param warm true in a garage, which follows the weather
   * @param awkward true where the gear is reached kneeling or from a step
   */
  public record CabinetPlace(
      WallSpot at, boolean stated, Plan plan, boolean warm, boolean awkward) {}

  /** Best first. */
  public record Cabinets(Placed placed, List<CabinetPlace> places) {}

  public record Routed(Placed placed, String run, List<Plan> routes) {}

  public record Understood(Placed placed, Request request, List<Plan.FindingLine> findings) {}

  /**
   * A plan looked at again.
   *
   * @param certified the plan came with a certificate, and what is wrong with it is a refusal
   */
  public record Refereed(
      Plan plan, List<String> refusals, List<Plan.FindingLine> findings, boolean certified) {}
}
