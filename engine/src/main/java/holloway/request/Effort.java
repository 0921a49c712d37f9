package holloway.request;

import java.util.Map;
import java.util.TreeMap;

/**
 * The effort table: person-minutes by key, each key a dotted path of the file {@code
 * effort-default.yaml}. No published minutes per hole exist (trade-facts G1), so every default is
 * from experience and says so; a person's own file overrides keys one by one.
 */
public record Effort(Map<String, Double> minutes, boolean overridden) {
  /** Objective units per minute. */
  public static final long PER_MINUTE = 10_000;

  public Effort {
    minutes = Map.copyOf(new TreeMap<>(minutes));
  }

  /** The value of a key; an unknown key is a bug in the caller. */
  public double get(String key) {
    Double v = minutes.get(key);
    if (v == null) {
      throw new IllegalArgumentException("the effort table has no key '" + key + "'");
    }
    return v;
  }

  /** The value of a key in objective units (1/10 000 minute), rounded once. */
  public long units(String key) {
    return Math.round(get(key) * PER_MINUTE);
  }
}
