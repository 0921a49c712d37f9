package holloway.cli;

import holloway.pack.Language;
import holloway.pack.PaperSize;
import holloway.pipeline.Thoroughness;
import holloway.request.Profile;
import holloway.units.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Options whose value is a word of a list; a wrong word is told the list and the nearest. */
final class Choices {
  private Choices() {}

  private static <T> T choose(String word, Map<String, T> known) {
    T value = known.get(word);
    if (value == null) {
      String near =
          Nearest.of(word, known.keySet()).map(n -> "; did you mean '" + n + "'?").orElse("");
      throw new TypeConversionException(
          "'%s' is not one of %s%s".formatted(word, String.join(", ", known.keySet()), near));
    }
    return value;
  }

  static final class Aim implements ITypeConverter<Profile> {
    @Override
    public Profile convert(String word) {
      Map<String, Profile> known = new LinkedHashMap<>();
      for (Profile p : Profile.values()) {
        known.put(p.word(), p);
      }
      return choose(word, known);
    }
  }

  static final class Units implements ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String word) {
      return choose(
          word, new TreeMap<>(Map.of("ft-in", UnitSystem.FT_IN, "metric", UnitSystem.METRIC)));
    }
  }

  static final class PackLanguage implements ITypeConverter<Language> {
    @Override
    public Language convert(String word) {
      Map<String, Language> known = new LinkedHashMap<>();
      for (Language l : Language.values()) {
        known.put(l.code(), l);
      }
      return choose(word, known);
    }
  }

  static final class Paper implements ITypeConverter<PaperSize> {
    @Override
    public PaperSize convert(String word) {
      Map<String, PaperSize> known = new LinkedHashMap<>();
      for (PaperSize p : PaperSize.values()) {
        known.put(p.word(), p);
      }
      return choose(word, known);
    }
  }

  static final class Search implements ITypeConverter<Thoroughness> {
    @Override
    public Thoroughness convert(String word) {
      Map<String, Thoroughness> known = new LinkedHashMap<>();
      for (Thoroughness t : Thoroughness.values()) {
        known.put(t.word(), t);
      }
      return choose(word, known);
    }
  }

  static final class SchemaOf implements ITypeConverter<String> {
    @Override
    public String convert(String word) {
      return same(word, "house", "found", "wishes", "rules", "plan");
    }
  }

  private static String same(String word, String... words) {
    Map<String, String> known = new LinkedHashMap<>();
    for (String w : words) {
      known.put(w, w);
    }
    return choose(word, known);
  }
}
