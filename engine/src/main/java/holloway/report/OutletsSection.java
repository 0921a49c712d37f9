package holloway.report;

/** Every outlet and the cabinet: the spot that was chosen, taped from both ends of its wall. */
final class OutletsSection {
  private final Sheet sheet;
  private final Page page;

  OutletsSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    page.title("OUTLETS");
    OutletPlaces.of(sheet.plan(), sheet.placed(), sheet.request(), sheet.units())
        .forEach((name, where) -> page.put("  ", 6, name + ": " + where));
  }
}
