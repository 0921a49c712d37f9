package holloway.solve;

import holloway.geometry.Point3;
import holloway.hollow.WorkKind;
import holloway.plan.Plan.PlanStep;
import holloway.request.Effort;
import holloway.routing.RouteGraph;
import holloway.routing.RouteGraph.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The steps of one run: pieces of its edges in walking order, hand legs that go on in the same
 * hollow joined to one, fishes numbered from 1.
 */
final class RunSteps {
  private final Network net;
  private final Map<String, String> labels;
  private final List<PlanStep> steps = new ArrayList<>();
  private Piece.Leg open;
  private List<Point3> openPath;
  private long openPrice;
  private int fishes;

  /**
   * @param labels label of each hole to be made, by site id
   */
  RunSteps(Network net, Map<String, String> labels) {
    this.net = net;
    this.labels = labels;
  }

  List<PlanStep> of(Path path) {
    for (int arc : path.arcs()) {
      RouteGraph.Edge edge = net.graph.edges().get(arc >> 1);
      boolean back = (arc & 1) == 1;
      List<Piece> pieces = new ArrayList<>(edge.pieces());
      if (back) {
        Collections.reverse(pieces);
      }
      if (pieces.stream().anyMatch(p -> p instanceof Piece.Leg leg && leg.blind())) {
        fishes++;
      }
      if (!pieces.isEmpty()) {
        inHandAt(back ? edge.b() : edge.a(), pieces.get(0));
      }
      for (Piece p : pieces) {
        take(p, back);
      }
    }
    closeHandLeg();
    return List.copyOf(steps);
  }

  /**
   * Where one leg ends and another begins at a place that was opened, a crossing without length
   * says that a hand has the cable there, so that legs and crossings take turns.
   */
  private void inHandAt(int node, Piece next) {
    boolean legBefore =
        open != null || !steps.isEmpty() && steps.get(steps.size() - 1).kind().equals("leg");
    boolean goesOn =
        open != null
            && next instanceof Piece.Leg leg
            && !leg.blind()
            && leg.kind().byHand()
            && open.hollow().equals(leg.hollow());
    if (legBefore && next instanceof Piece.Leg && !goesOn) {
      closeHandLeg();
      RouteGraph.Node n = net.graph.nodes().get(node);
      steps.add(
          crossing(new Piece.Pass(opening(n), List.of(n.at(), n.at())), List.of(n.at(), n.at())));
    }
  }

  /** The work that opens a place, else the place's own name. */
  private String opening(RouteGraph.Node at) {
    for (int w : at.works()) {
      RouteGraph.Work work = net.graph.works().get(w);
      if (work.kind() == WorkKind.PATCH
          || work.kind() == WorkKind.ACCESS
          || work.kind() == WorkKind.CUT_OUT) {
        return work.name();
      }
    }
    return at.name();
  }

  private void take(Piece piece, boolean back) {
    List<Point3> path = new ArrayList<>(piece.path());
    if (back) {
      Collections.reverse(path);
    }
    if (piece instanceof Piece.Leg leg && !leg.blind()) {
      hand(leg, path);
      return;
    }
    closeHandLeg();
    if (piece instanceof Piece.Leg leg) {
      steps.add(leg(leg, path, leg.price(), Optional.of(fishes)));
    } else if (piece instanceof Piece.Pass pass) {
      steps.add(crossing(pass, path));
    }
  }

  private void hand(Piece.Leg leg, List<Point3> path) {
    if (open != null && open.hollow().equals(leg.hollow())) {
      openPath.addAll(path);
      openPrice = Math.addExact(openPrice, leg.price());
      return;
    }
    closeHandLeg();
    open = leg;
    openPath = path;
    openPrice = leg.price();
  }

  private void closeHandLeg() {
    if (open != null) {
      steps.add(leg(open, openPath, openPrice, Optional.empty()));
      open = null;
    }
  }

  private static PlanStep leg(
      Piece.Leg leg, List<Point3> path, long price, Optional<Integer> fish) {
    List<Point3> straight = Polyline.withoutNeedlessPoints(path);
    return new PlanStep(
        "leg",
        leg.hollow(),
        Optional.of(leg.kind().word()),
        Optional.empty(),
        straight,
        Polyline.metres(straight),
        Optional.of(leg.blind() ? "blind" : "hand"),
        fish,
        Optional.of(price / (double) Effort.PER_MINUTE));
  }

  private PlanStep crossing(Piece.Pass pass, List<Point3> path) {
    return new PlanStep(
        "crossing",
        pass.site(),
        Optional.empty(),
        Optional.ofNullable(labels.get(pass.site())),
        List.copyOf(path),
        Polyline.metres(path),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
