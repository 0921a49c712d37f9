package holloway.desk;

import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.session.Change;
import holloway.session.Changes;
import holloway.session.Wanted;
import holloway.session.Work;
import holloway.view.Pictures;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How long a person waits for each single change of a house: for the sketch with its model, by its
 * thread's processor time and by the clock, and for the plan that is proven and judged, by the
 * clock. Printed, for DEVELOPERS.md.
 */
public final class Waits {
  private static int judgedMost = Integer.MAX_VALUE;

  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

  private Waits() {}

  /** Milliseconds of one kind of change. */
  private static final class Times {
    private final List<Double> sketch = new ArrayList<>();
    private final List<Double> work = new ArrayList<>();
    private final List<Double> judged = new ArrayList<>();
    private int differ;

    private static String of(List<Double> all) {
      List<Double> sorted = new ArrayList<>(all);
      Collections.sort(sorted);
      return "%.0f, %.0f".formatted(sorted.get(sorted.size() / 2), sorted.get(sorted.size() - 1));
    }
  }

  public static void main(String[] args) {
    judgedMost = args.length > 1 ? Integer.parseInt(args[1]) : judgedMost;
    LiveHouse h = LiveHouse.open(Path.of(args[0]), Progress.SILENT);
    Plan plan = h.judged().plan();
    rehearse(h);
    // Once unmeasured: a person has looked round before they change anything.
    changes(h, plan).values().stream()
        .limit(1)
        .forEach(l -> l.forEach(c -> ask(h, c, new Times())));
    for (Map.Entry<String, List<Change>> e : changes(h, plan).entrySet()) {
      Times t = new Times();
      e.getValue().forEach(c -> ask(h, c, t));
      if (!t.sketch.isEmpty()) {
        System.out.printf(
            "%s, %s, %d changes: sketch median, worst %s ms of processor, %s ms by the clock;"
                + " %d judged %s ms, %d of them otherwise than sketched%n",
            h.placed().house().name(),
            e.getKey(),
            t.sketch.size(),
            Times.of(t.work),
            Times.of(t.sketch),
            t.judged.size(),
            t.judged.isEmpty() ? "" : Times.of(t.judged),
            t.differ);
      }
    }
  }

  /** As the window does while nobody has asked for anything. */
  private static void rehearse(LiveHouse h) {
    Rehearsal all =
        new Rehearsal(new Work(h, h.judged(), Runnable::run, Runnable::run), Runnable::run);
    long a = System.nanoTime();
    for (all.begin(); all.isOn(); ) {
      all.goOn();
    }
    System.out.printf("rehearsed in %.1f s%n", (System.nanoTime() - a) / 1e9);
  }

  private static void ask(LiveHouse h, Change c, Times t) {
    Request wanted = Wanted.of(h.request(), Changes.NONE.then(c));
    try {
      long begun = CPU.getCurrentThreadCpuTime();
      long a = System.nanoTime();
      LiveHouse.Sketched sketch = h.sketch(wanted);
      Pictures seen = new Pictures(sketch.drawn());
      long b = System.nanoTime();
      t.sketch.add((b - a) / 1e6);
      t.work.add((CPU.getCurrentThreadCpuTime() - begun) / 1e6);
      if (t.judged.size() >= judgedMost) {
        return;
      }
      b = System.nanoTime();
      LiveHouse next = h.with(wanted);
      LiveHouse.Judged judged = next.judged();
      new Pictures(next.drawn(judged));
      long d = System.nanoTime();
      t.judged.add((d - b) / 1e6);
      t.differ += Outcome.of(sketch.plan(), judged.plan(), seen.words()).isAsSketched() ? 0 : 1;
    } catch (holloway.pipeline.InputTrouble e) {
      // An outlet at the end of its wall: nothing to wait for.
    }
  }

  /** All single changes of each kind. */
  private static Map<String, List<Change>> changes(LiveHouse h, Plan plan) {
    Map<String, List<Change>> out = new LinkedHashMap<>();
    out.put("holes forbidden", new ArrayList<>());
    out.put("hollows forbidden", new ArrayList<>());
    out.put("runs pinned", new ArrayList<>());
    out.put("outlets slid", new ArrayList<>());
    out.put("outlets slid farther", new ArrayList<>());
    plan.holes().forEach(x -> out.get("holes forbidden").add(new Change.Forbid(x.id(), "")));
    List<String> hollows =
        plan.runs().stream()
            .flatMap(r -> r.steps().stream())
            .filter(s -> s.kind().equals("leg"))
            .map(Plan.PlanStep::id)
            .distinct()
            .sorted()
            .toList();
    hollows.forEach(x -> out.get("hollows forbidden").add(new Change.Forbid(x, "")));
    for (Plan.PlannedRun r : plan.runs()) {
      // Through the hollow that another run takes: its own would change nothing.
      hollows.stream()
          .filter(x -> r.steps().stream().noneMatch(s -> s.id().equals(x)))
          .findFirst()
          .ifPresent(x -> out.get("runs pinned").add(new Change.Pin(r.id(), x, "")));
    }
    for (Outlet o : h.request().outlets()) {
      if (Wanted.slides(o)) {
        for (int by : new int[] {1, -1}) {
          out.get("outlets slid").add(Acts.slide(h, o.name(), by));
          out.get("outlets slid farther").add(Acts.slide(h, o.name(), 2 * by));
        }
      }
    }
    return out;
  }
}
