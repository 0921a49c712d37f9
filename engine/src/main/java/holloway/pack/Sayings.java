package holloway.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Puts what the plan says of a house into another language. A saying is a sentence or a piece of
 * one with slots; both languages have it under the same key. What fits no saying stays English and
 * is remembered, and a translation that would change a number is not used.
 */
final class Sayings {
  /** Keys of sayings; what follows names it. */
  static final String KEY = "say.";

  /** Keys of units; what follows is the unit's English sign. */
  private static final String UNIT = "unit.";

  /** What stands in a sentence but says nothing by itself, like a code's clause. */
  private final Slots slots;

  private final Map<String, String> exact = new HashMap<>();
  private final List<Saying> open = new ArrayList<>();
  private final Map<String, Optional<String>> told = new HashMap<>();
  private final Set<String> missed = new TreeSet<>();

  /**
   * @param from every text of the language that is read, {@code to} of that which is written
   * @param own names that the house file gives: they stay as they are
   */
  Sayings(Map<String, String> from, Map<String, String> to, Set<String> own) {
    Map<String, String> units = new TreeMap<>();
    from.forEach(
        (key, text) -> {
          if (key.startsWith(UNIT)) {
            units.put(text, to.get(key));
          } else if (text.indexOf('{') < 0) {
            take(key, text, to.get(key));
          } else if (key.startsWith(KEY)) {
            open.add(new Saying(text, to.get(key)));
          }
        });
    open.sort(
        Comparator.comparingInt((Saying s) -> -s.said())
            .thenComparing(s -> String.join("", s.from())));
    slots = new Slots(units, own);
  }

  /** A sentence of the engine wins over a word of the page. */
  private void take(String key, String text, String in) {
    if (key.startsWith(KEY)) {
      exact.put(text, in);
    } else {
      exact.putIfAbsent(text, in);
    }
  }

  /** As it is where nothing is known for it. */
  String say(String text) {
    Optional<String> said = find(text.strip()).filter(s -> Numbers.same(text, s));
    if (said.isEmpty()) {
      missed.add(text);
    }
    return said.orElse(text);
  }

  /** As {@link #say}, and nothing is remembered. */
  String sayIfKnown(String text) {
    return find(text.strip()).filter(s -> Numbers.same(text, s)).orElse(text);
  }

  /** What had to stay as it was. */
  Set<String> missed() {
    return missed;
  }

  private Optional<String> find(String text) {
    Optional<String> known = told.get(text);
    if (known == null) {
      // Until it is known, a piece that holds itself has no answer.
      told.put(text, Optional.empty());
      known = look(text);
      told.put(text, known);
    }
    return known;
  }

  private Optional<String> look(String text) {
    Optional<String> plain = slots.plain(text).or(() -> Optional.ofNullable(exact.get(text)));
    if (plain.isPresent()) {
      return plain;
    }
    for (Saying s : open) {
      Optional<String> out = s.fits(text) ? s.put(text, this::slot) : Optional.empty();
      if (out.isPresent()) {
        return out;
      }
    }
    return slots.quoted(text);
  }

  private Optional<String> slot(char kind, String text) {
    return kind == 't' ? find(text) : slots.of(kind, text);
  }
}
