package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import holloway.report.Documents;
import holloway.report.Ink;
import holloway.report.Sheet;
import holloway.support.LargeHouse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pack of 60 runs, in the profile {@code large}: what it weighs, and its time against a plan's.
 */
@EnabledIfSystemProperty(named = "holloway.large", matches = "yes")
class LargePackTest {
  private static final PlanSettings QUICK =
      new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());

  @TempDir Path folder;

  @Test
  void aPackOfSixtyRunsTakesAtMostFiveTimesItsPlan() throws Exception {
    Path house = folder.resolve("large.yaml");
    Files.writeString(house, LargeHouse.text(LargeHouse.Size.LARGE, 1));
    long start = System.nanoTime();
    AtomicLong planned = new AtomicLong();
    Progress progress =
        what -> {
          if (what.equals("ordering the work")) {
            planned.set(System.nanoTime());
          }
        };
    Answers.Packed packed = new Pipeline(progress).pack(house, QUICK);
    long ordered = System.nanoTime();
    SortedMap<String, byte[]> files = files(packed);
    long written = System.nanoTime();
    assertEquals(60, packed.planned().plan().runs().size());
    double pack = (written - start) / 1e9;
    double plan = (planned.get() - start) / 1e9;
    System.err.printf(
        "60 runs: plan %.1f s; pack %.1f s, of these %.1f s pages and drawings: %.2f times%n",
        plan, pack, (written - ordered) / 1e9, pack / plan);
    assertTrue(planned.get() > 0, "when the plan was there");
    files.forEach((name, bytes) -> weigh(name, bytes.length));
    assertTrue(pack <= 5 * plan, pack + " s against " + plan + " s");
  }

  private static void weigh(String name, int bytes) {
    if (name.equals("index.html") || name.equals("pack.pdf")) {
      System.err.println(name + ": " + bytes + " bytes");
    }
    assertTrue(bytes < 5_000_000, name + " has " + bytes + " bytes");
  }

  private static SortedMap<String, byte[]> files(Answers.Packed packed) {
    Answers.Planned a = packed.planned();
    Sheet sheet =
        new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
    String json = Documents.plan(a.plan(), a.cards(), a.placed(), a.request(), a.certificate());
    PackForm form = new PackForm(Language.ENGLISH, PaperSize.LETTER);
    return Pack.files(
        sheet, packed.work(), packed.views(), form, json, Pictures.none("not asked for"));
  }
}
