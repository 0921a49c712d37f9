package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.survey.Placed;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Counts what to buy for a plan whose runs have cut lengths, in the order of a shop's shelves. */
final class Materials {
  private final Request request;
  private final Placed placed;
  private final HoleNeeds needs;
  private final Shopping list;

  Materials(Request request, Placed placed, HoleNeeds needs) {
    this.request = request;
    this.placed = placed;
    this.needs = needs;
    this.list = new Shopping(request.prices(), request.shop().have());
  }

  List<Plan.Material> of(Plan plan) {
    boxes(plan);
    leads(plan);
    new OutletParts(request, placed, list).count(plan);
    CabinetParts.count(plan, request, list);
    new PathParts(plan, placed).count(list);
    new HoleParts(plan, placed).count(list, needs);
    LinkParts.count(plan, placed, list);
    Gear.count(plan, request, needs, list);
    return list.list();
  }

  private void boxes(Plan plan) {
    for (BoxPlan.Order order :
        BoxPlanner.of(plan, request.prices(), placed.house().ownRules()).orders()) {
      for (BoxPlan.Reel reel : order.reels()) {
        if (reel.cut()) {
          cutLength(order, reel);
          continue;
        }
        list.addCable(
            "%s, box or reel of %s"
                .formatted(Jackets.named(order.cable(), "cable"), BoxPlan.words(reel.metres())),
            1,
            "piece",
            reel.cents());
      }
      for (BoxPlan.Cut cut : order.tooLong()) {
        String item =
            Jackets.named(order.cable(), "cable")
                + " cut in the shop, for "
                + cut.run()
                + ", no box is as long";
        list.addCable(item, cut.metres(), "m", OptionalLong.empty());
      }
    }
  }

  /** In the list by its length: one that is long enough in all is none that is long enough. */
  private void cutLength(BoxPlan.Order order, BoxPlan.Reel reel) {
    OptionalLong metre =
        reel.cents().isPresent()
            ? OptionalLong.of(reel.cents().getAsLong() / reel.metres())
            : OptionalLong.empty();
    list.addCable(
        "%s cut in the shop, one length of %d m (%d ft)"
            .formatted(
                Jackets.named(order.cable(), "cable"),
                reel.metres(),
                (long) Math.ceil(reel.metres() / 0.3048)),
        reel.metres(),
        "m",
        metre);
  }

  private void leads(Plan plan) {
    Map<Jackets.Jacket, Map<Integer, Integer>> count =
        new TreeMap<>(Comparator.comparing(Jackets.Jacket::words));
    Jackets jackets = Jackets.of(plan, placed.house().ownRules());
    for (Plan.PlannedRun r : plan.runs()) {
      if (!Cable.get(r.cable()).factoryEnds()) {
        continue;
      }
      OptionalInt lead = CutLength.of(r, request.prices()).lead();
      if (lead.isPresent()) {
        count
            .computeIfAbsent(jackets.of(r.id()), k -> new TreeMap<>())
            .merge(lead.getAsInt(), 1, Integer::sum);
      } else {
        list.addCable(
            Jackets.named(jackets.of(r.id()).words(), "lead") + ", made to length for " + r.id(),
            r.cableM(),
            "m",
            OptionalLong.empty());
      }
    }
    count.forEach((kind, byLength) -> byLength.forEach((m, n) -> lead(kind, m, n)));
  }

  private void lead(Jackets.Jacket jacket, int metres, int n) {
    list.addCable(
        "%s, %d m".formatted(Jackets.named(jacket.words(), "lead with factory ends"), metres),
        n,
        "piece",
        request.prices().leadPrice(jacket.kind(), metres));
  }
}
