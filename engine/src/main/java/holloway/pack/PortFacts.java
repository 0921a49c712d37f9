package holloway.pack;

import holloway.catalog.PinOut;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The cable schedule, and the table of pins. */
final class PortFacts {
  private final Sheet sheet;
  private final SheetWords words;

  PortFacts(Sheet sheet, SheetWords words) {
    this.sheet = sheet;
    this.words = words;
  }

  List<Map<String, Object>> rows() {
    List<Map<String, Object>> out = new ArrayList<>();
    for (Label l : Labels.of(sheet.plan(), sheet.request(), sheet.placed())) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("id", "label/" + l.run());
      row.put("label", l.id());
      row.put("run", l.run());
      row.put("cable", l.cable());
      row.put("from", l.from());
      row.put("to", l.to());
      row.put("room", l.room());
      row.put("spare", l.spare());
      row.put("cut", words.cut(l.cutM()));
      out.add(row);
    }
    return out;
  }

  /** Both tables side by side, and which one is used. */
  Map<String, Object> pins(Map<String, String> texts) {
    PinOut use = sheet.request().shop().pinOut();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int p = 0; p < 8; p++) {
      rows.add(Map.of("pin", p + 1, "a", PinOut.A.pins().get(p), "b", PinOut.B.pins().get(p)));
    }
    String say = texts.get(use == PinOut.A ? "pins.use-a" : "pins.use-b");
    return Map.of("rows", rows, "use", say, "is-a", use == PinOut.A, "is-b", use == PinOut.B);
  }
}
