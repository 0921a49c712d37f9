package holloway.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sections of a STEP file, its values, and what is said of a broken one. */
class StepReaderTest {
  private static final String HEAD =
      "ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n";
  private static final String TAIL = "\nENDSEC;\nEND-ISO-10303-21;\n";

  private static StepFile read(String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return StepReader.read(new ByteArrayInputStream(bytes), t -> !t.equals("SKIPPED"), 1 << 20);
  }

  private static StepFile data(String data) throws IOException {
    return read(HEAD + data + TAIL);
  }

  @Test
  void allKindsOfValues() throws IOException {
    StepEntity e =
        data("#7 = Thing('a', 1, -2.5, .T., #3, $, *, (), ((1),(2)), LEN(0.3), \"0F\");")
            .find(7)
            .orElseThrow();
    assertEquals("THING", e.type());
    assertEquals(6, e.line());
    assertEquals(
        List.of(
            new StepValue.Text("a"),
            new StepValue.Number(1),
            new StepValue.Number(-2.5),
            new StepValue.Word("T"),
            new StepValue.Ref(3),
            StepValue.Absent.UNSET,
            StepValue.Absent.DERIVED,
            new StepValue.Many(List.of()),
            new StepValue.Many(
                List.of(
                    new StepValue.Many(List.of(new StepValue.Number(1))),
                    new StepValue.Many(List.of(new StepValue.Number(2))))),
            new StepValue.Typed("LEN", List.of(new StepValue.Number(0.3))),
            new StepValue.Bits("0F")),
        e.parts().get(0).values());
    assertEquals(StepValue.Absent.UNSET, e.value(99));
  }

  @Test
  void whatIsNotWantedIsReadOverAndPartsOfSeveralTypesAreKept() throws IOException {
    StepFile file = data("#1=SKIPPED(('x'),#2);#2=(A(1)SKIPPED()B(.X.));\n#3=A();#9=A();");
    assertEquals(3, file.size());
    assertTrue(file.find(1).isEmpty());
    assertEquals(List.of(2L, 3L, 9L), file.listOf("A").stream().map(StepEntity::id).toList());
    assertEquals(1, file.listOf("B").size());
    assertEquals("FILE_SCHEMA", file.findHeader("FILE_SCHEMA").orElseThrow().type());
  }

  @Test
  void severalDataSectionsAndWordsAfterTheEnd() throws IOException {
    StepFile file =
        read(HEAD + "#1=A();\nENDSEC;\nDATA('two',('IFC4'));\n#2=A();" + TAIL + "\0\0 @ '");
    assertEquals(2, file.size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "#1=A(1|6:7|here stands ';', where ')' should stand",
        "#1=A(1,,2)|6:8|here stands ',', where a value should stand",
        "#1 A(1)|6:4|here stands 'A', where '=' should stand",
        "#1=(1)|6:5|here stands '1', where a keyword should stand",
        "#1=()|6:5|here stands ')', where a keyword should stand",
        "A(1)|6:1|here stands 'A', where a reference such as #12 should stand",
        "#1=A();#1=A()|6:8|#1 was given on line 6 already",
        "#1=A(1E999)|6:6|the number '1E999' is too large",
        "#1=A(B)|6:7|here stands ')', where '(' should stand",
      })
  void theFirstFaultIsSaidWithItsPlace(String data, String place, String says) {
    StepFault e = assertThrows(StepFault.class, () -> data(data + ";"));
    assertEquals(says, e.getMessage());
    assertEquals(place, e.line() + ":" + e.column());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ISO-10303-21;|the file ends where 'HEADER' should stand; is it whole?",
        "solid cube|this is no STEP file: it does not begin with ISO-10303-21;",
        "{}|nothing of a STEP file begins with '{'",
        "ISO-10303-21; HEADER; ENDSEC; DATA; #1=A();|the file ends where a reference such as #12"
            + " should stand; is it whole?",
        "ISO-10303-21; HEADER; ENDSEC; DATA; ENDSEC;|the file ends where 'END-ISO-10303-21' should"
            + " stand; is it whole?",
      })
  void whatIsNoWholeFile(String text, String says) {
    assertEquals(says, assertThrows(StepFault.class, () -> read(text)).getMessage());
  }

  @Test
  void bracketsNestSoFarAndNoFurther() throws IOException {
    int most = StepReader.DEEPEST;
    assertEquals(1, data("#1=A(" + "(".repeat(most) + ")".repeat(most) + ");").size());
    for (int depth : new int[] {most + 1, 200_000}) {
      StepFault e =
          assertThrows(
              StepFault.class, () -> data("#1=A(" + "(".repeat(depth) + ")".repeat(depth) + ");"));
      assertEquals("brackets are nested more than 60 deep", e.getMessage());
    }
  }

  @Test
  void aLongerFileIsRefused() {
    String data = "#1=SKIPPED('" + "x".repeat(2 << 20) + "');";
    String says = assertThrows(StepFault.class, () -> data(data)).getMessage();
    assertEquals("the file is longer than the 1 MB we read", says);
  }
}
