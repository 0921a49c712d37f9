package holloway.survey;

import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Loops of observations that do not close. For every observation the tightest loop through it (the
 * one whose other observations have the least variance) is walked once; a surveyor's traverse, in
 * one dimension. A loop is out when it misses by more than three times the root of the sum of its
 * squared spreads (errors of position add so: the law of propagation of independent errors).
 */
final class Loops {
  private static final double LIMIT = 3;

  /** A miss of less is rounding, nanometres. */
  private static final long NOTHING = 50_000;

  private final Network network;
  private final Paths paths;
  private final Verdict verdict;
  private final List<Snooping.Group> groups;
  private final Map<Observation, Residual> residuals;

  private Loops(Network network, int held, Texts texts) {
    this.network = network;
    this.paths = new Paths(network);
    this.verdict = new Verdict(texts);
    this.groups = Snooping.of(network, held);
    this.residuals =
        Residual.of(network, held).stream()
            .collect(Collectors.toMap(Residual::observation, Function.identity(), (a, b) -> a));
  }

  /** One closed walk: its observations, and where it begins. */
  private record Loop(int start, List<Observation> observations, List<Step> steps) {
    long miss() {
      return steps.get(steps.size() - 1).sum().nm();
    }

    Length tolerance() {
      double variance = observations.stream().mapToDouble(Observation::variance).sum();
      return new Length(Math.round(LIMIT * Math.sqrt(variance) * 1e6));
    }

    boolean isOut() {
      return Math.abs(miss()) > tolerance().nm();
    }
  }

  static Closures of(Network network, int held, Texts texts) {
    Loops loops = new Loops(network, held, texts);
    List<Loop> all = loops.list();
    Set<Observation> blamed = new HashSet<>();
    all.stream().filter(Loop::isOut).forEach(l -> blamed.addAll(l.observations));
    return new Closures(
        all.stream().filter(Loop::isOut).map(loops::misclosure).sorted(LARGEST).toList(),
        all.stream()
            .filter(l -> !l.isOut() && Math.abs(l.miss()) > NOTHING)
            .map(loops::sharedOut)
            .sorted(Comparator.comparing(SharedOut::size).reversed().thenComparing(SharedOut::most))
            .toList(),
        loops.groups.stream()
            .filter(g -> g.suspects().stream().noneMatch(s -> blamed.contains(s.observation())))
            .map(loops.verdict::says)
            .toList());
  }

  private static final Comparator<Misclosure> LARGEST =
      Comparator.comparing(Misclosure::size)
          .reversed()
          .thenComparing(m -> m.measurements().toString());

  private List<Loop> list() {
    TreeMap<String, Loop> found = new TreeMap<>();
    for (int k = 0; k < paths.observations().size(); k++) {
      Observation closing = paths.observations().get(k);
      int left = k;
      List<Integer> back = paths.tightest(closing.to(), closing.from(), e -> e != left);
      List<Integer> way = new ArrayList<>(List.of(k));
      way.addAll(back);
      if (!back.isEmpty()) {
        found.computeIfAbsent(
            way.stream().sorted().toList().toString(), key -> loop(closing.from(), way));
      }
    }
    return List.copyOf(found.values());
  }

  private Loop loop(int start, List<Integer> way) {
    return new Loop(
        start, way.stream().map(paths.observations()::get).toList(), paths.steps(start, way));
  }

  private String where(Loop loop) {
    return network.axis().word() + " through " + network.name(loop.start);
  }

  private Misclosure misclosure(Loop loop) {
    List<Snooping.Group> here =
        groups.stream()
            .filter(
                g ->
                    g.suspects().stream()
                        .anyMatch(s -> loop.observations.contains(s.observation())))
            .toList();
    return new Misclosure(
        where(loop),
        new Length(Math.abs(loop.miss())),
        loop.tolerance(),
        loop.steps.stream().map(Step::what).toList(),
        loop.steps,
        Verdict.suspects(here),
        verdict.says(here));
  }

  private SharedOut sharedOut(Loop loop) {
    Residual most =
        loop.observations.stream()
            .map(residuals::get)
            .max(
                Comparator.comparingDouble((Residual r) -> Math.abs(r.v()))
                    .thenComparing(Residual::observation, Observation.ORDER))
            .orElseThrow();
    return new SharedOut(
        where(loop),
        new Length(Math.abs(loop.miss())),
        loop.tolerance(),
        loop.steps.size(),
        Length.mm(Math.abs(most.v())),
        most.observation().text());
  }
}
