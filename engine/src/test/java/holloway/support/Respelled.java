package holloway.support;

import holloway.units.Length;
import holloway.units.LengthParser;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A house file with every length written in the other system: feet and inches as millimetres, which
 * is exact, and millimetres as decimals of an inch, as many as give the same nanometre again. Trade
 * names of timber and steel (2x6, steel 3-5/8 in) are names and stay; so do comments.
 */
public final class Respelled {
  private static final Pattern LENGTH =
      Pattern.compile("(?<![\\w.'\"/-])(?<!steel )(" + LengthParser.PATTERN + ")(?![\\w'\"])");

  /** Twelve decimals of an inch are far finer than a nanometre. */
  private static final int DECIMALS = 12;

  /** The text of the file, and how many lengths were written anew. */
  public record Text(String text, int lengths) {}

  private Respelled() {}

  public static Text of(String file) {
    StringBuilder out = new StringBuilder();
    int lengths = 0;
    for (String line : file.split("\n", -1)) {
      int comment = line.matches("\\s*#.*") ? 0 : line.indexOf(" #");
      String said = comment < 0 ? line : line.substring(0, comment);
      Matcher m = LENGTH.matcher(said);
      StringBuilder anew = new StringBuilder();
      while (m.find()) {
        m.appendReplacement(anew, Matcher.quoteReplacement(other(m.group(1))));
        lengths++;
      }
      m.appendTail(anew);
      out.append(anew).append(comment < 0 ? "" : line.substring(comment)).append('\n');
    }
    return new Text(out.substring(0, out.length() - 1), lengths);
  }

  private static String other(String text) {
    Length taped = LengthParser.parse(text).value();
    BigDecimal nm = BigDecimal.valueOf(taped.nm());
    boolean metric = text.endsWith("m");
    String anew =
        metric
            ? plain(nm.divide(nm(Length.NM_PER_INCH), DECIMALS, RoundingMode.HALF_EVEN)) + " in"
            : plain(nm.divide(nm(Length.NM_PER_MM))) + " mm";
    if (!LengthParser.parse(anew).value().equals(taped)) {
      throw new IllegalStateException(text + " is not " + anew);
    }
    return anew;
  }

  private static BigDecimal nm(long nm) {
    return BigDecimal.valueOf(nm);
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
