package holloway.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.look.Pane;
import holloway.units.UnitSystem;
import holloway.view.Pin;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joml.Vector3f;

/** The state of the desk as one line of JSON, for whoever plays the window from outside. */
final class Tell {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Tell() {}

  /** How often frames and the house in them were drawn, and with how many samples a pixel. */
  record Drawn(long frames, long houses, int samples) {}

  static String of(Table t, Pane pane, Drawn drawn) {
    Map<String, Object> out = new LinkedHashMap<>();
    UnitSystem units = t.work.house().units();
    out.put("frame", drawn.frames);
    out.put("houses", drawn.houses);
    out.put("samples", drawn.samples);
    out.put("peel", t.shown.peel().word());
    out.put("hidden", List.copyOf(t.shown.hiddenLevels()));
    out.put("slice", t.shown.cut().map(c -> c.way().word() + " " + c.at()).orElse(""));
    out.put("chosen", t.shown.choice().kind());
    out.put("name", t.shown.choice().name());
    out.put("step", t.shown.step().orElse(-1));
    out.put("page", t.shown.page().name().toLowerCase(java.util.Locale.ROOT));
    out.put("light", t.shown.light());
    out.put("both", t.both);
    out.put("type", t.shown.type());
    out.put("fat", t.shown.fat());
    out.put("help", t.shown.help());
    out.put("planning", t.work.isPlanning());
    out.put("sketch", t.work.isSketch());
    out.put("sketches", t.work.sketches());
    out.put("moved", List.copyOf(t.work.moved()));
    out.put("labels", t.plan().holes().stream().map(h -> h.label()).toList());
    out.put("changes", t.work.changes().done().stream().map(c -> c.says(units)).toList());
    out.put("undone", t.work.changes().undone().size());
    out.put("bans", t.work.wanted().wishes().bans());
    out.put("minutes", t.plan().totals().minutes());
    out.put("holes", t.plan().holes().stream().map(h -> h.id()).toList());
    out.put("house", t.model().name());
    out.put("trouble", t.work.trouble());
    out.put("message", t.message);
    out.put("pins", pins(t, pane));
    try {
      return JSON.writeValueAsString(out);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("plain values make JSON", e);
    }
  }

  /** Where each pin is in the window, by the hole's id. */
  private static Map<String, List<Integer>> pins(Table t, Pane pane) {
    Map<String, List<Integer>> out = new LinkedHashMap<>();
    for (Pin p : t.model().pins()) {
      Vector3f at = pane.pixel(p.middle());
      out.put(p.id(), List.of(Math.round(at.x), Math.round(at.y)));
    }
    return out;
  }
}
