package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.support.AwkwardHouseText;
import holloway.support.AwkwardHouseText.Drawn;
import holloway.support.Rough;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * However awkward the house, it is planned or its file is told to be wrong; the referee accepts the
 * plan, it hangs together, breaks no law that could be kept, can be worked in the order that is
 * written, and is the same from the house written anew or in the other units. {@code
 * -Dholloway.seeds=N} takes the seeds 1 to N.
 */
class AwkwardHousesTest {
  private static final int SEEDS = Integer.getInteger("holloway.seeds", 5);

  @TempDir Path folder;

  @Test
  void arePlannedSoundly() throws Exception {
    List<String> faults = new ArrayList<>();
    List<String> told = new ArrayList<>();
    int routed = 0;
    int holes = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Drawn drawn = AwkwardHouseText.of(seed);
      var looked = AwkwardHouses.look(folder, seed, drawn, seed % 4 == 3, Rough.SETTINGS);
      faults.addAll(looked.faults());
      looked.told().forEach(t -> told.add(t));
      routed += looked.routed();
      holes += looked.holes();
    }
    assertTrue(faults.isEmpty(), String.join("\n", faults));
    assertTrue(told.size() * 10 <= SEEDS, "too few are valid: " + String.join("\n", told));
    assertTrue(routed > 2 * SEEDS && holes > SEEDS, routed + " runs and " + holes + " holes");
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
