package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.survey.Placed;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;

/** Counts what to buy for a plan whose runs have cut lengths, in the order of a shop's shelves. */
final class Materials {
  private final Request request;
  private final Placed placed;
  private final Set<String> plated;
  private final Shopping list;

  /**
   * @param plated ids of the holes that want steel over them
   */
  Materials(Request request, Placed placed, Set<String> plated) {
    this.request = request;
    this.placed = placed;
    this.plated = plated;
    this.list = new Shopping(request.prices(), request.shop().have());
  }

  List<Plan.Material> of(Plan plan) {
    boxes(plan);
    leads(plan);
    new OutletParts(request, placed, list).count(plan);
    CabinetParts.count(plan, request, list);
    new PathParts(plan, placed).count(list);
    new HoleParts(plan, placed).count(list, plated);
    LinkParts.count(plan, placed, list);
    Gear.count(plan, request, list);
    return list.list();
  }

  private void boxes(Plan plan) {
    for (BoxPlan.Order order : BoxPlanner.of(plan, request.prices()).orders()) {
      for (BoxPlan.Reel reel : order.reels()) {
        list.addCable(
            "%s cable, box or reel of %s".formatted(order.cable(), BoxPlan.words(reel.metres())),
            1,
            "piece",
            reel.cents());
      }
      for (BoxPlan.Cut cut : order.tooLong()) {
        String item =
            order.cable() + " cable by the metre, for " + cut.run() + ", no box is as long";
        list.addCable(item, cut.metres(), "m", OptionalLong.empty());
      }
    }
  }

  private void leads(Plan plan) {
    Map<String, Map<Integer, Integer>> count = new TreeMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      if (!Cable.get(r.cable()).factoryEnds()) {
        continue;
      }
      OptionalInt lead = CutLength.of(r, request.prices()).lead();
      if (lead.isPresent()) {
        count
            .computeIfAbsent(r.cable(), k -> new TreeMap<>())
            .merge(lead.getAsInt(), 1, Integer::sum);
      } else {
        list.addCable(
            r.cable() + " lead, made to length for " + r.id(),
            r.cableM(),
            "m",
            OptionalLong.empty());
      }
    }
    count.forEach((kind, byLength) -> byLength.forEach((m, n) -> lead(kind, m, n)));
  }

  private void lead(String kind, int metres, int n) {
    list.addCable(
        "%s lead with factory ends, %d m".formatted(kind, metres),
        n,
        "piece",
        request.prices().leadPrice(kind, metres));
  }
}
