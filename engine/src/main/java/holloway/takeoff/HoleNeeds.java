package holloway.takeoff;

import holloway.plan.Drilling;
import java.util.Map;
import java.util.Set;

/**
 * What others have found out of a plan's holes.
 *
 * @param plated ids of those that want steel over them, by the rule that asks for it
 * @param drilling by id, what each is bored with; where nothing is said, a bit of the usual length
 * @param masonryPilots some get a pilot through masonry
 */
public record HoleNeeds(Set<String> plated, Map<String, Drilling> drilling, boolean masonryPilots) {
  public static final HoleNeeds NONE = new HoleNeeds(Set.of(), Map.of(), false);

  public HoleNeeds {
    plated = Set.copyOf(plated);
    drilling = Map.copyOf(drilling);
  }
}
