package holloway.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Puts steps in the order in which they can be done with the fewest visits to zones. */
final class StepOrder {
  private final List<Step> steps;
  private final int crew;
  private final List<WorkPlace> zones;

  private final List<FewestVisits.Task> tasks = new ArrayList<>();
  private final List<Step> ofTask = new ArrayList<>();

  StepOrder(List<Step> unsorted, int crew) {
    this.crew = Math.max(1, Math.min(2, crew));
    this.steps = new ArrayList<>(unsorted);
    TreeSet<WorkPlace> found = new TreeSet<>();
    for (Step s : steps) {
      places(s).stream().filter(WorkPlace::isZone).forEach(found::add);
    }
    this.zones = List.copyOf(found);
    steps.sort(
        Comparator.comparingInt((Step s) -> turn(s.kind()))
            .thenComparing(s -> s.kind() == Step.Kind.PULL ? "" : s.at().id())
            .thenComparing(Step::kind)
            .thenComparing(s -> s.kind() == Step.Kind.PULL ? "" : s.id()));
    tasks();
  }

  /**
   * Kinds of one turn are done at one place after another: nobody comes back to bore what is open.
   */
  private static int turn(Step.Kind kind) {
    return switch (kind) {
      case OPEN, CUT, PILOT, DRILL -> Step.Kind.DRILL.ordinal();
      case TERMINATE, LABEL -> Step.Kind.LABEL.ordinal();
      default -> kind.ordinal();
    };
  }

  private static List<WorkPlace> places(Step s) {
    List<WorkPlace> out = new ArrayList<>(List.of(s.at()));
    s.other().ifPresent(out::add);
    return out;
  }

  private int zone(WorkPlace p) {
    return p.isZone() ? zones.indexOf(p) : FewestVisits.OUT;
  }

  private void tasks() {
    Map<String, Integer> maker = new HashMap<>();
    int next = 0;
    for (Step s : steps) {
      int parts = crew == 1 && s.other().isPresent() ? 2 : 1;
      next += parts;
      for (String token : s.makes()) {
        maker.put(token, next - 1);
      }
    }
    for (Step s : steps) {
      List<Integer> needs = new ArrayList<>();
      for (String token : s.needs()) {
        needs.add(
            Optional.ofNullable(maker.get(token))
                .orElseThrow(() -> new IllegalStateException(s.id() + ": nothing makes " + token)));
      }
      List<Integer> at = places(s).stream().map(this::zone).toList();
      if (crew == 1 && at.size() == 2) {
        add(s, List.of(at.get(0)), needs);
        add(s, List.of(at.get(1)), List.of(tasks.size() - 1));
      } else {
        add(s, at, needs);
      }
    }
  }

  private void add(Step s, List<Integer> at, List<Integer> needs) {
    tasks.add(new FewestVisits.Task(at, List.copyOf(needs)));
    ofTask.add(s);
  }

  WorkSchedule schedule(List<Pull> pulls, List<RunProof> tests) {
    FewestVisits.Answer best = new FewestVisits(tasks, zones.size(), crew).solve();
    Replay replay = new Replay();
    best.moves().forEach(replay::at);
    List<Step> out = replay.out;
    Map<String, Pull> byId = new TreeMap<>();
    pulls.forEach(p -> byId.put(p.id(), p));
    List<Pull> inOrder =
        out.stream()
            .filter(s -> s.kind() == Step.Kind.PULL)
            .map(s -> byId.get(s.subject()))
            .toList();
    return new WorkSchedule(out, inOrder, replay.visits(), best.bound(), crew, tests, List.of());
  }

  /** Does at each place of the crew what can be done there, and writes down who does it. */
  private final class Replay {
    private final List<Step> out = new ArrayList<>();
    private final boolean[] done = new boolean[tasks.size()];
    private final int[] firstVisit = new int[tasks.size()];
    private final int[] firstPerson = new int[tasks.size()];
    private List<Integer> now = List.of();
    private final int[] visitOf = new int[crew];
    private final List<WorkPlace> visited = new ArrayList<>();
    private final List<Integer> visitor = new ArrayList<>();

    void at(List<Integer> where) {
      for (int p = 0; p < crew; p++) {
        int z = where.get(p);
        boolean stays = !now.isEmpty() && now.get(p) == z;
        if (!stays && z == FewestVisits.OUT) {
          visitOf[p] = 0;
        } else if (!stays) {
          visited.add(zones.get(z));
          visitor.add(p + 1);
          visitOf[p] = visited.size();
        }
      }
      now = where;
      boolean more = true;
      while (more) {
        more = false;
        for (int t = 0; t < tasks.size() && !more; t++) {
          more = !done[t] && ready(t);
          if (more) {
            take(t);
          }
        }
      }
    }

    private boolean ready(int t) {
      return FewestVisits.canDo(tasks.get(t), now)
          && tasks.get(t).needs().stream().allMatch(n -> done[n]);
    }

    private void take(int t) {
      done[t] = true;
      Step s = ofTask.get(t);
      List<Integer> at = tasks.get(t).at();
      int who = now.indexOf(at.get(0));
      boolean first =
          crew == 1 && s.other().isPresent() && t + 1 < tasks.size() && ofTask.get(t + 1) == s;
      boolean second = t > 0 && ofTask.get(t - 1) == s;
      if (first) {
        firstVisit[t] = visitOf[who];
        firstPerson[t] = who + 1;
      } else if (second) {
        out.add(s.placed(firstPerson[t - 1], who + 1, firstVisit[t - 1], visitOf[who]));
      } else if (at.size() == 2) {
        int with = at.get(1).equals(at.get(0)) ? 1 - who : now.indexOf(at.get(1));
        out.add(s.placed(who + 1, with + 1, visitOf[who], visitOf[with]));
      } else {
        out.add(s.placed(who + 1, 0, visitOf[who], 0));
      }
    }

    List<Visit> visits() {
      List<Visit> all = new ArrayList<>();
      for (int v = 1; v <= visited.size(); v++) {
        int number = v;
        List<Step> here =
            out.stream().filter(s -> s.visit() == number || s.otherVisit() == number).toList();
        all.add(
            new Visit(
                v,
                visited.get(v - 1),
                visitor.get(v - 1),
                here.stream().map(Step::id).toList(),
                BringList.of(visited.get(v - 1), here, v)));
      }
      return all;
    }
  }
}
