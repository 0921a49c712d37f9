package holloway.pack;

import holloway.report.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a page shows and what its drawings say, in the page's language. */
final class Spoken {
  /** No words for a reader, or words of the bundle already. */
  private static final Set<String> KEPT =
      Set.of(
          "id",
          "hole-id",
          "t",
          "lang",
          "do",
          "inputs",
          "data-holes",
          "data-runs",
          "names",
          "key",
          "sizes",
          "file",
          "room-places",
          "min");

  private static final Pattern TEXT =
      Pattern.compile("(<(?:text|title)\\b(?![^>]*\\bnote\\b)[^>]*>)([^<]+)(?=</(?:text|title)>)");

  private final Language language;
  private final Sayings sayings;
  private final Set<String> own;

  private Spoken(Language language, Sayings sayings, Set<String> own) {
    this.own = own;
    this.language = language;
    this.sayings = sayings;
  }

  static Spoken of(Sheet sheet, Language language) {
    Set<String> own = OwnNames.of(sheet);
    return new Spoken(language, new Sayings(Language.ENGLISH.texts(), language.texts(), own), own);
  }

  Language language() {
    return language;
  }

  /** What no saying was found for. */
  Set<String> missed() {
    return sayings.missed();
  }

  Map<String, Object> page(Map<String, Object> values) {
    return language == Language.ENGLISH ? values : map(values);
  }

  /** A sentence by itself. */
  String text(String english) {
    return language == Language.ENGLISH ? english : sayings.say(english);
  }

  /** A text of a picture, or a piece of one that is in the page's language already. */
  String inPicture(String text) {
    return language == Language.ENGLISH ? text : sayings.sayIfKnown(text);
  }

  /** With its texts and titles in the page's language. */
  Drawing drawing(Drawing d) {
    return language == Language.ENGLISH ? d : d.each(this::svg);
  }

  private String svg(String drawn) {
    return TEXT.matcher(drawn)
        .replaceAll(m -> Matcher.quoteReplacement(m.group(1) + marked(drawn(plain(m.group(2))))));
  }

  /** Names are folded into narrow places: a piece of one stays as it is. */
  private String drawn(String text) {
    boolean piece = own.stream().anyMatch(n -> (" " + n + " ").contains(" " + text + " "));
    return piece ? text : sayings.say(text);
  }

  private Map<String, Object> map(Map<?, ?> values) {
    Map<String, Object> out = new LinkedHashMap<>();
    values.forEach((key, value) -> out.put((String) key, KEPT.contains(key) ? value : said(value)));
    return out;
  }

  private Object said(Object value) {
    if (value instanceof Map<?, ?> m) {
      return map(m);
    }
    if (value instanceof List<?> l) {
      List<Object> out = new ArrayList<>();
      l.forEach(v -> out.add(said(v)));
      return out;
    }
    if (value instanceof Drawing d) {
      return d.titled(sayings.say(d.title()));
    }
    return value instanceof String s && !s.isBlank() ? sayings.say(s) : value;
  }

  private static String plain(String text) {
    return text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }

  private static String marked(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
