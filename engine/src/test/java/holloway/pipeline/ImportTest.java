package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.importing.Models;
import holloway.survey.Placed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What comes out of a model is a house that the survey places as the model has it. */
class ImportTest {
  private static final StartWishes WISHES = new StartWishes("s.json", "x", "us", 0, 1, false);

  @TempDir Path folder;

  private String imported(String model) throws IOException {
    Path file = Files.writeString(folder.resolve("toy.ifc"), model);
    return new RealStages(Progress.SILENT).importFile(file, WISHES, Optional.empty());
  }

  private Placed placed(String text) throws IOException {
    Path house = Files.writeString(folder.resolve("toy.yaml"), text);
    Stages stages = new RealStages(Progress.SILENT);
    return stages.survey(stages.read(house).house()).value();
  }

  /** Areas in square metres off the models' text, to 1 %, though they come out far nearer. */
  @ParameterizedTest
  @CsvSource({
    "bungalow,Living room,20",
    "bungalow,Garage,12",
    "two-storeys,Kitchen,15.6077",
    "two-storeys,Kitchen 002,12.9600",
    "two-storeys,Landing,9.0580",
    "turned,Studio,26",
    "turned,Store,3.61"
  })
  void roomsArePlacedAsLargeAsTheModelHasThem(String model, String room, double area)
      throws IOException {
    Placed placed = placed(imported(Models.text(model)));
    assertEquals(area, placed.getRoom(room).outline().signedAreaMm2() / 1e6, area / 100);
    assertTrue(placed.misclosures().isEmpty(), placed.misclosures()::toString);
  }

  @Test
  void storeysStandOneOverTheOtherAndOpeningsAreInWalls() throws IOException {
    Placed placed = placed(imported(Models.text("two-storeys")));
    double rise =
        (placed.getLevel("Upper").floorZ() - placed.getLevel("Ground Floor").floorZ()) / 1e6;
    assertEquals(9.25 * 304.8, rise, 5);
    assertEquals(3, placed.walls().stream().mapToInt(w -> w.openings().size()).sum());
    assertEquals(0, placed.getRoom("Bed O'Hara's é").outline().xRange().lo() / 1_000_000);
  }

  @Test
  void whatCannotStandIsHandedOverAsAComment() throws IOException {
    String text = imported(Models.text("bungalow"));
    assertEquals(text, ReadBack.settled(text));
    String off = text.replace("from: south 1 m", "from: south 3.9 m");
    String settled = ReadBack.settled(off);
    assertTrue(
        settled.contains("\n  # - { door, side: Living room east, from: south 3.9 m"), settled);
    assertEquals(2, placed(settled).walls().stream().mapToInt(w -> w.openings().size()).sum());
    String touching = imported(Models.text("bungalow").replace("(5120.,", "(5020.,"));
    assertTrue(
        touching.lines().skip(1).findFirst().orElse("").startsWith("# to finish: between"),
        touching);
  }

  /** A wrong file of each kind is one line with the place, and nothing else is thrown. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "END-ISO-10303-21;|END-ISO-10303-21|toy.ifc:218:1: the file ends where ';' should stand",
        "#30=IFCSPACE(|#30=IFCSPACE(((|toy.ifc:38:",
        "'Living room'|'Living room|toy.ifc:48:32: here stands 'BODY', where ')' should stand; maybe the"
            + " string begun on line 38 is not closed",
        "'IFC2X3'|'IFC1'|toy.ifc: this STEP file is not of IFC2X3",
        "IFCSPACE|IFCPLACE|toy.ifc: the model holds no spaces",
      })
  void whatIsWrongIsSaid(String from, String to, String says) {
    String now = Models.text("bungalow").replace(from, to);
    InputTrouble e = assertThrows(InputTrouble.class, () -> imported(now));
    assertEquals(1, e.lines().size());
    assertTrue(e.getMessage().startsWith(says), e.getMessage());
  }

  @Test
  void commentsFromTheModelStayComments() throws IOException {
    String nasty = "'Garage \\X2\\000A\\X0\\outlets: no'";
    String text = imported(Models.text("bungalow").replace("'Garage'", nasty));
    assertFalse(text.contains("\noutlets: no"), text);
    assertEquals(2, placed(text).rooms().size());
  }
}
