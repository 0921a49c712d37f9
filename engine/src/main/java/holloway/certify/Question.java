package holloway.certify;

import holloway.catalog.Cable;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the plans are that a certificate speaks of.
 *
 * @param runs all runs of the plan, no other
 * @param profile word of the profile the plan was made for
 * @param bans site ids, hollow ids and way words that no run may use
 * @param pins run id to the hollow id or way word its route must touch
 */
public record Question(List<Run> runs, String profile, Set<String> bans, Map<String, String> pins) {

  /** One cable between two ends of the graph. */
  public record Run(String id, String from, String to, Cable cable) {}

  public Question {
    runs = List.copyOf(runs);
    bans = Set.copyOf(bans);
    pins = Map.copyOf(pins);
  }
}
