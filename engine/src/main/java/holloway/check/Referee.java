package holloway.check;

import holloway.hollow.HollowHouse;
import holloway.plan.Plan;
import holloway.request.Request;
import java.util.List;

/**
 * Verifies a plan on its own, as it would read one that somebody else wrote: what it says must be
 * so in the house, whoever found it.
 */
public final class Referee {
  private static final List<Rule> RULES =
      List.of(
          new FrameRule(),
          new ChainRule(),
          new LegRule(),
          new AtticRule(),
          new JoinRule(),
          new KneeRule(),
          new DormerGapRule(),
          new FlatRule(),
          new PorchRule(),
          new JettyRule(),
          new SplitRule(),
          new CrossingRule(),
          new HoleRule(),
          new FishRule(),
          new EndRule(),
          new BoxRule(),
          new AirRule(),
          new OverWallRule(),
          new StrapRule(),
          new BehindBoardRule(),
          new SurfaceRule(),
          new BeamRule(),
          new SkylightRule(),
          new CavityRule(),
          new ChannelRule(),
          new GrooveRule(),
          new OpenedRule(),
          new TubeRule(),
          new StandRule(),
          new NeighbourRule(),
          new SteelStudRule(),
          new TotalsRule(),
          new PriceRule());

  private Referee() {}

  /** Every fault found, in the order of the rules and of the plan; none when the plan stands. */
  public static Verdict check(Plan plan, HollowHouse house, Request request) {
    Evidence evidence = new Evidence(plan, house, request);
    Charge charge = new Charge(plan.site());
    RULES.forEach(r -> r.judge(evidence, charge));
    return charge.verdict();
  }
}
