package holloway.housefile;

import java.util.Collection;
import java.util.Locale;
import java.util.TreeSet;

/** The valid word nearest to what was written, by edit distance (swaps of neighbours count one). */
final class Nearest {
  private static final int LONGEST = 60;

  /** Comparing with more words than this would take long and help nobody. */
  private static final int MOST_WORDS = 2_000;

  private Nearest() {}

  /** Empty when nothing is near: more than a third of the letters would change. */
  static String of(String written, Collection<String> words) {
    String w = written.toLowerCase(Locale.ROOT);
    String best = "";
    int least = Integer.MAX_VALUE;
    if (w.length() > LONGEST || words.size() > MOST_WORDS) {
      return best;
    }
    for (String word : new TreeSet<>(words)) {
      int d = distance(w, word.toLowerCase(Locale.ROOT));
      if (d < least && d <= Math.max(1, (Math.max(w.length(), word.length()) + 1) / 3)) {
        least = d;
        best = word;
      }
    }
    return best;
  }

  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    boolean same = a.charAt(i - 1) == b.charAt(j - 1);
    int least = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
