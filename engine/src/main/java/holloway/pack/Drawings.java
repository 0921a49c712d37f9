package holloway.pack;

import holloway.drawing.CabinetFront;
import holloway.drawing.FloorDrawing;
import holloway.drawing.HoleDrawing;
import holloway.drawing.RunElevation;
import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.schedule.HoleView;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * The drawings of a pack.
 *
 * @param levels runs over each level's floor plan
 * @param holes by hole id, from both sides
 * @param runs by run id, unfolded
 * @param cabinet its front with the ports
 */
record Drawings(
    List<Drawing> levels, Map<String, Drawing> holes, Map<String, Drawing> runs, Drawing cabinet) {
  static Drawings of(Sheet sheet, Map<String, List<HoleView>> views, Spoken spoken) {
    Map<String, String> texts = Language.ENGLISH.texts();
    return new Drawings(
        levels(sheet, spoken).stream().map(spoken::drawing).toList(),
        each(holes(sheet, views, texts), spoken),
        each(runs(sheet), spoken),
        cabinet(sheet, texts, spoken));
  }

  private static Map<String, Drawing> each(Map<String, Drawing> drawings, Spoken spoken) {
    Map<String, Drawing> out = new LinkedHashMap<>();
    drawings.forEach((id, d) -> out.put(id, spoken.drawing(d)));
    return out;
  }

  /** In the order in which they are shown. */
  List<Drawing> all() {
    List<Drawing> out = new ArrayList<>(levels);
    out.addAll(holes.values());
    out.addAll(runs.values());
    out.add(cabinet);
    return out;
  }

  private static List<Drawing> levels(Sheet sheet, Spoken spoken) {
    List<Drawing> out = new ArrayList<>();
    FloorDrawing.of(sheet.placed(), sheet.request(), sheet.plan(), sheet.system(), spoken::text)
        .forEach(
            (name, svg) -> out.add(new Drawing(name, name.replaceAll("^runs-|\\.svg$", ""), svg)));
    return out;
  }

  private static Map<String, Drawing> holes(
      Sheet sheet, Map<String, List<HoleView>> views, Map<String, String> texts) {
    HoleDrawing.Captions captions =
        new HoleDrawing.Captions(
            texts.get("drawn.drill"), texts.get("drawn.far"), texts.get("drawn.nothing"));
    Map<String, Drawing> out = new LinkedHashMap<>();
    for (Plan.PlannedHole h : sheet.plan().holes()) {
      List<HoleView> seen = views.getOrDefault(h.id(), List.of());
      if (!seen.isEmpty()) {
        String svg = HoleDrawing.of(h.label(), seen, sheet.system(), captions);
        out.put(h.id(), new Drawing("hole-" + h.label() + ".svg", h.label(), svg));
      }
    }
    return out;
  }

  /** Files are numbered in the order of the plan: names of runs may differ by a blank only. */
  private static Map<String, Drawing> runs(Sheet sheet) {
    Map<String, String> drawn =
        RunElevation.of(sheet.plan(), sheet.placed(), sheet.system(), UnaryOperator.identity());
    Map<String, Drawing> out = new LinkedHashMap<>();
    int n = 0;
    for (Plan.PlannedRun r : sheet.plan().runs()) {
      n++;
      if (drawn.containsKey(r.id())) {
        out.put(r.id(), new Drawing("run-%02d.svg".formatted(n), r.id(), drawn.get(r.id())));
      }
    }
    return out;
  }

  private static Drawing cabinet(Sheet sheet, Map<String, String> texts, Spoken spoken) {
    List<CabinetFront.Port> ports = new ArrayList<>();
    for (Label l : Labels.of(sheet.plan(), sheet.request(), sheet.placed())) {
      // The panel's letter stands before the port: 1A-A03.
      String panel = l.port() > 0 ? l.id().substring(l.id().indexOf('-') + 1).substring(0, 1) : "";
      ports.add(new CabinetFront.Port(panel, l.port(), l.id(), spoken.text(l.to()), l.spare()));
    }
    // Words are folded into the ports, so that they are put into the language before.
    String title = texts.get("drawn.front");
    return new Drawing("cabinet.svg", title, CabinetFront.of(ports, spoken.text(title)));
  }
}
