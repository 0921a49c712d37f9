package holloway.report;

import holloway.catalog.PinOut;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import java.util.List;

/** The cable schedule: label, cable, where each end goes; and the pins. */
final class LabelsSection {
  private final Sheet sheet;
  private final Page page;

  LabelsSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    List<Label> labels = Labels.of(sheet.plan(), sheet.request(), sheet.placed());
    if (labels.isEmpty()) {
      return;
    }
    page.title("LABELS AND PORTS");
    String room = "";
    for (Label l : labels) {
      if (!l.room().equals(room)) {
        room = l.room();
        page.line("  " + room);
      }
      page.put(
          "    " + l.id() + "  ",
          "%s: %s to %s%s".formatted(l.cable(), l.from(), l.to(), l.spare() ? " (spare)" : ""));
    }
    page.put(
        "  ",
        "Print the label twice, in capitals, and put it within 300 mm (12 in) of each end before"
            + " you pull. Floor, space, panel, port: the simple class of TIA-606-A; the exact form"
            + " is from memory.");
    if (labels.stream().anyMatch(l -> l.port() > 0)) {
      pins();
    }
  }

  private void pins() {
    PinOut use = sheet.request().shop().pinOut();
    page.line(
        use == PinOut.A
            ? "  pin  T568A, use this  T568B"
            : "  pin  T568A             T568B, use this");
    for (int p = 0; p < 8; p++) {
      page.line(
          "   %d   %-16s  %s".formatted(p + 1, PinOut.A.pins().get(p), PinOut.B.pins().get(p)));
    }
    page.put(
        "  ",
        use == PinOut.A
            ? "Homes use A (TIA-570-A). Where jacks already there are B, make all of them B ('pin-out:"
                + " b' in the house file): both ends of a cable have to be the same."
            : "You chose B; homes use A (TIA-570-A). Both work: both ends of a cable have to be the"
                + " same.");
  }
}
