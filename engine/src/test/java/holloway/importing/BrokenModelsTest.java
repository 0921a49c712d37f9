package holloway.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.draft.Draft;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One thing wrong leaves one thing out, with its reason; a model of nothing is refused. */
class BrokenModelsTest {
  private static final String BUNGALOW = Models.text("bungalow");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "#29=IFCLOCALPLACEMENT(#17,|#29=IFCLOCALPLACEMENT(#29,|its placements lead round in a"
            + " circle",
        "IFCRECTANGLEPROFILEDEF(.AREA.,$,#21,5000.,4000.)|IFCCIRCLEPROFILEDEF(.AREA.,$,#21,2500.)|its"
            + " outline is a IFCCIRCLEPROFILEDEF, which we do not read",
        "#25=IFCEXTRUDEDAREASOLID(|#25=IFCREVOLVEDAREASOLID(|its shape is a IFCREVOLVEDAREASOLID,"
            + " which we do not read",
        "#23,#24,2400.);|#23,#24,$);|#25 (IFCEXTRUDEDAREASOLID) lacks a length",
        "#23,#24,2400.);|#23,#24,20.);|it is only 20 mm high",
        "#23,#24,2400.);|#23,#4,2400.);|a direction has no length",
        "#21,5000.,4000.|#21,50.,4000.|its outline holds no room",
        "#21,5000.,4000.|#21,5.E+30,4000.|a length of 5.0E30 is beyond any house",
        "(#30,#44)|(#44)|it belongs to no storey",
        "#23=IFCAXIS2|#23=IFCAXIS9|#25 (IFCEXTRUDEDAREASOLID) lacks what value 2 should name",
        "#21=IFCAXIS2|#21=IFCAXIS9|#22 (IFCRECTANGLEPROFILEDEF) lacks what value 3 should name",
        "#29=IFCLOCALPLACEMENT(#17,|#29=IFCLOCALPLACEMENT(#99999,|#29 (IFCLOCALPLACEMENT) lacks what"
            + " value 1 should name",
        "#25=IFCEXTRUDEDAREASOLID|#25=IFCSOMESOLID|a part of its shape is of a kind that we do not"
            + " read",
        "#26=IFCSHAPEREPRESENTATION(#6,'Body','SweptSolid',(#25))|#26=IFCSHAPEREPRESENTATION(#6,'Body','SweptSolid',())|it"
            + " has no shape",
        "#29,#27,'Living|#29,$,'Living|it has no body",
        "#22=IFCRECTANGLEPROFILEDEF|#22=IFCNOTHINGWEKNOW|#25 (IFCEXTRUDEDAREASOLID) lacks what value"
            + " 1 should name",
        "'Living room',.ELEMENT.,.INTERNAL.|'Living room',.ELEMENT.,.EXTERNAL.|is outside",
      })
  void aSpaceThatCannotBeReadIsLeftOut(String from, String to, String why) throws IOException {
    Draft d = Models.draft(Models.changed(BUNGALOW, from, to));
    assertEquals(1, d.rooms().size());
    assertEquals("Garage", d.rooms().get(0).name());
    assertTrue(
        d.toFinish().stream().anyMatch(t -> t.startsWith("space '") && t.contains(why)),
        d.toFinish()::toString);
  }

  @Test
  void aWallOrDoorThatCannotBeReadIsLeftOut() throws IOException {
    Draft d = Models.draft(Models.changed(BUNGALOW, "#56=IFCPRODUCT", "#56=IFCNOTHING"));
    assertTrue(
        d.toFinish().contains("wall 'South' (line 65 of the model) is left out: it has no body"),
        d.toFinish()::toString);
    d = Models.draft(Models.changed(BUNGALOW, "#129=IFCPRODUCT", "#129=IFCNOTHING"));
    assertEquals(3, d.openings().size(), "a door tells its own size");
    d =
        Models.draft(
            Models.changed(
                Models.changed(BUNGALOW, "#129=IFCPRODUCT", "#129=IFCNOTHING"),
                "$,$,2000.,900.)",
                "$,$,$,$)"));
    assertTrue(
        d.toFinish().stream().anyMatch(t -> t.endsWith("neither its size nor its opening is told")),
        d.toFinish()::toString);
    assertEquals(2, d.rooms().size());
  }

  @Test
  void roomsThatTouchAreNamed() throws IOException {
    Draft d = Models.draft(Models.changed(BUNGALOW, "(5120.,", "(5020.,"));
    assertTrue(
        d.toFinish().stream()
            .anyMatch(
                t -> t.startsWith("between 'Living room' and 'Garage' the model leaves only 20")),
        d.toFinish()::toString);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IFCSPACE(|IFCANNOTATION(|no spaces",
        "FILE_SCHEMA(('IFC2X3'))|FILE_SCHEMA(('AUTOMOTIVE_DESIGN'))|not of IFC2X3, IFC4",
        "FILE_SCHEMA(('IFC2X3'))|FILE_SCHEMA(())|not of IFC2X3, IFC4",
        "#18,(#30,#44)|#18,()|no space of the model can be read; the first: space '1'",
      })
  void aModelWithoutAHouseIsRefused(String from, String to, String why) {
    String text = Models.changed(BUNGALOW, from, to);
    ModelFault e = assertThrows(ModelFault.class, () -> Models.draft(text));
    assertTrue(e.getMessage().contains(why), e.getMessage());
  }
}
