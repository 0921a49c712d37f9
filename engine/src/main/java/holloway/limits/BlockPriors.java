package holloway.limits;

import java.util.Locale;

/**
 * How likely a bay of a stud wall holds a block that nobody sees, by place and year. JUDGEMENT: no
 * survey of how often bays hold a mid-height block was found. They choose the words of what to
 * check and nothing else; no route is priced or refused by them.
 */
public final class BlockPriors {
  public static final String SOURCE = "our judgement; no published survey was found";

  /**
   * Shares of bays from 0 to 1; {@code outside} below 0 where the outside wall is likely masonry.
   */
  public record Row(double inside, double outside, String words) {
    /** "about 6 in 100 bays of inside walls and 10 in 100 of outside walls". */
    public String shares() {
      String in = "%d in 100 bays of inside walls".formatted(Math.round(inside * 100));
      return outside < 0
          ? in
          : in + " and %d in 100 of outside walls".formatted(Math.round(outside * 100));
    }
  }

  private BlockPriors() {}

  /**
   * @param place us or uk; of anything else the likelier of both is taken, never the kinder
   * @param built year
   */
  public static Row of(String place, int built) {
    return switch (place.toLowerCase(Locale.ROOT)) {
      case "us" -> us(built);
      case "uk" -> uk(built);
      default -> {
        Row a = us(built);
        Row b = uk(built);
        yield new Row(
            Math.max(a.inside(), b.inside()),
            Math.max(a.outside(), b.outside()),
            "of that age (place not known, so the worse of two is taken)");
      }
    };
  }

  private static Row us(int built) {
    if (built < 1950) {
      return new Row(.30, .30, "of a US house from before 1950");
    }
    if (built < 1970) {
      // The west may have had more, from memory; the region is not known, so the worse is taken.
      return new Row(.40, .40, "of a US house of 1950 to 1969 (less outside the west)");
    }
    return built < 1990
        ? new Row(.12, .12, "of a US house of 1970 to 1989")
        : new Row(.06, .10, "of a US house from 1990 on");
  }

  private static Row uk(int built) {
    return built < 1965
        ? new Row(.50, -1, "of a UK house from before 1965")
        : new Row(.85, .70, "of a UK house from 1965 on");
  }
}
