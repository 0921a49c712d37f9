package holloway.pack;

import holloway.report.CsvFiles;
import holloway.report.Sheet;
import holloway.schedule.HoleView;
import holloway.schedule.WorkSchedule;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The doorway: everything that goes into the folder of a work pack. */
public final class Pack {
  private static final Pattern DRAWN =
      Pattern.compile("(hole|run|runs)-[^/\\\\]+\\.svg|seen-[^/\\\\]+\\.png");

  private Pack() {}

  /**
   * @param work in the order in which it is done
   * @param views how each hole looks from its two sides, by hole id
   * @param planJson the plan as JSON, to lie beside the page
   * @param pictures of the house, where something here can draw
   * @return content by file name
   */
  public static SortedMap<String, byte[]> files(
      Sheet sheet,
      WorkSchedule work,
      Map<String, List<HoleView>> views,
      PackForm form,
      String planJson,
      Pictures pictures) {
    Spoken spoken = Spoken.of(sheet, form.language());
    Drawings drawings = Drawings.of(sheet, views, spoken);
    Seen seen = Seen.of(sheet.plan(), pictures, spoken::inPicture);
    PackFacts facts = PackFacts.of(sheet, work, spoken, drawings, seen);
    SortedMap<String, byte[]> out = new TreeMap<>();
    put(out, "index.html", PackPage.screen(facts));
    out.put("pack.pdf", PackPdf.of(PackPage.paper(facts, form.paper())));
    put(out, "plan.json", planJson);
    seen.all().forEach(p -> out.put(p.file(), p.png()));
    drawings.all().forEach(d -> put(out, d.file(), d.svg()));
    CsvFiles.of(sheet.plan(), sheet.placed(), sheet.request(), sheet.cards(), spoken::text)
        .forEach((name, text) -> put(out, name, text));
    return out;
  }

  /** True for drawings and pictures: there may be fewer of them when a pack is made again. */
  public static boolean isDrawn(String file) {
    return DRAWN.matcher(file).matches();
  }

  private static void put(SortedMap<String, byte[]> to, String name, String text) {
    to.put(name, text.getBytes(StandardCharsets.UTF_8));
  }
}
