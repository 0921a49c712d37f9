package holloway.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A tree answers as looking at everything does, and looks at little. */
class TreeTest {
  @Test
  void theSameAsBruteForce() {
    int met = 0;
    for (int seed = 1; seed <= 12; seed++) {
      Shapes shapes = Brute.timbers(seed * 97 % 700, seed, 6);
      Tree tree = new Tree(shapes);
      Random r = new Random(seed);
      for (int i = 0; i < 250; i++) {
        Ray ray = Brute.ray(r, i, 6);
        List<Tree.Hit> all = Brute.all(shapes, ray);
        String which = "seed " + seed + ", ray " + i;
        assertEquals(all, tree.all(ray, n -> true), which);
        assertEquals(all.stream().findFirst(), tree.nearest(ray, n -> true), which);
        Optional<Tree.Hit> odd = all.stream().filter(h -> h.number() % 2 == 1).findFirst();
        assertEquals(odd, tree.nearest(ray, n -> n % 2 == 1), which + ", odd ones");
        met += all.size();
      }
    }
    assertTrue(met > 5000, "rays met " + met + " shapes only");
  }

  @Test
  void nothingToPointAt() {
    assertEquals(
        Optional.empty(), new Tree(new Shapes()).nearest(Brute.ray(new Random(1), 1), n -> true));
  }

  /** Counted, not timed: a box tried costs the same in both. `PickTimes` prints the time. */
  @Test
  void atTwentyThousandMembersOneBoxInFiftyIsLookedAt() {
    int members = 20_000;
    int rays = 2_000;
    Shapes shapes = Brute.timbers(members, 7);
    Tree tree = new Tree(shapes);
    Random r = new Random(7);
    for (int i = 0; i < rays; i++) {
      tree.nearest(Brute.ray(r, i), n -> true);
    }
    double ratio = (double) members * rays / tree.looked();
    assertTrue(ratio >= 50, "only " + ratio + " times fewer");
  }
}
