package holloway.pipeline;

import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.request.Request;
import holloway.request.Wishes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;

/** The ways of working that are compared: all allowed, each alone, each left out. */
final class Ways {
  /** Words of {@code wishes.bans} that a person can allow or leave out as a whole. */
  static final List<String> WORDS = List.of("attic", "chase", "under-floor", "outside", "surface");

  private Ways() {}

  static Request with(Request request, Profile profile) {
    Wishes w = request.wishes();
    return with(
        request,
        new Wishes(
            w.hourIsWorth(), w.visibleMetre(), w.attic(), w.avoid(), w.bans(), profile, w.crew()));
  }

  /**
   * Plans each way and folds together those with the very same plan, in the order given.
   *
   * @param present ways that the house has; two ways that shut the same of these are planned once
   */
  static List<Answers.WayOfWorking> compare(
      Request request, Set<String> present, BiFunction<String, Request, Plan> planner) {
    Map<String, Answers.WayOfWorking> byPlan = new LinkedHashMap<>();
    Map<Set<String>, Plan> done = new HashMap<>();
    for (Map.Entry<String, List<String>> way : listWays().entrySet()) {
      Set<String> shut = new TreeSet<>(way.getValue());
      shut.retainAll(present);
      Plan plan = done.get(shut);
      if (plan == null) {
        plan = planner.apply(way.getKey(), banning(request, way.getValue()));
        done.put(shut, plan);
      }
      Answers.WayOfWorking one =
          new Answers.WayOfWorking(way.getKey(), way.getValue(), List.of(), plan);
      byPlan.merge(likeness(plan), one, Ways::folded);
    }
    return List.copyOf(byPlan.values());
  }

  private static Answers.WayOfWorking folded(
      Answers.WayOfWorking first, Answers.WayOfWorking next) {
    List<String> names = new ArrayList<>(first.sameAs());
    names.add(next.name());
    return new Answers.WayOfWorking(first.name(), first.bans(), List.copyOf(names), first.plan());
  }

  /** Name to bans: everything, without one way, one way alone. */
  static Map<String, List<String>> listWays() {
    Map<String, List<String>> out = new LinkedHashMap<>();
    out.put("all ways allowed", List.of());
    for (String word : WORDS) {
      out.put("without " + word, List.of(word));
    }
    for (String word : WORDS) {
      out.put(word + " alone", WORDS.stream().filter(w -> !w.equals(word)).toList());
    }
    return out;
  }

  /** Two plans are the same when they route the same runs along the same steps. */
  private static String likeness(Plan plan) {
    StringBuilder out = new StringBuilder();
    plan.runs()
        .forEach(
            r -> {
              out.append(r.id()).append('\n');
              r.steps().forEach(s -> out.append(s.id()).append(s.path()).append('\n'));
            });
    plan.holes().forEach(h -> out.append(h.id()).append(h.method()).append('\n'));
    plan.unrouted().forEach(u -> out.append("unrouted ").append(u.id()).append('\n'));
    return out.toString();
  }

  static Request banning(Request request, List<String> bans) {
    Wishes w = request.wishes();
    List<String> all = List.copyOf(new TreeSet<>(concat(w.bans(), bans)));
    return with(
        request,
        new Wishes(
            w.hourIsWorth(), w.visibleMetre(), w.attic(), w.avoid(), all, w.profile(), w.crew()));
  }

  private static List<String> concat(List<String> a, List<String> b) {
    List<String> out = new ArrayList<>(a);
    out.addAll(b);
    return out;
  }

  private static Request with(Request r, Wishes wishes) {
    return r.with(wishes);
  }
}
