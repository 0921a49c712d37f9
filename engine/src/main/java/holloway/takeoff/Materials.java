package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.house.Conduit;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Counts what to buy for a plan whose runs have cut lengths; no prices. */
final class Materials {
  /** Waste on cable cut from a drum (trade-facts G4). */
  private static final double WASTE = 1.05;

  /** Ports of single-gang plates (F6: five is not seen), above them double gang to twelve. */
  private static final List<Integer> PLATES = List.of(1, 2, 3, 4, 6, 12);

  private static final List<Integer> PANELS = List.of(12, 24, 48);

  private final Request request;
  private final Placed placed;
  private final Set<String> spares;
  private final List<Plan.Material> out = new ArrayList<>();

  Materials(Request request, Placed placed) {
    this.request = request;
    this.placed = placed;
    this.spares =
        request.runs().stream().filter(Run::spare).map(Run::id).collect(Collectors.toSet());
  }

  List<Plan.Material> of(Plan plan) {
    cable(plan);
    outlets(plan);
    cabinet(plan);
    holes(plan);
    links(plan);
    return List.copyOf(out);
  }

  private void cable(Plan plan) {
    Map<String, Double> drums = new TreeMap<>();
    Map<String, Integer> leads = new TreeMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      CutLength cut = CutLength.of(r);
      if (cut.lead().isPresent()) {
        leads.merge(
            "%s lead with factory ends, %02d m".formatted(r.cable(), cut.lead().getAsInt()),
            1,
            Integer::sum);
      } else {
        drums.merge(r.cable(), r.cableM(), Double::sum);
      }
    }
    drums.forEach(
        (kind, m) ->
            add(
                kind
                    + (Cable.get(kind).factoryEnds() ? ", made to length" : " cable")
                    + ", with 5 % waste",
                Math.ceil(m * WASTE - 1e-6),
                "m"));
    leads.forEach((item, n) -> add(item.replace(" 0", " "), n, "piece"));
  }

  private void outlets(Plan plan) {
    Map<String, Integer> brackets = new TreeMap<>();
    Map<String, Integer> plates = new TreeMap<>();
    Map<String, Integer> jacks = new TreeMap<>();
    for (Outlet o : request.outlets()) {
      List<Plan.PlannedRun> here = ending(plan, o.name());
      int ports = (int) here.stream().filter(r -> !spares.contains(r.id())).count();
      if (here.isEmpty() || o.spots().get(0) instanceof Spot.Outside) {
        continue;
      }
      plates(Math.max(ports, 1), brackets, plates);
      here.stream()
          .filter(r -> !spares.contains(r.id()))
          .forEach(r -> jacks.merge(jack(r.cable()), 1, Integer::sum));
    }
    brackets.forEach((item, n) -> add(item, n, "piece"));
    plates.forEach((item, n) -> add(item, n, "piece"));
    jacks.forEach((item, n) -> add(item, n, "piece"));
  }

  private static void plates(
      int ports, Map<String, Integer> brackets, Map<String, Integer> plates) {
    int left = ports;
    while (left > 0) {
      int want = Math.min(left, 12);
      int plate = PLATES.stream().filter(p -> p >= want).findFirst().orElse(12);
      String gang = plate > 6 ? "double" : "single";
      brackets.merge("low-voltage bracket for a finished wall, " + gang + " gang", 1, Integer::sum);
      plates.merge("keystone plate, " + gang + " gang, " + plate + " ports", 1, Integer::sum);
      left -= want;
    }
  }

  private static List<Plan.PlannedRun> ending(Plan plan, String end) {
    return plan.runs().stream().filter(r -> r.from().equals(end) || r.to().equals(end)).toList();
  }

  private static String jack(String kind) {
    Cable cable = Cable.get(kind);
    if (cable.fibre()) {
      return "keystone coupler for duplex fibre, " + kind;
    }
    return kind.equals("rg6") ? "keystone coupler, F type" : "keystone jack, " + kind;
  }

  private void cabinet(Plan plan) {
    int ports =
        (int)
            ending(plan, "cabinet").stream()
                .filter(r -> !Cable.get(r.cable()).fibre() && !r.cable().equals("rg6"))
                .count();
    int left = ports;
    while (left > 0) {
      int want = left;
      int panel = PANELS.stream().filter(p -> p >= want).findFirst().orElse(48);
      add("patch panel, " + panel + " ports", 1, "piece");
      left -= panel;
    }
  }

  private void holes(Plan plan) {
    int seal =
        plan.holes().stream()
            .filter(h -> Sealing.needsSeal(h, placed))
            .mapToInt(Plan.PlannedHole::bores)
            .sum();
    if (seal > 0) {
      add("fire-block sealant, for this many holes", seal, "hole");
    }
    int nail =
        plan.holes().stream()
            .filter(h -> Sealing.needsNailPlates(h, placed))
            .mapToInt(h -> 2 * h.bores())
            .sum();
    if (nail > 0) {
      add("steel nail plate, 1.6 mm", nail, "piece");
    }
  }

  /** What lies in the ground or hangs beside the cables of a link between buildings. */
  private void links(Plan plan) {
    for (Conduit c : placed.house().conduits()) {
      List<Plan.PlannedRun> here =
          plan.runs().stream()
              .filter(r -> r.steps().stream().anyMatch(s -> s.id().equals("conduit/" + c.name())))
              .toList();
      if (c.outdoor().isEmpty() || here.isEmpty()) {
        continue;
      }
      double m = Math.ceil(c.length().value().toMm() / 1000 - 1e-6);
      if (c.kind() == Conduit.Kind.SPAN) {
        add("span wire with eyes and strainers", m, "m");
      } else if (c.dug()) {
        add("warning tape over a trench", m, "m");
        if (c.kind() == Conduit.Kind.TUBE) {
          add("duct, %.0f mm inside".formatted(c.insideDiameter().toMm()), m, "m");
        }
      }
      long copper = here.stream().filter(r -> !Cable.get(r.cable()).fibre()).count();
      if (copper > 0) {
        add(
            "surge protector for data cable, one at each end of a copper link",
            2 * copper,
            "piece");
      }
    }
  }

  private void add(String item, double quantity, String unit) {
    out.add(new Plan.Material(item, quantity, unit, Optional.empty()));
  }
}
