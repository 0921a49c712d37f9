package holloway.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** The page's own words in one language, by key. What the plan says of the house is not in it. */
public enum Language {
  ENGLISH("en"),
  GERMAN("de");

  private final String code;

  Language(String code) {
    this.code = code;
  }

  /** As in a page's {@code lang}. */
  public String code() {
    return code;
  }

  /** Every key with its text. */
  public Map<String, String> texts() {
    String name = "pack-" + code + ".properties";
    try (InputStream in = Language.class.getResourceAsStream(name)) {
      Properties all = new Properties();
      all.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      Map<String, String> out = new TreeMap<>();
      all.stringPropertyNames().forEach(k -> out.put(k, all.getProperty(k)));
      return out;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
