package holloway.importing;

import java.util.Set;
import java.util.TreeSet;

/** Names for the house file: of letters that it takes, not too long, and each only once. */
final class Titles {
  private static final int LONGEST = 48;

  private final Set<String> taken = new TreeSet<>();

  /** Names that mean something else already. */
  Titles(String... taken) {
    this.taken.addAll(Set.of(taken));
  }

  /**
   * @param wanted as the model has it
   * @param more put behind when the first is taken, for example a room's number; may be empty
   * @param otherwise when nothing of it can stay
   */
  String unique(String wanted, String more, String otherwise) {
    String plain = plain(wanted, otherwise);
    if (taken.add(plain)) {
      return plain;
    }
    String longer = plain(plain + " " + plain(more, ""), otherwise);
    if (taken.add(longer)) {
      return longer;
    }
    int n = 2;
    while (!taken.add(plain + " (" + n + ")")) {
      n++;
    }
    return plain + " (" + n + ")";
  }

  /** Letters, digits, blanks and a few marks. */
  static String plain(String text, String otherwise) {
    StringBuilder s = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isLetterOrDigit(c) || "-_.,'()&+".indexOf(c) >= 0 ? c : ' ')
        .forEach(s::appendCodePoint);
    String one = s.toString().replaceAll(" +", " ").strip();
    int end =
        one.length() <= LONGEST
            ? one.length()
            : one.offsetByCodePoints(0, one.codePointCount(0, LONGEST));
    String cut = one.substring(0, end).strip();
    return cut.isEmpty() ? otherwise : cut;
  }
}
