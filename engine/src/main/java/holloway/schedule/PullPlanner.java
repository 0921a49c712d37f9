package holloway.schedule;

import holloway.catalog.Cable;
import holloway.house.Conduit;
import holloway.limits.PullForce;
import holloway.plan.FishPull;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Groups the stretches of all runs into pulls. Runs that share a stretch go together, but through a
 * stretch that nobody sees into those out of one box go one at a time, as the take-off counts them;
 * ready-made leads go with the first, while the way is still empty, or before it where {@link
 * TightHoles} wants it. What hands lay is laid together.
 */
final class PullPlanner {
  /** String past each end of a blind stretch, to tie off (from experience). */
  private static final double TAIL_M = 0.5;

  /** Before the first go. */
  private static final int AHEAD = -1;

  private final Map<String, String> boxes;
  private final TightHoles tight;
  private final List<Conduit> tubes;

  /**
   * @param boxes name of the box of each run; a run without one is drawn from the first of its kind
   */
  PullPlanner(Plan plan, Map<String, String> boxes, List<Conduit> tubes) {
    this.boxes = boxes;
    this.tubes = tubes;
    tight = new TightHoles(plan);
  }

  /** Pulls in the order of runs and stretches; those of one stretch in the order of pulling. */
  List<Pull> of(List<List<Stretch>> runs) {
    Map<String, List<Stretch>> by = new LinkedHashMap<>();
    for (List<Stretch> run : runs) {
      run.forEach(s -> by.computeIfAbsent(s.key(), k -> new ArrayList<>()).add(s));
    }
    Set<String> apart = tight.leadsApart(by);
    List<Pull> out = new ArrayList<>();
    by.forEach((key, shared) -> out.addAll(pulls(shared, apart.contains(key) ? AHEAD : 0)));
    return out;
  }

  private List<Pull> pulls(List<Stretch> shared, int leads) {
    Map<Integer, List<Stretch>> goes = new TreeMap<>();
    Map<String, Integer> drawn = new TreeMap<>();
    List<Stretch> readyFirst = new ArrayList<>(shared);
    readyFirst.sort(Comparator.comparing((Stretch s) -> !ready(s)));
    for (Stretch s : readyFirst) {
      int turn = ready(s) ? leads : s.blind() ? drawn.merge(box(s), 1, Integer::sum) - 1 : 0;
      goes.computeIfAbsent(turn, k -> new ArrayList<>()).add(s);
    }
    List<Pull> out = new ArrayList<>();
    double longest = shared.stream().mapToDouble(Stretch::metres).max().orElse(0);
    for (List<Stretch> go : goes.values()) {
      boolean leavesString = shared.get(0).blind() && out.size() + 1 == goes.size();
      out.add(pull(go, leavesString ? Math.ceil(longest + 2 * TAIL_M) : 0));
    }
    return out;
  }

  private Pull pull(List<Stretch> go, double stringM) {
    Stretch s = longest(go);
    List<String> holes = new ArrayList<>();
    go.forEach(x -> x.crossings().stream().filter(c -> !holes.contains(c)).forEach(holes::add));
    List<Pull.Strand> strands = go.stream().map(this::strand).toList();
    Pull.Strand hardest =
        strands.stream()
            .max(Comparator.comparingDouble(x -> x.newtons() / x.mostNewtons()))
            .orElseThrow();
    double turns = FishPull.of(s.legs(), s.run().cable(), tubes).turns();
    return new Pull(
        "pull/"
            + s.legs().get(0).id()
            + "/"
            + Marks.of(go.stream().map(x -> x.run().id() + "\n" + x.key()).toList()),
        s.blind() ? "fish" : "hand",
        s.legs().stream().map(Plan.PlanStep::id).distinct().toList(),
        holes,
        s.from(),
        s.to(),
        strands,
        s.metres(),
        stringM,
        hardest.newtons(),
        hardest.mostNewtons(),
        (int) Math.round(turns / (Math.PI / 2)));
  }

  private static Stretch longest(List<Stretch> go) {
    Stretch out = go.get(0);
    for (Stretch s : go) {
      out = s.metres() > out.metres() ? s : out;
    }
    return out;
  }

  private Pull.Strand strand(Stretch s) {
    Cable cable = Cable.get(s.run().cable());
    double newtons = s.blind() ? FishPull.of(s.legs(), cable.kind(), tubes).newtons() : 0;
    return new Pull.Strand(
        s.run().id(),
        s.number(),
        cable.kind(),
        box(s),
        cable.factoryEnds(),
        s.firstM(),
        s.run().cableM(),
        s.last(),
        newtons,
        PullForce.most(cable.fibre()),
        cable.bend().toMm());
  }

  static boolean ready(Stretch s) {
    return Cable.get(s.run().cable()).factoryEnds();
  }

  private String box(Stretch s) {
    return ready(s)
        ? "lead " + s.run().id()
        : boxes.getOrDefault(s.run().id(), s.run().cable() + " box 1");
  }
}
