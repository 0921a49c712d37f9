package holloway.report;

/** The text of a plan in the order in which a person on a ladder wants it. */
public final class PlanText {
  private PlanText() {}

  public static String of(Sheet sheet) {
    Page page = new Page(sheet.ink());
    new BrokenLawSection(sheet.plan(), page).write();
    new HeadSection(sheet, page).write();
    new CheckFirstSection(sheet, page).write();
    new RunsSection(sheet, page).write();
    new OutletsSection(sheet, page).write();
    new HolesSection(sheet, page).write();
    new HoursSection(sheet, page).write();
    FindingsSection.write(sheet.plan().findings(), sheet.words()::sentence, page);
    new MaterialsSection(sheet, page).write();
    new BoxesSection(sheet, page).write();
    new LabelsSection(sheet, page).write();
    new CautionsSection(sheet, page).write();
    new UnroutedSection(sheet, page).write();
    return page.text();
  }
}
