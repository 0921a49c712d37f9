package holloway.report;

/** What can hurt a person or the house here, and who decides. */
final class CautionsSection {
  private final Sheet sheet;
  private final Page page;

  CautionsSection(Sheet sheet, Page page) {
    this.sheet = sheet;
    this.page = page;
  }

  void write() {
    page.title("CAUTIONS FOR THIS HOUSE");
    for (Caution c : Cautions.of(sheet.plan(), sheet.placed())) {
      page.put("  - ", c.text() + " [" + c.source() + "]");
    }
    page.put(
        "  ",
        "Your local code and the people licensed under it decide; this plan does not replace"
            + " them. Stop where you are not sure.");
  }
}
