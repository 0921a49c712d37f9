package holloway.pack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One sentence with slots like {@code {n1}} in two languages; the letter says what may stand there.
 */
final class Saying {
  private static final Pattern SLOT = Pattern.compile("\\{([a-z])(\\d)\\}");

  /** Texts round the slots: one more than there are slots. */
  private final List<String> from = new ArrayList<>();

  private final List<String> slots = new ArrayList<>();
  private final String to;

  Saying(String pattern, String to) {
    this.to = to;
    Matcher m = SLOT.matcher(pattern);
    int at = 0;
    while (m.find()) {
      from.add(pattern.substring(at, m.start()));
      slots.add(m.group(1) + m.group(2));
      at = m.end();
    }
    from.add(pattern.substring(at));
  }

  List<String> from() {
    return from;
  }

  /** How much of it is no slot. */
  int said() {
    return from.stream().mapToInt(String::length).sum();
  }

  /** A quick no. */
  boolean fits(String text) {
    return text.length() > said()
        && text.startsWith(from.get(0))
        && text.endsWith(from.get(from.size() - 1));
  }

  /**
   * @param slot what a text becomes in a slot of a kind, empty if it may not stand there
   */
  Optional<String> put(String text, BiFunction<Character, String, Optional<String>> slot) {
    Map<String, String> filled = new HashMap<>();
    if (!fill(text, from.get(0).length(), 0, slot, filled)) {
      return Optional.empty();
    }
    return Optional.of(SLOT.matcher(to).replaceAll(r -> filledIn(filled, r.group(1) + r.group(2))));
  }

  private String filledIn(Map<String, String> filled, String name) {
    return Matcher.quoteReplacement(filled.getOrDefault(name, ""));
  }

  /** Fills slot {@code n} from {@code at}, the shortest first. */
  private boolean fill(
      String text,
      int at,
      int n,
      BiFunction<Character, String, Optional<String>> slot,
      Map<String, String> filled) {
    if (n == slots.size()) {
      return at == text.length();
    }
    String next = from.get(n + 1);
    boolean last = n + 1 == slots.size();
    int end = last ? text.length() - next.length() : text.indexOf(next, at + 1);
    while (end > at) {
      Optional<String> in = slot.apply(slots.get(n).charAt(0), text.substring(at, end));
      if (in.isPresent() && fill(text, end + next.length(), n + 1, slot, filled)) {
        filled.put(slots.get(n), in.get());
        return true;
      }
      end = last ? -1 : text.indexOf(next, end + 1);
    }
    return false;
  }
}
