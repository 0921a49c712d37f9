package holloway.takeoff;

import java.util.List;
import java.util.OptionalLong;

/**
 * The cable to buy and what is cut from it, and how many pulls that makes.
 *
 * @param orders one a cable kind
 * @param pulls what so many boxes at once make of it
 * @param pullsAsCut pulls when every run is drawn from the box it is cut from
 * @param fewestPulls every blind stretch drawn once, which no number of boxes can beat
 */
public record BoxPlan(List<Order> orders, List<AtOnce> pulls, int pullsAsCut, int fewestPulls) {
  /** What a metre that the shop cuts costs, in metres of a box: from experience, without prices. */
  public static final int CUT_COUNTS = 3;

  /** A length sold as it stands on the box; feet to the ten that the trade says. */
  public static String words(int metres) {
    return "%d m (%d ft)".formatted(metres, Math.round(metres / 3.048) * 10);
  }

  /** A piece and the run it is for, metres. */
  public record Cut(String run, double metres) {}

  /**
   * One box or reel, or a length that the shop cuts.
   *
   * @param name such as {@code cat6 box 1}
   * @param leftM what is left when all is cut and nothing was lost, metres
   * @param cut by the shop, off its own drum, by the metre
   */
  public record Reel(
      String name, int metres, OptionalLong cents, List<Cut> cuts, double leftM, boolean cut) {}

  /**
   * @param byPrice the boxes cost least; else their length is least
   * @param amount hundredths of the currency, or metres bought, a cut one counted {@link
   *     #CUT_COUNTS} times
   * @param bound no boxes of this ladder that hold the pieces amount to less
   * @param tooLong pieces that no box holds
   */
  public record Order(
      String cable, boolean byPrice, long amount, long bound, List<Reel> reels, List<Cut> tooLong) {
    public boolean proven() {
      return amount == bound;
    }

    public boolean anyCut() {
      return reels.stream().anyMatch(Reel::cut);
    }

    /** Metres bought, each once. */
    public int metres() {
      return reels.stream().mapToInt(Reel::metres).sum();
    }
  }

  /**
   * @param boxes of each kind that stand there at once
   * @param pulls with the best sharing found
   * @param bound no sharing makes fewer
   */
  public record AtOnce(int boxes, int pulls, int bound) {}
}
