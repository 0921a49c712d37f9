package holloway.solve;

import holloway.plan.Plan;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A plan that was only mended: nothing is proven of it (its bound is 0), and a run that it leaves
 * out may have a route all the same.
 *
 * @param touched ids of the runs that were looked for; every other lies as in the plan before
 */
public record Sketch(Plan plan, SortedSet<String> touched) {
  public Sketch {
    touched = Collections.unmodifiableSortedSet(new TreeSet<>(touched));
  }
}
