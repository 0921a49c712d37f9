package holloway.pipeline;

import holloway.housefile.HouseFile;
import holloway.housefile.HouseWriter;
import holloway.housefile.Reading;
import holloway.support.AwkwardHouseText;
import holloway.support.MirroredStages;
import holloway.support.Turned;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Holds the awkward houses of the seeds FIRST to LAST against their mirrors, stage by stage up to
 * the routing graph, and prints where they part; nothing is planned.
 */
public final class MirrorRun {
  private MirrorRun() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("mirrors");
    int same = 0;
    int differ = 0;
    for (long seed = Long.parseLong(args[0]); seed <= Long.parseLong(args[1]); seed++) {
      Path house = folder.resolve("house.yaml");
      Files.writeString(house, AwkwardHouseText.of(seed).house());
      for (Turned way : Turned.values()) {
        Optional<List<String>> faults = faults(house, folder.resolve("mirror.yaml"), way);
        same += faults.filter(List::isEmpty).isPresent() ? 1 : 0;
        differ += faults.filter(f -> !f.isEmpty()).isPresent() ? 1 : 0;
        if (faults.isPresent() && !faults.get().isEmpty()) {
          System.out.println("seed " + seed + " " + way);
          faults.get().stream().limit(7).forEach(System.out::println);
        }
      }
    }
    System.out.println(same + " mirrors the same, " + differ + " not");
  }

  /** Empty where the house is told to be wrong, or cannot be said in the mirror. */
  static Optional<List<String>> faults(Path house, Path image, Turned way) throws Exception {
    if (!(HouseFile.read(house) instanceof Reading.Sound read)) {
      return Optional.empty();
    }
    try {
      var turned = way.of(read.house());
      var request = way.of(read.request(), read.house());
      Files.writeString(image, HouseWriter.house(turned, request, Optional.empty()));
      new Pipeline(Progress.SILENT).understand(house);
    } catch (IllegalArgumentException | InputTrouble cannotBeSaid) {
      return Optional.empty();
    }
    return Optional.of(MirroredStages.faults(house, image, List.of(way), 3));
  }
}
