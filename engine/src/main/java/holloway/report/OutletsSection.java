package holloway.report;

import holloway.schedule.OutletPlace;
import holloway.schedule.OutletPlaces;
import java.util.List;

/** Where the cabinet and the cut-out of every outlet go, taped from both ends of the wall. */
final class OutletsSection {
  private final Sheet sheet;
  private final Page page;

  OutletsSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    page.title("OUTLETS");
    List<OutletPlace> places = OutletPlaces.of(sheet.plan(), sheet.request(), sheet.placed());
    OutletWords words =
        new OutletWords(sheet.plan(), sheet.request(), sheet.placed(), sheet.units());
    places.forEach(p -> page.put("  ", 6, p.name() + ": " + words.text(p)));
    page.put(
        "  ",
        "Distances are to the middle of the cut-out, along the face of the wall that you see in the"
            + " room.");
  }
}
