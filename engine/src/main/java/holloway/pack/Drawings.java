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
  static Drawings of(Sheet sheet, Map<String, List<HoleView>> views, Map<String, String> texts) {
    return new Drawings(
        levels(sheet), holes(sheet, views, texts), runs(sheet), cabinet(sheet, texts));
  }

  /** In the order in which they are shown. */
  List<Drawing> all() {
    List<Drawing> out = new ArrayList<>(levels);
    out.addAll(holes.values());
    out.addAll(runs.values());
    out.add(cabinet);
    return out;
  }

  private static List<Drawing> levels(Sheet sheet) {
    List<Drawing> out = new ArrayList<>();
    FloorDrawing.of(sheet.placed(), sheet.request(), sheet.plan(), sheet.system())
        .forEach(
            (name, svg) ->
                out.add(
                    new Drawing(
                        name, name.replaceAll("^runs-|\\.svg$", ""), svg, svg, svg, 182, 205)));
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
        String svg = hole(h, seen, sheet, captions, HoleDrawing.Form.SHEET);
        String card = hole(h, seen, sheet, captions, HoleDrawing.Form.CARD);
        String narrow = hole(h, seen, sheet, captions, HoleDrawing.Form.NARROW);
        out.put(
            h.id(),
            new Drawing("hole-" + h.label() + ".svg", h.label(), svg, card, narrow, 174, 118));
      }
    }
    return out;
  }

  private static String hole(
      Plan.PlannedHole h,
      List<HoleView> seen,
      Sheet sheet,
      HoleDrawing.Captions captions,
      HoleDrawing.Form form) {
    return HoleDrawing.of(h.label(), seen, sheet.system(), captions, form);
  }

  /** Files are numbered in the order of the plan: names of runs may differ by a blank only. */
  private static Map<String, Drawing> runs(Sheet sheet) {
    Map<String, String> drawn =
        RunElevation.of(
            sheet.plan(),
            sheet.placed(),
            sheet.system(),
            UnaryOperator.identity(),
            RunElevation.Type.PAPER);
    Map<String, String> narrow =
        RunElevation.of(
            sheet.plan(),
            sheet.placed(),
            sheet.system(),
            UnaryOperator.identity(),
            RunElevation.Type.NARROW);
    Map<String, Drawing> out = new LinkedHashMap<>();
    int n = 0;
    for (Plan.PlannedRun r : sheet.plan().runs()) {
      n++;
      if (drawn.containsKey(r.id())) {
        String file = "run-%02d.svg".formatted(n);
        out.put(
            r.id(),
            new Drawing(
                file, r.id(), drawn.get(r.id()), drawn.get(r.id()), narrow.get(r.id()), 174, 80));
      }
    }
    return out;
  }

  private static Drawing cabinet(Sheet sheet, Map<String, String> texts) {
    List<CabinetFront.Port> ports = new ArrayList<>();
    for (Label l : Labels.of(sheet.plan(), sheet.request(), sheet.placed())) {
      // The panel's letter stands before the port: 1A-A03.
      String panel = l.port() > 0 ? l.id().substring(l.id().indexOf('-') + 1).substring(0, 1) : "";
      ports.add(new CabinetFront.Port(panel, l.port(), l.id(), l.to(), l.spare()));
    }
    String title = texts.get("drawn.front");
    String front = CabinetFront.of(ports, title);
    return new Drawing("cabinet.svg", title, front, front, front, 182, 120);
  }
}
