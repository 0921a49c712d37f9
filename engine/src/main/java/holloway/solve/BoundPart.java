package holloway.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One part of the proof: the plans that pay certain works and do without certain others. Keeps the
 * shares that prove most so far; {@link Ascent} works on it.
 */
final class BoundPart {
  final int[] prepaid;
  final int[] shut;

  /** Units of the works that every plan of the part pays. */
  final long fixed;

  /** Works on which splitting the part did not help. */
  final Set<Integer> blocked = new TreeSet<>();

  /** Works whose price the shares cover worst, the worst first. */
  int[] candidates = {};

  /** How often each work was used in the last steps, 0 to 1; null before the first. */
  double[] often;

  /** One of the sets of zones the proof began with, not split yet. */
  final boolean whole;

  /** Not to be changed in place: other parts may have the very same. */
  Shares best;

  /** Whether no other part has the same shares. */
  private boolean own;

  long value = Long.MIN_VALUE;

  /** By group: what {@link #value} is the sum of, less the rents; null where not known. */
  long[] each;

  boolean impossible;
  boolean stalled;

  /** How much cooler than usual the model is, once nothing else helps. */
  double cool = 1;

  /** By group: paths that were short once; null before the first step. */
  List<List<Path>> known;

  private final Network net;

  private BoundPart(
      Network net, int[] prepaid, int[] shut, long fixed, Shares best, boolean whole) {
    this.net = net;
    this.prepaid = prepaid;
    this.shut = shut;
    this.fixed = fixed;
    this.best = best;
    this.whole = whole;
  }

  /** Plans of the whole order that use no other zones than some. */
  static BoundPart ofZones(Network net, int[] prepaid, int[] shut, long always, Shares start) {
    long sum = always;
    for (int w : prepaid) {
      sum = Math.addExact(sum, net.workPrice[w]);
    }
    return new BoundPart(net, prepaid, shut, sum, start, true);
  }

  /** The plans of this part that open the work. */
  BoundPart with(int work) {
    long sum = Math.addExact(fixed, net.workPrice[work]);
    return child(append(prepaid, work), shut, sum, best.prepaid(work));
  }

  /** The plans of this part that do without the work. */
  BoundPart without(int work) {
    return child(prepaid, append(shut, work), fixed, best.copy());
  }

  /**
   * A part of another proof laid on this network.
   *
   * @param always units of the works that every plan pays
   */
  static BoundPart carried(
      Network net, int[] prepaid, int[] shut, long always, Shares best, boolean whole) {
    long sum = always;
    for (int w : prepaid) {
      sum = Math.addExact(sum, net.workPrice[w]);
    }
    return new BoundPart(net, prepaid, shut, sum, best, whole);
  }

  /**
   * Takes the shares and paths of another set of zones: the very same, for in a large house each
   * copy is a tenth of the memory.
   */
  void begin(BoundPart other) {
    best = other.best;
    own = false;
    other.own = false;
    known = other.known;
  }

  /** These prove more. */
  void improve(Shares better) {
    if (own) {
      best.copyFrom(better);
    } else {
      best = better.copy();
      own = true;
    }
  }

  private BoundPart child(int[] newPrepaid, int[] newShut, long newFixed, Shares start) {
    BoundPart out = new BoundPart(net, newPrepaid, newShut, newFixed, start, false);
    out.known = known;
    return out;
  }

  private static int[] append(int[] works, int work) {
    int[] out = Arrays.copyOf(works, works.length + 1);
    out[works.length] = work;
    return out;
  }

  /** What the part proves about its plans; no plan at all if some run has no route in it. */
  long proved() {
    return impossible
        ? Network.SHUT
        : value == Long.MIN_VALUE ? fixed : Math.addExact(fixed, value);
  }

  int works() {
    return net.workPrice.length;
  }

  boolean[] shutWorks() {
    boolean[] out = new boolean[net.workPrice.length];
    for (int w : shut) {
      out[w] = true;
    }
    return out;
  }
}
