package holloway.schedule;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Gives every cable its label and its port. Ports run by place: storey, room, outlet, the cables in
 * use before the spares. Copper goes to panels A, B, ...; fibre, coax and links between outlets go
 * to none and get the letters after them, so that no two cables share a label.
 */
public final class Labels {
  /** Ports of one panel at most. */
  private static final int PANEL = 48;

  private static final String CABINET = "cabinet";

  private final Plan plan;
  private final Request request;
  private final Placed placed;
  private final Map<String, Integer> nextPort = new TreeMap<>();
  private final Set<String> spares;
  private char letter = 'A';

  private Labels(Plan plan, Request request, Placed placed) {
    this.plan = plan;
    this.request = request;
    this.placed = placed;
    this.spares =
        request.runs().stream().filter(Run::spare).map(Run::id).collect(Collectors.toSet());
  }

  /** In the order of the panels' ports. */
  public static List<Label> of(Plan plan, Request request, Placed placed) {
    return new Labels(plan, request, placed).list();
  }

  private List<Label> list() {
    List<Plan.PlannedRun> sorted =
        plan.runs().stream()
            .sorted(
                Comparator.comparing(this::storey)
                    .thenComparing(r -> room(far(r)))
                    .thenComparing(r -> order(far(r)))
                    .thenComparing(r -> spares.contains(r.id()))
                    .thenComparing(Plan.PlannedRun::id))
            .toList();
    List<Label> out = new ArrayList<>();
    for (Sort sort : Sort.values()) {
      List<Plan.PlannedRun> here = sorted.stream().filter(r -> sort(r) == sort).toList();
      for (int i = 0; i < here.size(); i++) {
        out.add(label(here.get(i), sort, (char) (letter + i / PANEL), i % PANEL + 1));
      }
      letter += (here.size() + PANEL - 1) / PANEL;
    }
    return List.copyOf(out);
  }

  private enum Sort {
    PANEL,
    FIBRE,
    COAX,
    LINK
  }

  private static Sort sort(Plan.PlannedRun r) {
    if (!r.from().equals(CABINET) && !r.to().equals(CABINET)) {
      return Sort.LINK;
    }
    if (Cable.get(r.cable()).fibre()) {
      return Sort.FIBRE;
    }
    return r.cable().equals("rg6") ? Sort.COAX : Sort.PANEL;
  }

  private Label label(Plan.PlannedRun r, Sort sort, char panel, int port) {
    String id = "%s-%s%02d".formatted(space(), panel, port);
    return new Label(
        id,
        r.id(),
        r.cable(),
        end(r.from(), r, sort, panel, port),
        end(r.to(), r, sort, panel, port),
        room(far(r)),
        sort == Sort.PANEL ? port : 0,
        spares.contains(r.id()),
        r.cableM());
  }

  /** Floor from the lowest, 1; the one telecom space is A (A8-2). */
  private String space() {
    String room = request.cabinet().at().face().room();
    return (floor(level(room)) + 1) + "A";
  }

  private String end(String name, Plan.PlannedRun r, Sort sort, char panel, int port) {
    if (name.equals(CABINET)) {
      return sort == Sort.PANEL ? "panel %s port %d".formatted(panel, port) : "gear in the cabinet";
    }
    Outlet outlet = request.getOutlet(name);
    if (outlet.spots().get(0) instanceof Spot.Outside) {
      return name;
    }
    int number = nextPort.merge(name, 1, Integer::sum);
    return name
        + (spares.contains(r.id()) ? " port %d, blank, coiled" : " port %d").formatted(number);
  }

  private static String far(Plan.PlannedRun r) {
    return r.to().equals(CABINET) ? r.from() : r.to();
  }

  private int order(String outlet) {
    return request.outlets().stream().map(Outlet::name).toList().indexOf(outlet);
  }

  private String room(String outlet) {
    Spot spot = request.getOutlet(outlet).spots().get(0);
    if (spot instanceof Spot.OnCeiling c) {
      return c.at().room();
    }
    if (spot instanceof Spot.Outside o) {
      return "outside " + o.at().face().room();
    }
    return ((Spot.OnWall) spot).at().face().room();
  }

  private int storey(Plan.PlannedRun r) {
    return floor(level(room(far(r)).replaceFirst("^outside ", "")));
  }

  private String level(String room) {
    return placed.rooms().stream()
        .filter(r -> r.name().equals(room))
        .map(r -> r.room().level())
        .findFirst()
        .orElse("");
  }

  /** How many levels lie lower, by the lowest floor of their rooms. */
  private int floor(String level) {
    Map<String, Long> lowest = new TreeMap<>();
    for (PlacedRoom r : placed.rooms()) {
      lowest.merge(r.room().level(), r.floorZ(), Math::min);
    }
    long mine = lowest.getOrDefault(level, 0L);
    return (int) lowest.values().stream().filter(z -> z < mine).distinct().count();
  }
}
