package holloway.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.catalog.PinOut;
import holloway.check.rules.PullTension;
import holloway.plan.JsonText;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import holloway.survey.Placed;
import holloway.takeoff.BoxPlan;
import holloway.takeoff.BoxPlanner;
import holloway.takeoff.TaskMinutes;
import java.util.List;

/** The keys {@code boxes}, {@code pulls}, {@code labels}, {@code pin-out} and {@code tasks}. */
final class TakeOffDocument {
  private TakeOffDocument() {}

  static void into(ObjectNode root, Plan plan, Placed placed, Request request) {
    BoxPlan boxes = BoxPlanner.of(plan, request.prices(), placed.house().ownRules());
    ArrayNode orders = root.putArray("boxes");
    boxes.orders().forEach(o -> order(orders.addObject(), o));
    ObjectNode pulls = root.putObject("pulls");
    pulls.put("as-cut", boxes.pullsAsCut()).put("fewest", boxes.fewestPulls());
    ArrayNode atOnce = pulls.putArray("boxes-at-once");
    boxes
        .pulls()
        .forEach(
            a ->
                atOnce
                    .addObject()
                    .put("boxes", a.boxes())
                    .put("pulls", a.pulls())
                    .put("bound", a.bound()));
    ArrayNode tension = pulls.putArray("tension");
    for (PullTension.Pull p : PullTension.list(plan, placed.house().conduits())) {
      ObjectNode n = tension.addObject().put("run", p.run()).put("fish", p.fish());
      n.set("newtons", JsonText.real(p.newtons(), 1));
      n.set("bears", JsonText.real(p.most(), 1));
    }
    ArrayNode labels = root.putArray("labels");
    Labels.of(plan, request, placed).forEach(l -> label(labels.addObject(), l));
    PinOut use = request.shop().pinOut();
    ObjectNode pins = root.putObject("pin-out").put("scheme", use.name());
    pins.set("pins", Documents.words(use.pins()));
    ArrayNode tasks = root.putArray("tasks");
    TaskMinutes.of(plan)
        .forEach(
            t ->
                tasks
                    .addObject()
                    .put("task", t.task())
                    .put("count", t.count())
                    .set("minutes", JsonText.real(t.minutes(), 4)));
  }

  private static void order(ObjectNode n, BoxPlan.Order o) {
    n.put("cable", o.cable()).put("least", o.byPrice() ? "price" : "length");
    n.set("amount", JsonText.real(o.byPrice() ? o.amount() / 100.0 : o.amount(), 2));
    n.set("bound", JsonText.real(o.byPrice() ? o.bound() / 100.0 : o.bound(), 2));
    ArrayNode reels = n.putArray("reels");
    for (BoxPlan.Reel r : o.reels()) {
      ObjectNode reel = reels.addObject().put("name", r.name()).put("m", r.metres());
      cuts(reel.putArray("cuts"), r.cuts());
      reel.set("left-m", JsonText.real(r.leftM(), 3));
      reel.put("by-the-metre", r.cut());
    }
    cuts(n.putArray("too-long"), o.tooLong());
  }

  private static void cuts(ArrayNode list, List<BoxPlan.Cut> cuts) {
    cuts.forEach(c -> list.addObject().put("run", c.run()).set("m", JsonText.real(c.metres(), 3)));
  }

  private static void label(ObjectNode n, Label l) {
    n.put("label", l.id()).put("run", l.run()).put("cable", l.cable());
    n.put("from", l.from()).put("to", l.to()).put("room", l.room());
    n.put("port", l.port()).put("spare", l.spare());
    n.set("cut-m", JsonText.real(l.cutM(), 3));
  }
}
