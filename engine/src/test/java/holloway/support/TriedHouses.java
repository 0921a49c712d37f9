package holloway.support;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Houses that a property is tried on: some samples and random houses, or with {@code
 * -Dholloway.seeds=N} all samples and the random houses 1 to N.
 */
public final class TriedHouses {
  private static final List<String> SAMPLES =
      List.of("plumb-corner", "tin-street", "quince-ranch", "alder-lane");

  private TriedHouses() {}

  /** Texts by name; the name of a random house is its seed. */
  public static Map<String, String> texts(int samples, long... seeds) {
    Integer last = Integer.getInteger("holloway.seeds");
    Map<String, String> out = new LinkedHashMap<>();
    SAMPLES
        .subList(0, last == null ? samples : SAMPLES.size())
        .forEach(s -> out.put(s, Chain.sample(s)));
    List<Long> random = new ArrayList<>();
    for (long seed : seeds) {
      random.add(seed);
    }
    for (long seed = 1; last != null && seed <= last; seed++) {
      random.add(seed);
    }
    random.forEach(seed -> out.put("seed " + seed, RandomHouseText.of(seed)));
    return out;
  }
}
