package holloway.housefile;

import holloway.house.Where;
import java.util.List;
import java.util.TreeSet;

/** Gathers the problems of all files read, so that they are reported together. */
final class Problems {
  /** A file of nonsense must not produce a list as long as itself. */
  static final int MOST = 200;

  private static final int READ_LENGTH = 60;

  private final TreeSet<Problem> all = new TreeSet<>();
  private int left;

  void add(Where where, String read, String expected, String nearest, String text) {
    if (all.size() >= MOST) {
      left++;
      return;
    }
    all.add(new Problem(where, shorten(read), expected, nearest, text));
  }

  void add(Where where, String read, Refused why) {
    add(where, read, why.expected(), why.nearest(), why.getMessage());
  }

  boolean isEmpty() {
    return all.isEmpty();
  }

  List<Problem> sorted() {
    if (left > 0) {
      Problem last = all.last();
      String more =
          "only the first " + MOST + " problems are listed; " + left + " more were left out";
      all.add(new Problem(new Where(last.where().file(), 0, 0), "", "", "", more));
      left = 0;
    }
    return List.copyOf(all);
  }

  private static String shorten(String read) {
    String clean = read.replaceAll("[\\p{Cntrl}]+", " ");
    return clean.length() <= READ_LENGTH ? clean : clean.substring(0, READ_LENGTH) + "...";
  }
}
