package holloway.hollow;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Answers that hang on one house alone, each looked for once. A house has some thousands; whoever
 * slides an end about for hours begins again. May be used on several threads.
 *
 * @param <K> all that is asked, compared by what is in it
 * @param <V> the answer
 */
public final class Known<K, V> {
  private final int most;
  private final Map<K, V> answers = new ConcurrentHashMap<>();

  /**
   * @param most answers that are kept at once
   */
  public Known(int most) {
    this.most = most;
  }

  /** The answer, which {@code look} finds where it is not known. */
  public V of(K asked, Supplier<V> look) {
    V was = answers.get(asked);
    if (was != null) {
      return was;
    }
    V now = look.get();
    if (answers.size() >= most) {
      answers.clear();
    }
    answers.put(asked, now);
    return now;
  }
}
