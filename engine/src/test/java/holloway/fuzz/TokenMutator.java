package holloway.fuzz;

import holloway.housefile.HouseSchema;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Changes words and numbers of a house file: what a tired person writes. */
final class TokenMutator {
  private static final Pattern TOKEN =
      Pattern.compile("[A-Za-z][A-Za-z-]*|\\d+(?:\\.\\d+)?|\\s+|[^A-Za-z\\d\\s]");
  private static final String[] EXTREMES = {
    "0",
    "00",
    "1",
    "2",
    "0.001",
    "0.0000001",
    "99",
    "100",
    "199",
    "200",
    "201",
    "999",
    "1000",
    "12000",
    "100000",
    "199999",
    "200000",
    "2147483648",
    "9223372036854775808",
    "99999999999999999999999999",
    "1e9",
    "0x10",
    "1_000",
    "3/4",
    "1/0",
    "7/128",
    "NaN",
    ".5"
  };
  private static final String[] UNITS = {"mm", "cm", "m", "in", "ft", "", "km", "min", "deg"};
  private static final List<String> VOCABULARY = vocabulary();

  private TokenMutator() {}

  /** Every word that the schema knows. */
  private static List<String> vocabulary() {
    TreeSet<String> words = new TreeSet<>();
    Matcher m = Pattern.compile("\"([a-z][a-z0-9-]+)\"").matcher(HouseSchema.text());
    while (m.find()) {
      words.add(m.group(1));
    }
    return List.copyOf(words);
  }

  static String anyWord(Random r) {
    return VOCABULARY.get(r.nextInt(VOCABULARY.size()));
  }

  static String mutate(String text, Random r) {
    List<String> tokens = new ArrayList<>();
    Matcher m = TOKEN.matcher(text);
    while (m.find()) {
      tokens.add(m.group());
    }
    for (int times = 1 + r.nextInt(3); times > 0 && tokens.size() > 2; times--) {
      once(tokens, r);
    }
    return String.join("", tokens);
  }

  private static void once(List<String> t, Random r) {
    int at = r.nextInt(t.size());
    int number = find(t, at, "\\d.*");
    int word = find(t, at, "[A-Za-z].*");
    switch (r.nextInt(11)) {
      case 0 -> t.add(at, t.get(r.nextInt(t.size())));
      case 1 -> t.remove(at);
      case 2 -> {
        String other = t.set(r.nextInt(t.size()), t.get(at));
        t.set(at, other);
      }
      case 3 -> t.set(number, EXTREMES[r.nextInt(EXTREMES.length)]);
      case 4, 5 -> t.set(number, nudged(t.get(number), r));
      case 6 -> t.add(number, "-");
      case 7 -> t.set(find(t, at, "mm|cm|m|in|ft"), UNITS[r.nextInt(UNITS.length)]);
      case 8 -> t.set(word, misspelt(t.get(word), r));
      case 9 -> t.set(word, anyWord(r));
      default -> exchange(t, t.get(word), t.get(find(t, r.nextInt(t.size()), "[A-Za-z].*")));
    }
  }

  /** The next token of that form, round the end; where none is, the place begun at. */
  private static int find(List<String> tokens, int from, String form) {
    for (int i = 0; i < tokens.size(); i++) {
      int at = (from + i) % tokens.size();
      if (tokens.get(at).matches(form)) {
        return at;
      }
    }
    return from;
  }

  /** Another number of about that size: these files often read soundly. */
  static String nudged(String number, Random r) {
    try {
      double factor = r.nextInt(3) == 0 ? 0.02 + 8 * r.nextDouble() : 0.8 + 0.4 * r.nextDouble();
      double value = Double.parseDouble(number) * factor;
      return number.contains(".")
          ? String.valueOf(Math.round(value * 1000) / 1000.0)
          : String.valueOf(Math.round(value));
    } catch (NumberFormatException e) {
      return number;
    }
  }

  private static String misspelt(String word, Random r) {
    int at = r.nextInt(word.length());
    char letter = (char) ('a' + r.nextInt(26));
    return switch (r.nextInt(3)) {
      case 0 -> word.substring(0, at) + word.substring(at + 1);
      case 1 -> word.substring(0, at) + letter + word.substring(at);
      default -> word.substring(0, at) + letter + word.substring(at + 1);
    };
  }

  private static void exchange(List<String> tokens, String one, String other) {
    tokens.replaceAll(t -> t.equals(one) ? other : t.equals(other) ? one : t);
  }
}
