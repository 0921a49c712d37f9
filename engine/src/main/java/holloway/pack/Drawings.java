package holloway.pack;

import holloway.drawing.CabinetFront;
import holloway.drawing.FloorDrawing;
import holloway.drawing.FloorSection;
import holloway.drawing.HoleDrawing;
import holloway.drawing.RunElevation;
import holloway.plan.Plan;
import holloway.report.Sheet;
import holloway.schedule.FloorCrossing;
import holloway.schedule.HoleView;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import holloway.schedule.Views;
import holloway.takeoff.TakeOff;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The drawings of a pack.
 *
 * @param levels runs over each level's floor plan
 * @param holes by hole id, from both sides
 * @param runs by run id, unfolded
 * @param floors where cable passes each
 * @param cabinet its front with the ports
 */
record Drawings(
    List<Drawing> levels,
    Map<String, Drawing> holes,
    Map<String, Drawing> runs,
    List<Floor> floors,
    Drawing cabinet) {
  static Drawings of(Sheet sheet, Views views, Spoken spoken) {
    Map<String, String> texts = Language.ENGLISH.texts();
    return new Drawings(
        levels(sheet, spoken).stream().map(spoken::drawing).toList(),
        holes(sheet, views.holes(), texts, spoken),
        runs(sheet, spoken),
        floors(sheet, views.floors(), spoken),
        cabinet(sheet, texts, spoken));
  }

  /** In the order in which they are shown. */
  List<Drawing> all() {
    List<Drawing> out = new ArrayList<>(levels);
    out.addAll(holes.values());
    out.addAll(runs.values());
    floors.forEach(f -> out.add(f.drawing()));
    out.add(cabinet);
    return out;
  }

  private static List<Drawing> levels(Sheet sheet, Spoken spoken) {
    List<Drawing> out = new ArrayList<>();
    FloorDrawing.of(sheet.placed(), sheet.request(), sheet.plan(), sheet.system(), spoken::text)
        .forEach(
            (name, svg) ->
                out.add(
                    new Drawing(
                        name, name.replaceAll("^runs-|\\.svg$", ""), svg, svg, svg, 182, 205)));
    return out;
  }

  private static Map<String, Drawing> holes(
      Sheet sheet, Map<String, List<HoleView>> views, Map<String, String> texts, Spoken spoken) {
    HoleDrawing.Captions captions =
        new HoleDrawing.Captions(
            spoken.text(texts.get("drawn.drill")),
            spoken.text(texts.get("drawn.far")),
            spoken.text(texts.get("drawn.nothing")),
            spoken::text);
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
  private static Map<String, Drawing> runs(Sheet sheet, Spoken spoken) {
    Map<String, String> drawn =
        RunElevation.of(
            sheet.plan(), sheet.placed(), sheet.system(), spoken::text, RunElevation.Type.PAPER);
    Map<String, String> narrow =
        RunElevation.of(
            sheet.plan(), sheet.placed(), sheet.system(), spoken::text, RunElevation.Type.NARROW);
    Map<String, Drawing> out = new LinkedHashMap<>();
    int n = 0;
    for (Plan.PlannedRun r : sheet.plan().runs()) {
      n++;
      if (drawn.containsKey(r.id())) {
        String file = "run-%02d.svg".formatted(n);
        out.put(
            r.id(),
            new Drawing(
                file, r.id(), drawn.get(r.id()), drawn.get(r.id()), narrow.get(r.id()), 174, 205));
      }
    }
    return out;
  }

  /** A place where cable passes a floor, and how it looks cut through. */
  record Floor(FloorCrossing place, Drawing drawing) {}

  private static List<Floor> floors(Sheet sheet, List<FloorCrossing> places, Spoken spoken) {
    List<Floor> out = new ArrayList<>();
    for (FloorCrossing c : places) {
      String name = "F" + (out.size() + 1);
      String svg =
          FloorSection.of(
              c, name, spoken.text(c.over()), spoken.text(c.below()), sheet.system(), spoken::text);
      String file = "floor-%02d.svg".formatted(out.size() + 1);
      out.add(new Floor(c, new Drawing(file, name, svg, svg, svg, 80, 76)));
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
    List<Integer> panels = TakeOff.panels(sheet.plan());
    String said = spoken.text(title);
    String front = CabinetFront.of(ports, panels, said, CabinetFront.Form.PAPER);
    String narrow = CabinetFront.of(ports, panels, said, CabinetFront.Form.NARROW);
    return new Drawing("cabinet.svg", title, front, front, narrow, 182, 120);
  }
}
