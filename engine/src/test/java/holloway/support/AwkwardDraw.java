package holloway.support;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** The chance behind an awkward house, its text so far and the features that were drawn. */
final class AwkwardDraw {
  final Random r;
  private final StringBuilder out = new StringBuilder();
  private final Set<String> features = new TreeSet<>();

  AwkwardDraw(long seed) {
    r = new Random(seed * 1_000_003 + 41);
  }

  void line(String words, Object... parts) {
    out.append(words.formatted(parts)).append('\n');
  }

  /** A list under a key, nothing where it is empty. */
  void list(String key, List<String> items) {
    if (!items.isEmpty()) {
      line("%s:", key);
      items.forEach(i -> out.append("  - ").append(i).append('\n'));
    }
  }

  boolean chance(int percent) {
    return r.nextInt(100) < percent;
  }

  /** The same, for a feature that is noted where it is drawn. */
  boolean maybe(int percent, String feature) {
    return chance(percent) && features.add(feature) | true;
  }

  void has(String feature) {
    features.add(feature);
  }

  int upTo(int most) {
    return r.nextInt(most);
  }

  String pick(String... words) {
    return words[r.nextInt(words.length)];
  }

  <T> T pick(List<T> of) {
    return of.get(r.nextInt(of.size()));
  }

  String spacing() {
    return pick("16 in", "24 in", "400 mm", "600 mm", "16 in");
  }

  String text() {
    return out.toString();
  }

  Set<String> features() {
    return Set.copyOf(features);
  }
}
