package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.request.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Searches that start anew, led by opening prices that are each time a little other. */
class NewStartsTest {
  private final HouseLike house = new HouseLike(2, 8, 16, 3, Profile.LEAST_WORK);
  private final Task task = new Task(house.graph, house.order);
  private final int[] runs = IntStream.range(0, task.runs()).toArray();
  private final List<String> heard = new ArrayList<>();

  private final Progress hears =
      (what, done, of) -> {
        if (what.equals("starting anew")) {
          heard.add(done + " of " + of);
        }
      };

  private PlanSearch search() {
    return new PlanSearch(task, Budget.QUICK, hears, new Watch(Stop.NEVER));
  }

  /** All runs on their own shortest paths: far from what they would cost together. */
  private Solution poor() {
    Zones zones = new Zones(task.net);
    Draft draft = new Draft(task, zones);
    new Insertion(draft, new MarginalSearch(draft, zones)).independent(runs);
    return draft.save();
  }

  private List<long[]> truePrices() {
    return List.of(task.net.workPrice.clone());
  }

  /** Two insertion orders, three starts each; the better plan of all is the answer. */
  @Test
  void aPoorPlanIsReplaced() {
    Solution poor = poor();
    Solution better = search().restarted(runs, poor, truePrices(), 0);
    assertTrue(better.price() < poor.price(), better.price() + " and " + poor.price());
    assertEquals(runs.length, better.routed());
    assertEquals(List.of("1 of 6", "2 of 6", "3 of 6", "4 of 6", "5 of 6", "6 of 6"), heard);
    Solution again = search().restarted(runs, poor, truePrices(), 0);
    assertEquals(better.price(), again.price());
    assertArrayEquals(better.method(), again.method());
  }

  /** 0.9 % are open: nothing is begun. */
  @Test
  void whereLittleIsOpenNothingIsTried() {
    Solution poor = poor();
    long bound = poor.price() - poor.price() * 9 / 1000;
    assertEquals(poor, search().restarted(runs, poor, truePrices(), bound));
    assertEquals(List.of(), heard);
  }

  /** It ends with the first start whose plan is near enough: the rest of the six is not tried. */
  @Test
  void aPlanThatIsNearEnoughEndsIt() {
    Solution poor = poor();
    search().restarted(runs, poor, truePrices(), poor.price() * 985 / 1000);
    assertTrue(heard.size() < 6, heard.toString());
  }
}
