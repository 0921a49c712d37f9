package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** JSON reads like YAML, and the order of keys means nothing. */
class KeyOrderTest {
  @TempDir Path dir;

  private Reading.Sound sound(String text) throws IOException {
    Path file = dir.resolve("toy.json");
    Files.writeString(file, text);
    Reading r = HouseFile.read(file);
    return assertInstanceOf(Reading.Sound.class, r, r::toString);
  }

  /** Everything but lines, columns and fingerprints. */
  private static String bare(Reading.Sound s) {
    return (s.house() + "\n" + s.request())
        .replaceAll("toy\\.(json|yaml):\\d+:\\d+", "somewhere")
        .replaceAll("InputFile\\[[^]]*\\]", "input");
  }

  private static Object turned(Object value) {
    if (value instanceof Map<?, ?> map) {
      List<Map.Entry<?, ?>> entries = new ArrayList<>(map.entrySet());
      Collections.reverse(entries);
      Map<Object, Object> out = new LinkedHashMap<>();
      entries.forEach(e -> out.put(e.getKey(), turned(e.getValue())));
      return out;
    }
    return value instanceof List<?> list ? list.stream().map(KeyOrderTest::turned).toList() : value;
  }

  @Test
  void jsonAndTurnedKeysGiveTheSameHouse() throws IOException {
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(Written.SOUND);
    ObjectMapper json = new ObjectMapper();
    String yaml = bare(new Written(dir).sound());
    assertEquals(yaml, bare(sound(json.writeValueAsString(tree))));
    assertEquals(yaml, bare(sound(json.writerWithDefaultPrettyPrinter().writeValueAsString(tree))));
    assertEquals(yaml, bare(sound(json.writeValueAsString(turned(tree)))));
  }

  @Test
  void jsonMayBeIndentedWithTabs() throws IOException {
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(Written.SOUND);
    String text = new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(tree);
    sound(text.replace("  ", "\t"));
  }
}
