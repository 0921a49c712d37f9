package holloway.pack;

import holloway.finding.Finding;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** For tests of other stages: their sentences have to be known in the second language. */
public final class GermanWords {
  /** Labels, runs, ids of walls and spaces as toy houses name them. */
  private static final Pattern NAMED = Pattern.compile("[\\w-]+(/[\\w-]+)+|H\\d+");

  private GermanWords() {}

  /** Texts, remedies and sources that stay English. */
  public static Set<String> unsaid(List<Finding> all, Set<String> own) {
    Set<String> names = new TreeSet<>(own);
    all.forEach(f -> NAMED.matcher(f.text()).results().forEach(m -> names.add(m.group())));
    Sayings german = new Sayings(Language.ENGLISH.texts(), Language.GERMAN.texts(), names);
    for (Finding f : all) {
      german.say(f.text());
      german.say(f.remedy());
      german.say(f.source());
    }
    return german.missed();
  }
}
