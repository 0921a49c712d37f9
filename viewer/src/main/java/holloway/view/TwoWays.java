package holloway.view;

import holloway.plan.Plan;
import holloway.report.SeenWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What differs between two plans for one house, in numbers and by name. */
public final class TwoWays {
  /** Name of the row that counts slack in. */
  public static final String TO_CUT = "cable to cut";

  private static final String SAME = "the same";
  private static final double LEAST = 0.05;

  private final Plan first;
  private final Plan second;
  private final SeenWords words;

  /**
   * One number of both plans.
   *
   * @param more how much more the second has, less with a minus; "the same" where nothing differs,
   *     "about the same" where what differs is nothing once it is rounded
   */
  public record Row(String name, String first, String second, String more) {}

  public TwoWays(Plan first, Plan second, SeenWords words) {
    this.first = first;
    this.second = second;
    this.words = words;
  }

  public List<Row> rows() {
    Plan.Totals a = first.totals();
    Plan.Totals b = second.totals();
    List<Row> out = new ArrayList<>();
    out.add(
        new Row(
            "work",
            words.minutes(a.minutes()),
            words.minutes(b.minutes()),
            told(
                more(b.minutes() - a.minutes(), words::minutes),
                words.minutes(a.minutes()),
                words.minutes(b.minutes()))));
    out.add(count("holes", a.holes(), b.holes()));
    out.add(count("patches", a.patches(), b.patches()));
    out.add(length("way of all runs", a.routeM(), b.routeM()));
    out.add(length(TO_CUT, a.cableM(), b.cableM()));
    if (a.visibleM() + b.visibleM() > LEAST) {
      out.add(length("in sight", a.visibleM(), b.visibleM()));
    }
    Optional<Double> priceA = a.money();
    Optional<Double> priceB = b.money();
    if (priceA.isPresent() && priceB.isPresent()) {
      String unit = " " + a.currency();
      out.add(
          new Row(
              "to buy",
              Math.round(priceA.get()) + unit,
              Math.round(priceB.get()) + unit,
              more(priceB.get() - priceA.get(), m -> Math.round(m) + unit)));
    }
    if (first.unrouted().size() + second.unrouted().size() > 0) {
      out.add(count("runs without a route", first.unrouted().size(), second.unrouted().size()));
    }
    return out;
  }

  private Row length(String name, double a, double b) {
    String more = told(more(b - a, words::cable), words.cable(a), words.cable(b));
    return new Row(name, words.cable(a), words.cable(b), more);
  }

  /** What more there is, said so that it does not contradict what it is the difference of. */
  private static String told(String more, String a, String b) {
    boolean contradicts = more.equals(SAME) != a.equals(b);
    return contradicts ? "about the same" : more;
  }

  private static Row count(String name, int a, int b) {
    return new Row(name, "" + a, "" + b, more(b - a, x -> "" + Math.round(x)));
  }

  static String more(double by, java.util.function.DoubleFunction<String> say) {
    if (Math.abs(by) < LEAST) {
      return SAME;
    }
    String much = say.apply(Math.abs(by));
    return much.equals(say.apply(0)) ? "about the same" : (by > 0 ? "+" : "\u2212") + much;
  }

  /** Ids of the runs that lie elsewhere in the other plan, or in one plan only. */
  public Set<String> runsThatDiffer() {
    Map<String, List<String>> ways = new HashMap<>();
    first.runs().forEach(r -> ways.put(r.id(), steps(r)));
    Set<String> out = new TreeSet<>();
    for (Plan.PlannedRun r : second.runs()) {
      if (!steps(r).equals(ways.remove(r.id()))) {
        out.add(r.id());
      }
    }
    out.addAll(ways.keySet());
    return out;
  }

  private static List<String> steps(Plan.PlannedRun r) {
    return r.steps().stream().map(Plan.PlanStep::id).toList();
  }

  /** Ids of the holes that the first plan has and the second has not. */
  public Set<String> onlyFirst() {
    return only(first, second);
  }

  /** Ids of the holes that the second plan has and the first has not. */
  public Set<String> onlySecond() {
    return only(second, first);
  }

  private static Set<String> only(Plan a, Plan b) {
    Set<String> out = new TreeSet<>();
    a.holes().forEach(h -> out.add(h.id()));
    b.holes().forEach(h -> out.remove(h.id()));
    return out;
  }
}
