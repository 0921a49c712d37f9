package holloway.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.house.WallSpot;
import holloway.plan.JsonText;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.units.UnitSystem;
import java.util.List;

/** Places where the cabinet could stand, side by side, best first. */
public final class CabinetText {
  /** One place; {@code stated}: the one that plans use. */
  public record Place(WallSpot at, boolean stated, Plan plan, boolean warm, boolean awkward) {
    String words(UnitWords units) {
      return "%s, %s wall, %s from its %s end, %s over the floor"
          .formatted(
              at.face().room(),
              at.face().side().word(),
              units.tape(at.along().distance().value().nm()),
              at.along().from().word(),
              units.tape(at.height().value().nm()));
    }

    String heat() {
      return warm ? "follows the weather" : "as the house";
    }

    String access() {
      return awkward ? "kneeling or from a step" : "standing";
    }
  }

  private CabinetText() {}

  public static String of(List<Place> places, UnitSystem system, Ink ink) {
    UnitWords units = new UnitWords(system);
    Page page = new Page(ink);
    page.title(places.get(0).plan().house() + ": where the cabinet could stand");
    int rank = 0;
    for (Place p : places) {
      Plan.Totals t = p.plan().totals();
      rank++;
      page.put("  " + rank + "  ", p.words(units) + (p.stated() ? " (where it is stated)" : ""));
      page.put(
          "     ",
          "%s (proven within %s), %s of route, %s, heat: %s, reached %s%s"
              .formatted(
                  UnitWords.minutes(t.minutes()),
                  HeadSection.percent(t.gap()),
                  units.cable(t.routeM()),
                  UnitWords.count(t.holes(), "hole"),
                  p.heat(),
                  p.access(),
                  p.plan().unrouted().isEmpty()
                      ? ""
                      : ", "
                          + UnitWords.count(p.plan().unrouted().size(), "run")
                          + " without a route"));
    }
    page.put(
        "  ",
        "In order of runs without a route, minutes, metres, holes, heat, access. Heat and access"
            + " are common practice, no published source: gear lasts where it is cool and dry. Power"
            + " and the provider's line have to reach the place too; that is not in the minutes.");
    return page.text();
  }

  public static String json(List<Place> places) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    UnitWords units = new UnitWords(UnitSystem.METRIC);
    for (Place p : places) {
      ObjectNode n = list.addObject().put("in", p.at().face().room());
      n.put("wall", p.at().face().side().word()).put("where", p.words(units));
      n.put("stated", p.stated()).put("heat", p.heat()).put("access", p.access());
      n.set("totals", PlanJson.toTree(p.plan()).get("totals"));
      n.set(
          "unrouted",
          Documents.words(p.plan().unrouted().stream().map(Plan.Unrouted::id).toList()));
    }
    return JsonText.of(list);
  }
}
