package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Roof;
import holloway.survey.Placed;
import holloway.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code start} writes reads, validates and can be placed as it stands. */
class StarterTest {
  @TempDir Path dir;

  private Reading.Sound sound(String text) throws IOException {
    Path file = dir.resolve("start.yaml");
    Files.writeString(file, text);
    Reading r = HouseFile.read(file);
    return assertInstanceOf(Reading.Sound.class, r, r::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "us,1994,1,false",
    "us,0,2,false",
    "uk,1930,3,true",
    "none,1,4,true",
    "us,1900,4,true"
  })
  void reads(String place, int built, int levels, boolean metric) throws IOException {
    int year = built == 1 ? 1700 : built;
    String text = Starter.text("house.schema.json", "Our House", place, year, levels, metric);
    assertFalse(text.contains("{{") || text.contains("}}}"), text);
    Reading.Sound s = sound(text);
    assertEquals("Our House", s.house().name());
    assertEquals(levels, s.house().levels().size());
    assertEquals(3 * levels, s.house().rooms().size());
    assertEquals(4, s.request().runs().size());
    assertEquals(year == 0, s.house().built().isAssumed());
    assertEquals(List.of(), HouseSchemaTest.faults(HouseSchema.text(), text));
    Placed placed = Survey.of(s.house()).value();
    assertEquals(List.of(), placed.misclosures());
    assertEquals(List.of(), placed.unaccounted());
  }

  /** Trusses were the norm by the 1970s in the US, by the mid-1970s in the UK (J17, J25). */
  @ParameterizedTest
  @CsvSource({
    "us,1985,TRUSSES",
    "us,0,TRUSSES",
    "us,1970,TRUSSES",
    "us,1969,RAFTERS",
    "uk,1975,TRUSSES",
    "uk,1974,RAFTERS",
    "none,1900,RAFTERS",
    "eu,1905,RAFTERS",
    "eu,0,RAFTERS"
  })
  void theRoofIsAsItWasUsual(String place, int built, Roof.Frame frame) throws IOException {
    String text = Starter.text("house.schema.json", "Our House", place, built, 2, true);
    assertEquals(List.of(frame), sound(text).house().roofs().stream().map(Roof::frame).toList());
  }

  @Test
  void everyNameComesBack() throws IOException {
    for (String name : List.of("O'Hara: the #1 house", "12", "yes", "{x}", "$0 \\1", "- a")) {
      if (name.contains("\\")) {
        assertThrows(
            IllegalArgumentException.class, () -> Starter.text("s.json", name, "us", 0, 1, false));
      } else {
        String text = Starter.text("s.json", name, "us", 0, 1, false);
        assertEquals(name, sound(text).house().name());
      }
    }
  }

  @Test
  void theFirstLineIsForTheEditor() {
    assertTrue(Starter.text("x.json").startsWith("# yaml-language-server: $schema=x.json\n"));
    assertTrue(Starter.text("x.json").contains("invented"));
  }
}
