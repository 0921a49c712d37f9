package holloway.pack;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The figures of a sentence: no translation may lose or change one. */
final class Numbers {
  private static final Pattern FIGURE = Pattern.compile("\\d+");

  private Numbers() {}

  static boolean same(String a, String b) {
    return figures(a).equals(figures(b));
  }

  private static List<String> figures(String text) {
    return FIGURE.matcher(text).results().map(MatchResult::group).sorted().toList();
  }
}
