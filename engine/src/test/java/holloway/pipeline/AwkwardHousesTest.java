package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.HouseFile;
import holloway.housefile.HouseWriter;
import holloway.housefile.Reading;
import holloway.support.AwkwardHouseText;
import holloway.support.AwkwardHouseText.Drawn;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * However awkward the house, it is planned or its file is told to be wrong; the referee accepts the
 * plan, it hangs together, breaks no law that could be kept, can be worked in the order that is
 * written, and is the same from the house written anew or in the other units, which is tried of
 * every fourth. The profile {@code awkward} takes the seeds 1 to 300, and tries it of each.
 */
class AwkwardHousesTest {
  private static final int SEEDS = Integer.getInteger("holloway.seeds", 5);
  private static final boolean MANY = SEEDS > 5;

  @TempDir Path folder;

  @Test
  void arePlannedSoundly() throws Exception {
    List<String> faults = new ArrayList<>();
    List<String> told = new ArrayList<>();
    int routed = 0;
    int holes = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Drawn drawn = AwkwardHouseText.of(seed);
      boolean again = MANY || seed % 4 == 3;
      var looked = AwkwardHouses.look(folder, seed, drawn, again, Rough.SETTINGS);
      faults.addAll(looked.faults());
      looked.told().forEach(t -> told.add(t));
      routed += looked.routed();
      holes += looked.holes();
    }
    assertTrue(faults.isEmpty(), String.join("\n", faults));
    assertTrue(told.size() * 10 <= SEEDS, "too few are valid: " + String.join("\n", told));
    assertTrue(routed > 2 * SEEDS && holes > SEEDS, routed + " runs and " + holes + " holes");
  }

  /**
   * Planning each once more takes long; here what a plan is made of, the hollows and every way from
   * one to the next, with whatever was found.
   */
  @Test
  void haveTheSameHollowsReadFromTheirOwnWrittenForm() throws Exception {
    int looked = 0;
    for (long seed = 6; seed <= 11; seed++) {
      Drawn drawn = AwkwardHouseText.of(seed);
      Path file = Files.writeString(folder.resolve("own.yaml"), drawn.house());
      Path beside = folder.resolve("own.found.yaml");
      Files.writeString(beside, drawn.found().orElse(""));
      if (drawn.found().isEmpty()) {
        Files.delete(beside);
      }
      if (HouseFile.read(file) instanceof Reading.Sound read) {
        String text = HouseWriter.house(read.house(), read.request(), Optional.empty());
        var first = WrittenHouse.of(drawn.house(), drawn.found().orElse("")).hollows();
        var other = WrittenHouse.of(text, HouseWriter.found(read.house()).orElse("")).hollows();
        assertEquals(first.hollows(), other.hollows(), "seed " + seed);
        assertEquals(first.sites(), other.sites(), "seed " + seed);
        looked += first.sites().size();
      }
    }
    assertTrue(looked > 600, looked + " crossings");
  }

  @Test
  void haveFeaturesOfEveryKind() {
    Set<String> drawn = new TreeSet<>();
    for (long seed = 1; seed <= 200; seed++) {
      drawn.addAll(AwkwardHouseText.of(seed).features());
    }
    assertTrue(drawn.size() >= 70, drawn.size() + ": " + drawn);
  }
}
