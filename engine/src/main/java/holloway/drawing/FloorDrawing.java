package holloway.drawing;

import holloway.plan.Plan;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** The doorway: one drawing to scale for each level of a house. */
public final class FloorDrawing {
  private static final double MARGIN = 300;

  private static final String STYLE =
      """
      text{font-family:sans-serif;text-anchor:middle;fill:#000}
      .left{text-anchor:start}.title,.name{font-weight:bold}
      polygon,line,circle{stroke:#000;stroke-width:12;fill:none}
      .whole-house{fill:#e4e4e4}.room{fill:#fff}
      .wall{fill:#e4e4e4;stroke:none}
      .core{fill:#8c8c8c;stroke:#000;stroke-width:10}
      .masonry{fill:url(#masonry)}.battens{fill:#fff;stroke-width:6;stroke-dasharray:50 200}
      .core.assumed{stroke:#fff;stroke-width:16;stroke-dasharray:90 70}
      .stud{stroke:#fff;stroke-width:30}
      .gap{fill:#fff;stroke:none}.jamb{stroke-width:22}.pane{stroke-width:10}
      .leaf{stroke-width:10;stroke-dasharray:40 40}.head{stroke-width:10;stroke-dasharray:90 60}
      .chase,.hatch,.obstacle{fill:#fff}.chase.assumed,.hatch,.hidden{stroke-dasharray:80 60}
      .hidden{fill:none}.obstacle{stroke-width:20}.cross{stroke-width:6}
      .thing{fill:#fff}.cabinet,.outlet,.dot,.north,.dark{fill:#000}
      .outlet.other,.north.site{fill:#fff}circle.outlet{fill:#fff;stroke-width:25}
      .wanted{font-weight:bold}.shaft,.seen{font-style:italic}
      .link{stroke-width:22;stroke-dasharray:200 70 30 70}.link.duct{stroke-width:44;stroke-dasharray:200 70}
      .link.end{fill:#fff;stroke-width:18;stroke-dasharray:none}.link-name{font-style:italic}
      .under{stroke:#fff;stroke-width:75}.riser{fill:#000}.bore{fill:#fff;stroke-width:28}
      .run{font-style:italic;font-weight:bold}
      .chain,.whole{stroke-width:8}.tick{stroke-width:18}
      """;

  private FloorDrawing() {}

  /** Drawings by file name, {@code plan-<level>.svg}. */
  public static SortedMap<String, String> of(Placed placed, Request request, UnitSystem system) {
    return all(placed, request, Optional.empty(), system, UnaryOperator.identity());
  }

  /** The same with a plan's runs and holes drawn in, {@code runs-<level>.svg}. */
  public static SortedMap<String, String> of(
      Placed placed, Request request, Plan plan, UnitSystem system) {
    return of(placed, request, plan, system, UnaryOperator.identity());
  }

  /**
   * As {@link #of(Placed, Request, Plan, UnitSystem)}.
   *
   * @param words puts a sentence of the legend into another language
   */
  public static SortedMap<String, String> of(
      Placed placed, Request request, Plan plan, UnitSystem system, UnaryOperator<String> words) {
    return all(placed, request, Optional.of(plan), system, words);
  }

  private static SortedMap<String, String> all(
      Placed placed,
      Request request,
      Optional<Plan> plan,
      UnitSystem system,
      UnaryOperator<String> words) {
    SortedMap<String, String> out = new TreeMap<>();
    String lead = plan.isPresent() ? "runs-" : "plan-";
    for (PlacedLevel l : placed.levels()) {
      String name = lead + fileName(l.name());
      String free = name;
      for (int i = 2; out.containsKey(free + ".svg"); i++) {
        free = name + "-" + i;
      }
      out.put(free + ".svg", level(placed, request, plan, l, system, words));
    }
    return out;
  }

  /** Letters and digits of any language stay; all else becomes a dash. */
  static String fileName(String level) {
    String name = level.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    name = name.replaceAll("^-|-$", "");
    return name.isEmpty() ? "level" : name;
  }

  static String level(Placed placed, Request request, PlacedLevel level, UnitSystem system) {
    return level(placed, request, Optional.empty(), level, system, UnaryOperator.identity());
  }

  private static String level(
      Placed placed,
      Request request,
      Optional<Plan> plan,
      PlacedLevel level,
      UnitSystem system,
      UnaryOperator<String> words) {
    double type = plan.isPresent() ? Sheet.type(placed) : 1;
    Sheet sheet = new Sheet(placed, request, level, system, new Svg(), new Labels(), type, words);
    RoomNames rooms = new RoomNames(sheet);
    WallStrips walls = new WallStrips(sheet);
    Marks marks = new Marks(sheet);
    List<Tags.Tag> tags = Tags.of(placed, level.name());
    walls.outline();
    rooms.floors();
    walls.draw();
    walls.gaps(tags);
    marks.shapes();
    Shafts shafts = new Shafts(sheet);
    shafts.shapes();
    Flights flights = new Flights(sheet);
    flights.shapes();
    YardLinks links = new YardLinks(sheet);
    links.shapes();
    Porches porches = new Porches(sheet);
    porches.shapes();
    new Chains(sheet, walls.extent(), porches.around(walls.extent())).draw();
    Optional<PlannedRuns> runs = plan.map(p -> new PlannedRuns(sheet, p));
    runs.ifPresent(PlannedRuns::draw);
    rooms.names();
    marks.labels();
    walls.labels(tags);
    shafts.labels();
    flights.labels();
    links.labels();
    porches.labels();
    marks.letters();
    new Border(sheet, marks.legend).draw(sheet.svg().reach());
    runs.ifPresent(PlannedRuns::legend);
    return document(sheet, plan.isPresent());
  }

  private static String document(Sheet sheet, boolean planned) {
    Rect r = sheet.svg().reach().grown(MARGIN);
    String size = Svg.number(r.wide()) + " " + Svg.number(r.high());
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="%s %s %s">
        <title>%s</title>
        <style>
        %s</style>
        <defs><pattern id="masonry" width="70" height="70" patternUnits="userSpaceOnUse" \
        patternTransform="rotate(45)"><path d="M0 0H70V70H0Z" fill="#fff"/>\
        <path d="M0 0V70" stroke="#000" stroke-width="40"/></pattern></defs>
        <path d="M%s %sh%sv%sh-%sZ" fill="#fff"/>
        %s</svg>
        """
        .formatted(
            Svg.number(r.wide() / 50),
            Svg.number(r.high() / 50),
            Svg.number(r.x0()),
            Svg.number(r.y0()),
            size,
            Svg.escaped(sheet.placed().house().name() + ", level " + sheet.level().name()),
            planned ? STYLE + LegLooks.style() : STYLE,
            Svg.number(r.x0()),
            Svg.number(r.y0()),
            Svg.number(r.wide()),
            Svg.number(r.high()),
            Svg.number(r.wide()),
            sheet.svg().body());
  }
}
