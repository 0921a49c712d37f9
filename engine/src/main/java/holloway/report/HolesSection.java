package holloway.report;

import holloway.plan.Plan;
import holloway.schedule.HoleCard;
import java.util.List;
import java.util.Optional;

/** Every hole: what it is, where, how it is measured out and made. */
final class HolesSection {
  private final Sheet sheet;
  private final PlaceWords places;
  private final PlainWords words;
  private final Page page;

  HolesSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.places = new PlaceWords(sheet.placed(), sheet.units());
    this.words = sheet.words();
    this.page = page;
  }

  void write() {
    page.title("HOLES");
    if (sheet.plan().holes().isEmpty()) {
      page.put("  ", "None to make.");
    }
    sheet.plan().holes().forEach(this::hole);
  }

  private void hole(Plan.PlannedHole h) {
    String two = h.bores() > 1 ? ", " + h.bores() + " side by side" : "";
    page.put(
        "  %-4s ".formatted(h.label()),
        "%s, %s%s%s"
            .formatted(
                h.kind(),
                sheet.units().bit(h.diameterMm()),
                two,
                h.assumed() ? "; " + HouseWords.findFirst(h.kind()) : ""));
    row("where", places.of(h.at()));
    row("stand", words.stand(h));
    // The card says the same in the reader's units and in the order in which the bit meets it.
    if (sheet.findCard(h.id()).map(HoleCard::breakthrough).orElse("").isEmpty()) {
      row("through", through(h));
    }
    tape(sheet.findCard(h.id()));
    row("make it", words.method(h.method()) + ", " + UnitWords.minutes(h.minutes()));
    List<String> others = words.others(h);
    if (!others.isEmpty()) {
      row("or", String.join("; ", others));
    }
    row("carries", String.join(", ", h.runs()));
    row("id", h.id());
  }

  private String through(Plan.PlannedHole h) {
    String depth = sheet.units().tape(Math.round(h.depthMm() * 1e6));
    return h.through().isEmpty()
        ? depth + " of wood or board"
        : String.join(", then ", h.through()) + "; " + depth + " in all";
  }

  private void tape(Optional<HoleCard> card) {
    if (card.isEmpty()) {
      row("tape", "no tape dimensions for this hole; drill a pilot and leave a wire in it");
      return;
    }
    side("tape here", card.get().sideA());
    side("far side", card.get().sideB());
    optional("pilot", card.get().pilot());
    optional("bit", tool(card.get()));
    optional("angle", card.get().angle());
    optional("comes out", card.get().breakthrough());
    optional("check", card.get().checkFirst());
  }

  private static String tool(HoleCard card) {
    return card.extension().isEmpty() ? card.bit() : card.bit() + "; " + card.extension();
  }

  private void optional(String name, String text) {
    if (!text.isEmpty()) {
      row(name, text);
    }
  }

  private void side(String name, List<String> lines) {
    if (!lines.isEmpty()) {
      row(name, String.join("; ", lines));
    }
  }

  private void row(String name, String text) {
    page.put("       %-11s".formatted(name), text);
  }
}
