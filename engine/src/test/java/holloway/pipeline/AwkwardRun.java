package holloway.pipeline;

import holloway.support.AwkwardHouseText;
import holloway.support.AwkwardHouseText.Drawn;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plans the awkward houses of the seeds FIRST to LAST and prints what is wrong with each; with a
 * third word it only reads and places them.
 */
public final class AwkwardRun {
  private AwkwardRun() {}

  public static void main(String[] args) throws Exception {
    Map<String, Integer> features = new TreeMap<>();
    int told = 0;
    int sound = 0;
    int routed = 0;
    Path folder = Files.createTempDirectory("awkward");
    for (long seed = Long.parseLong(args[0]); seed <= Long.parseLong(args[1]); seed++) {
      Drawn drawn = AwkwardHouseText.of(seed);
      List<String> faults = new ArrayList<>();
      AwkwardHouses.Looked looked =
          AwkwardHouses.look(folder, seed, drawn, args.length > 2, Rough.SETTINGS);
      faults.addAll(looked.faults());
      drawn.features().forEach(f -> features.merge(f, 1, Integer::sum));
      if (looked.told().isEmpty()) {
        sound++;
        routed += looked.routed();
      } else {
        told++;
        System.out.println("seed " + seed + " told: " + looked.told());
      }
      faults.forEach(f -> System.out.println("FAULT " + f));
    }
    System.out.printf("%d sound, %d told, %d runs routed%n%s%n", sound, told, routed, features);
  }
}
