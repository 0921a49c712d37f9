package holloway.check.rules;

import holloway.finding.Finding;
import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.request.Request;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** All rules over a finished plan. */
public final class PlanRules {
  private static final List<PlanRule> ALL =
      List.of(
          new GarageSeparation(),
          new SealAtPlate(),
          new FireBlockCrossed(),
          new BoredMember(),
          new NotchedMember(),
          new HolesApart(),
          new NailPlate(),
          new GrommetInSteel(),
          new OuterWallHole(),
          new IndoorCableOutside(),
          new LinkCable(),
          new CopperLink(),
          new LinkDepth(),
          new PowerInTheBay(),
          new BesidePower(),
          new NearMotorOrLamp(),
          new SharedBox(),
          new BoxesBackToBack(),
          new PlateOverHalf(),
          new GarageCeiling(),
          new GaragePatch(),
          new ReturnAir(),
          new RiserCable(),
          new ThickCmx(),
          new OutdoorCableIndoors(),
          new BondAtEntrance(),
          new ColdPull(),
          new SupportSpacing(),
          new ScrewsInTheCeiling(),
          new ScrewsInTheWall(),
          new TightTurn(),
          new PullTension(),
          new TubeTooFull(),
          new TubeTooLong(),
          new LinkTooLong(),
          new LinkInTheHeat(),
          new TenGigabitReach(),
          new FibreBudget(),
          new PowerAtTheFarEnd(),
          new BundleHeat(),
          new AtticHatch(),
          new Vermiculite(),
          new OldPaint(),
          new OldWiring(),
          new FindTheStudFirst(),
          new OwnRules(),
          new OwnRuleBroken());

  private PlanRules() {}

  /** Findings in the order of the rules and of the plan's holes. */
  public static List<Finding> find(Plan plan, HollowHouse house, Request request) {
    Finished finished = new Finished(plan, house, request);
    HouseUnits units = new HouseUnits(finished.placed().house().place(), finished.place());
    return ALL.stream().flatMap(r -> r.find(finished).stream()).map(units::of).toList();
  }

  /** Ids of the holes that want steel over them: those the rule {@code nail-plate} speaks of. */
  public static Set<String> plated(Plan plan, HollowHouse house, Request request) {
    return new NailPlate()
        .find(new Finished(plan, house, request)).stream()
            .map(f -> f.place().id())
            .collect(Collectors.toSet());
  }

  /** What each rule is about, by id, in the order they are judged. */
  public static Map<String, String> about() {
    Map<String, String> out = new LinkedHashMap<>();
    ALL.forEach(r -> out.put(r.id(), r.about()));
    return out;
  }

  /** The rows of the rule reference: id, severity, source, what it looks at, limit. */
  public static List<String> reference() {
    return ALL.stream()
        .map(
            r ->
                "| `%s` | %s | %s | %s | %s |"
                    .formatted(
                        r.id(),
                        r.entry().severity(),
                        r.entry().source(),
                        r.about(),
                        r.entry().limit()))
        .toList();
  }

  static List<PlanRule> all() {
    return ALL;
  }
}
