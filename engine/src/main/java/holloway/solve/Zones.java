package holloway.solve;

/**
 * How each work is looked at while one set of zones is tried: at its price, as already paid, or as
 * not to be had.
 */
final class Zones {
  private static final byte PRICED = 0;
  private static final byte PREPAID = 1;
  private static final byte SHUT = 2;

  private final Network net;
  private final byte[] state;
  private long[] discounted;

  Zones(Network net) {
    this.net = net;
    state = new byte[net.workPrice.length];
    reset();
  }

  /** Nothing prepaid; only what the order bans is shut. */
  void reset() {
    discounted = null;
    for (int w = 0; w < state.length; w++) {
      state[w] = net.workShut[w] ? SHUT : PRICED;
    }
  }

  void prepay(int work) {
    state[work] = PREPAID;
  }

  void shut(int work) {
    state[work] = SHUT;
  }

  void priceAgain(int work) {
    state[work] = PRICED;
  }

  /** Other opening prices to search with, or null for the true ones. */
  void discount(long[] prices) {
    discounted = prices;
  }

  boolean isShut(int work) {
    return state[work] == SHUT;
  }

  boolean isPrepaid(int work) {
    return state[work] == PREPAID;
  }

  /** What opening the work costs here, {@link Network#SHUT} if it may not be opened. */
  long price(int work) {
    if (state[work] == SHUT) {
      return Network.SHUT;
    }
    if (state[work] == PREPAID) {
      return 0;
    }
    return discounted == null ? net.workPrice[work] : discounted[work];
  }
}
