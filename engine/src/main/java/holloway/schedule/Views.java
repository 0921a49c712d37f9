package holloway.schedule;

import java.util.List;
import java.util.Map;

/**
 * What is drawn of a plan besides levels and runs.
 *
 * @param holes how each hole looks from its two sides, by hole id
 * @param floors each place where cable passes a floor, from the lowest
 */
public record Views(Map<String, List<HoleView>> holes, List<FloorCrossing> floors) {
  public static final Views NONE = new Views(Map.of(), List.of());

  public Views {
    holes = Map.copyOf(holes);
    floors = List.copyOf(floors);
  }
}
