package holloway.solve;

import holloway.hollow.WorkKind;
import holloway.plan.Plan.PlannedHole;
import holloway.request.Effort;
import holloway.request.Profile;
import holloway.routing.RouteGraph;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The holes a draft makes, labelled H1, H2, … from the lowest up, then by y and x. */
final class PlannedHoles {
  private final Draft draft;
  private final Network net;
  private final List<RouteGraph.Hole> made;
  private final Map<String, String> labels = new LinkedHashMap<>();

  PlannedHoles(Draft draft) {
    this.draft = draft;
    this.net = draft.net;
    made =
        IntStream.of(draft.openHoles())
            .mapToObj(h -> net.graph.holes().get(h))
            .filter(h -> !h.made())
            .sorted(Comparator.comparing(RouteGraph.Hole::at).thenComparing(RouteGraph.Hole::site))
            .toList();
    made.forEach(h -> labels.put(h.site(), "H" + (labels.size() + 1)));
  }

  Map<String, String> labels() {
    return labels;
  }

  List<PlannedHole> list() {
    return made.stream().map(this::planned).toList();
  }

  /** Units for larger bits and second bores, on the least-work scale. */
  long extraUnits() {
    long sum = 0;
    for (int h : draft.openHoles()) {
      sum = Math.addExact(sum, extra(h));
    }
    return sum;
  }

  /** What a wider bit and a second bore add to a bore work: units, and holes that count. */
  record Added(long units, int holes) {}

  /** A bore work carries the extras of its hole, so that works and legs make up the minutes. */
  Added addedTo(RouteGraph.Work work) {
    for (RouteGraph.Hole h : made) {
      RouteGraph.Method method = h.methods().get(draft.method[h.id()]);
      boolean own = IntStream.of(method.works()).anyMatch(w -> w == work.id());
      if (own && work.kind() == WorkKind.BORE) {
        return new Added(extra(h.id()), bores(h.id()).secondMm() > 0 ? 1 : 0);
      }
    }
    return new Added(0, 0);
  }

  int secondBores() {
    return (int) IntStream.of(draft.openHoles()).filter(h -> bores(h).secondMm() > 0).count();
  }

  private Capacity.Bores bores(int hole) {
    return draft.bores(hole, draft.method[hole]);
  }

  private long extra(int hole) {
    Capacity.Bores b = bores(hole);
    boolean scaled = b.secondMm() > 0 && net.profile == Profile.FEWEST_HOLES;
    return b.extra() - (scaled ? Network.HOLE_SCALE : 0);
  }

  private PlannedHole planned(RouteGraph.Hole h) {
    Capacity.Bores bores = bores(h.id());
    int chosen = draft.method[h.id()];
    RouteGraph.Method method = h.methods().get(chosen);
    return new PlannedHole(
        h.site(),
        labels.get(h.site()),
        h.kind(),
        Math.max(bores.firstMm(), bores.secondMm()),
        h.a().distanceTo(h.b()) / 1e6,
        h.at(),
        List.of(h.hollowA(), h.hollowB()),
        method.words(),
        method.stand(),
        IntStream.of(method.works()).mapToObj(w -> net.graph.works().get(w).name()).toList(),
        minutes(h, method),
        runs(h.id()),
        h.assumed(),
        others(h, chosen),
        bores.secondMm() > 0 ? 2 : 1,
        List.of(h.a(), h.b()),
        h.pierced());
  }

  private double minutes(RouteGraph.Hole h, RouteGraph.Method method) {
    long units = extra(h.id());
    for (int w : method.works()) {
      RouteGraph.Work work = net.graph.works().get(w);
      units = Math.addExact(units, work.kind() == WorkKind.BORE ? work.price() : 0);
    }
    return units / (double) Effort.PER_MINUTE;
  }

  private List<String> others(RouteGraph.Hole h, int chosen) {
    List<String> out = new ArrayList<>();
    for (int m = 0; m < h.methods().size(); m++) {
      boolean shut = IntStream.of(h.methods().get(m).works()).anyMatch(w -> net.workShut[w]);
      if (m != chosen && !shut) {
        out.add(h.methods().get(m).words());
      }
    }
    return List.copyOf(out);
  }

  /** Ids of the runs that pass, in the order of the plan, which is by id. */
  private List<String> runs(int hole) {
    List<String> out = new ArrayList<>();
    for (int k = 0; k < draft.paths.length; k++) {
      Path p = draft.paths[k];
      if (p != null && IntStream.of(p.arcs()).anyMatch(a -> passes(a, hole))) {
        out.add(draft.task.order.runs().get(k).id());
      }
    }
    return out;
  }

  private boolean passes(int arc, int hole) {
    return IntStream.of(net.edgeHoles[arc >> 1]).anyMatch(h -> h == hole);
  }
}
