package holloway.cli;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The word of a list that was probably meant. */
final class Nearest {
  private Nearest() {}

  /** Empty when no word is near: more than a third of its letters would have to change. */
  static Optional<String> of(String read, Collection<String> words) {
    return words.stream()
        .filter(w -> steps(read, w) <= Math.max(2, w.length() / 3))
        .min(
            Comparator.comparingInt((String w) -> steps(read, w))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Letters to put in, take out, change or swap with their neighbour. */
  private static int steps(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, d, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(String a, String b, int[][] d, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
