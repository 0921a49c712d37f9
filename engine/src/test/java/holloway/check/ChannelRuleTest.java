package holloway.check;

import static holloway.check.StonePlan.CHANNEL;
import static holloway.check.StonePlan.CUT;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A channel that carries a cable is cut by a work of its own and of its length. */
class ChannelRuleTest {
  private static final String UNCUT = "lies in a channel, but no work of 92.1600 min cuts it";

  private static void refused(Plan plan, String text) {
    List<Refusal> said = StonePlan.judge(new ChannelRule(), plan);
    assertEquals(List.of(text), said.stream().map(Refusal::text).toList());
    assertEquals(CHANNEL, said.get(0).place());
    assertEquals(true, StonePlan.referee(plan).containsAll(said), "the referee asks this rule");
  }

  @Test
  void theGoodPlanStands() {
    assertEquals(List.of(), StonePlan.judge(new ChannelRule(), StonePlan.good()));
    assertEquals(List.of(), StonePlan.referee(StonePlan.good()));
  }

  @Test
  void aChannelNobodyCutsIsRefused() {
    refused(StonePlan.withoutWork(CUT), UNCUT);
  }

  @Test
  void aChannelCutTooShortIsRefused() {
    refused(StonePlan.withWork(CUT, "channel", 69.66), UNCUT);
  }

  @Test
  void aChannelMayBeToldAsWrongAsTwoMillimetresMakeIt() {
    // 2 mm at 45 min a metre are 0.09 min, and 0.001 min for the rounding of prices.
    for (double off : new double[] {-0.0909, 0.0909}) {
      Plan near = StonePlan.withWork(CUT, "channel", 92.16 + off);
      assertEquals(List.of(), StonePlan.judge(new ChannelRule(), near));
    }
    refused(StonePlan.withWork(CUT, "channel", 92.16 - 0.0911), UNCUT);
    refused(StonePlan.withWork(CUT, "channel", 92.16 + 0.0911), UNCUT);
  }

  @Test
  void anotherKindOfWorkCutsNoChannel() {
    refused(StonePlan.withWork(CUT, "access", 92.16), UNCUT);
  }

  @Test
  void aChannelInAnotherWallStripIsNotThisOne() {
    Plan other = StonePlan.withWork(StonePlan.BENCH_CUT, "channel", 92.16);
    Plan only = StonePlan.without(other, CUT);
    List<Refusal> said = StonePlan.judge(new ChannelRule(), only);
    assertEquals(
        List.of(UNCUT),
        said.stream().filter(r -> r.place().equals(CHANNEL)).map(Refusal::text).toList());
  }

  @Test
  void aLongerWayInTheChannelIsCutLonger() {
    Plan bent =
        StonePlan.withDeskPath(
            path -> {
              Point3 top = path.get(1);
              Point3 aside = new Point3(top.x(), top.y() + 100_000_000, top.z());
              return List.of(path.get(0), top, aside, top, path.get(2));
            });
    // 0.2 m more: 2.248 m at 45 min
    refused(bent, "lies in a channel, but no work of 101.1600 min cuts it");
  }

  @Test
  void twoGroovesThatMeetAtAnOutletCutOneWay() {
    // 50 + 42.16 = 92.16; a third of 10 beside them is not asked for.
    Plan two = StonePlan.withGrooves(50, 42.16, 10);
    assertEquals(List.of(), StonePlan.judge(new ChannelRule(), two));
    refused(StonePlan.withGrooves(50, 42.06, 10), UNCUT);
  }

  @Test
  void threeGroovesAreNoOneWay() {
    // 40 + 30 + 22.16 = 92.16
    refused(StonePlan.withGrooves(40, 30, 22.16), UNCUT);
  }
}
