package holloway.schedule;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Holes through which the head of a ready-made lead passes only while none of the other cables lies
 * there. One stretch may draw leads and cables through such a hole in one go, leads ahead; a second
 * one may not, for its leads would come after the first one's cables.
 */
final class TightHoles {
  private final Set<String> tight;

  TightHoles(Plan plan) {
    Map<String, List<Cable>> in = new HashMap<>();
    Map<String, Cable> kinds =
        plan.runs().stream()
            .collect(Collectors.toMap(Plan.PlannedRun::id, r -> Cable.get(r.cable())));
    for (Plan.PlannedHole h : plan.holes()) {
      in.put(h.id(), h.runs().stream().map(kinds::get).filter(Objects::nonNull).toList());
    }
    tight =
        plan.holes().stream()
            .filter(h -> h.bores() == 1 && isTight(in.get(h.id()), h.diameterMm()))
            .map(Plan.PlannedHole::id)
            .collect(Collectors.toSet());
  }

  private static boolean isTight(List<Cable> cables, int diameterMm) {
    double head =
        cables.stream()
            .filter(Cable::factoryEnds)
            .mapToDouble(c -> c.pullHead().toMm())
            .max()
            .orElse(0);
    double jacket =
        cables.stream()
            .filter(c -> !c.factoryEnds())
            .mapToDouble(c -> c.outside().toMm())
            .max()
            .orElse(0);
    return head > 0 && jacket > 0 && head + jacket > diameterMm;
  }

  /** The stretches, by key, that draw their leads in a go of their own before all else. */
  Set<String> leadsApart(Map<String, List<Stretch>> byKey) {
    Map<String, Set<String>> mixed = new HashMap<>();
    byKey.forEach(
        (key, shared) -> {
          long leads = shared.stream().filter(PullPlanner::ready).count();
          if (leads > 0 && leads < shared.size()) {
            shared.stream()
                .flatMap(s -> s.crossings().stream())
                .filter(tight::contains)
                .forEach(h -> mixed.computeIfAbsent(h, k -> new HashSet<>()).add(key));
          }
        });
    return mixed.values().stream()
        .filter(keys -> keys.size() > 1)
        .flatMap(Collection::stream)
        .collect(Collectors.toSet());
  }
}
