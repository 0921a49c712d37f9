package holloway.solve;

import holloway.catalog.Cable;
import holloway.request.Profile;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What is to be planned over a routing graph. Runs are kept sorted by id, so the order in which a
 * caller lists them never matters.
 *
 * @param bans site ids, hollow ids and way words that no run may use
 * @param pins run id to the hollow id (or way word) its route must touch
 */
public record Order(
    List<Wanted> runs, Profile profile, Set<String> bans, Map<String, String> pins) {

  /** One cable between two ends; both names are keys of the graph's terminals. */
  public record Wanted(String id, String from, String to, Cable cable) {}

  public Order {
    runs = runs.stream().sorted(Comparator.comparing(Wanted::id)).toList();
    Set<String> seen = new HashSet<>();
    for (Wanted w : runs) {
      if (!seen.add(w.id())) {
        throw new IllegalArgumentException("run " + w.id() + " is ordered twice");
      }
    }
    bans = Collections.unmodifiableSet(new TreeSet<>(bans));
    pins = Collections.unmodifiableMap(new TreeMap<>(pins));
  }

  /** The same order with more bans. */
  public Order withBans(Collection<String> more) {
    Set<String> all = new TreeSet<>(bans);
    all.addAll(more);
    return new Order(runs, profile, all, pins);
  }

  /** The same wishes for some of the runs only. */
  public Order withRuns(List<Wanted> some) {
    return new Order(some, profile, bans, pins);
  }
}
