package holloway.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.PlanJson;
import holloway.request.Profile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

/** The same question has the same answer, whoever asks it, how often, and with how many threads. */
class SameBytesTest {
  private static final HouseLike HOUSE = new HouseLike(5, 8, 9, 3, Profile.LEAST_WORK);

  private static String answer(Order order) {
    Solved s = JointPlanner.solve(HOUSE.graph, order, Budget.QUICK, Progress.SILENT);
    return PlanJson.write(s.plan()) + s.bound();
  }

  private static void same(String a, String b, String what) {
    // not assertEquals, which would print both plans whole
    assertTrue(a.equals(b), what);
  }

  @Test
  void againInTheSameProgram() {
    same(answer(HOUSE.order), answer(HOUSE.order), "the second answer is another one");
  }

  /** Parallel streams stay in the pool that began them. */
  @Test
  void withOneThreadAndWithThree() throws Exception {
    List<String> answers = new ArrayList<>();
    for (int threads : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        answers.add(pool.submit(() -> answer(HOUSE.order)).get());
      } finally {
        pool.shutdown();
      }
    }
    same(answers.get(0), answers.get(1), "threads count");
  }

  @Test
  void howeverTheRunsAreListed() {
    Order order = HOUSE.order;
    String straight = answer(order);
    for (int seed = 0; seed < 3; seed++) {
      List<Order.Wanted> shuffled = new ArrayList<>(order.runs());
      Collections.shuffle(shuffled, new Random(seed));
      Order other = new Order(shuffled, order.profile(), order.bans(), order.pins());
      assertEquals(false, shuffled.equals(order.runs()), "the shuffle moved nothing");
      same(straight, answer(other), "shuffle " + seed);
    }
  }
}
