package holloway.solve;

import java.util.Arrays;

/**
 * Works of a path that are paid once, however many of its places need them: sets of them,
 * ascending, of those that stand at several places, since no other is met again.
 */
final class PaidWorks {
  static final int[] NONE = {};

  /** A work at more places than this may be met any number of times. */
  private static final int MOST_PLACES = 6;

  private final Draft draft;
  private final Zones zones;

  /** By work: nodes, edges and holes that need it. */
  private final int[] places;

  PaidWorks(Draft draft, Zones zones) {
    this.draft = draft;
    this.zones = zones;
    places = Index.placesOfWorks(draft.net);
  }

  /** Some work stands at several places. */
  boolean any() {
    return Arrays.stream(places).anyMatch(n -> n > 1);
  }

  /** What the works cost, less those paid. */
  long missing(int[] works, int[] paid) {
    long sum = 0;
    for (int w : works) {
      if (Arrays.binarySearch(paid, w) < 0) {
        sum = Math.min(Network.SHUT, sum + price(w));
      }
    }
    return sum;
  }

  /**
   * Whether the works, ascending, less those paid cost at most so much; most of the time of a
   * search is here.
   */
  boolean within(long most, int[] works, int[] paid) {
    long sum = 0;
    int at = 0;
    for (int w : works) {
      while (at < paid.length && paid[at] < w) {
        at++;
      }
      if (at == paid.length || paid[at] != w) {
        sum += price(w);
        if (sum > most) {
          return false;
        }
      }
    }
    return true;
  }

  /** What was paid with those of these works that may be met again. */
  int[] with(int[] works, int[] paid) {
    int[] out = paid;
    for (int w : works) {
      if (places[w] > 1 && price(w) > 0) {
        int at = Arrays.binarySearch(out, w);
        if (at < 0) {
          int[] more = Arrays.copyOf(out, out.length + 1);
          System.arraycopy(out, ~at, more, ~at + 1, out.length - ~at);
          more[~at] = w;
          out = more;
        }
      }
    }
    return out;
  }

  /**
   * What a path pays for the works at least if each is counted at each of its places with its part,
   * so that it is never counted over its price.
   */
  long parts(int[] works) {
    long sum = 0;
    for (int w : works) {
      sum = Math.min(Network.SHUT, sum + part(w));
    }
    return sum;
  }

  /** What the parts of works that are paid may still come to on the way on. */
  long slack(int[] paid) {
    long sum = 0;
    for (int w : paid) {
      sum += (places[w] - 1) * part(w);
    }
    return sum;
  }

  private long part(int work) {
    long price = price(work);
    return price >= Network.SHUT || places[work] == 1
        ? price
        : places[work] > MOST_PLACES ? 0 : price / places[work];
  }

  private long price(int work) {
    return draft.isOpen(work) ? 0 : zones.price(work);
  }
}
