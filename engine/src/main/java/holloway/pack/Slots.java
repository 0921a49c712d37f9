package holloway.pack;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What stands in a sentence and is no sentence: measures, the house's own names, sources, letters.
 */
final class Slots {
  private static final Pattern NUMBER = Pattern.compile("\\(?[-+]{0,2}\\d[\\d./,:x-]*\\)?[,;]?");

  /** Clauses and standards: every word begins with a capital or holds a digit. */
  private static final Pattern CITED =
      Pattern.compile(
          "(?=.*\\d)[A-Z0-9(][\\w.()/+-]*((,|;| of| to| and| item)? [A-Z0-9(][\\w.()/+-]*)*");

  private static final Pattern LETTER = Pattern.compile("[A-Za-z]\\d*");

  private final Map<String, String> units;
  private final Set<String> own;

  Slots(Map<String, String> units, Set<String> own) {
    this.units = units;
    this.own = own;
  }

  /** The same in every language but for units. */
  Optional<String> plain(String text) {
    return own(text).or(() -> measure(text));
  }

  /** The same in every language, where nothing else fits: a clause, a single letter. */
  Optional<String> quoted(String text) {
    return of('c', text).or(() -> Optional.of(text).filter(t -> t.length() == 1));
  }

  Optional<String> of(char kind, String text) {
    return switch (kind) {
      case 'n' -> measure(text);
      case 'o' -> own(text);
      case 'i' -> Optional.of(text).filter(this::isId);
      case 'c' -> Optional.of(text).filter(t -> CITED.matcher(t).matches());
      case 'z' -> Optional.of(text).filter(t -> !t.contains(". "));
      case 'x' -> Optional.of(text).filter(t -> LETTER.matcher(t).matches());
      default -> throw new IllegalStateException("no slot of this kind: " + kind);
    };
  }

  /** A place in the house: a name of it, maybe counted, or an id with a slash in it. */
  private boolean isId(String text) {
    boolean slashed = text.indexOf('/') > 0 && !Character.isDigit(text.charAt(0));
    return slashed && text.chars().noneMatch(c -> ":;,(".indexOf(c) >= 0) && !text.contains(". ")
        || own.contains(text.replaceFirst("[-@]\\d+$", ""))
        || own.contains(text.replaceFirst(" (north|south|east|west)$", ""));
  }

  /** One name, or several with commas between them. */
  private Optional<String> own(String text) {
    if (own.contains(text)) {
      return Optional.of(text);
    }
    for (String between : new String[] {", ", "; "}) {
      int cut = text.indexOf(between);
      while (cut > 0) {
        if (own.contains(text.substring(0, cut))
            && own(text.substring(cut + between.length())).isPresent()) {
          return Optional.of(text);
        }
        cut = text.indexOf(between, cut + 1);
      }
    }
    return Optional.empty();
  }

  /** Numbers with their units, like {@code 3 ft 2-1/2 in (978 mm)}. */
  private Optional<String> measure(String text) {
    StringBuilder out = new StringBuilder();
    boolean number = false;
    for (String word : text.split(" ", -1)) {
      boolean digits = NUMBER.matcher(word).matches();
      String unit = word.replaceAll("[(),;]", "");
      if (!digits && (!number || !units.containsKey(unit))) {
        return Optional.empty();
      }
      number = true;
      out.append(out.length() == 0 ? "" : " ")
          .append(digits ? word : word.replace(unit, units.get(unit)));
    }
    return number ? Optional.of(out.toString()) : Optional.empty();
  }
}
