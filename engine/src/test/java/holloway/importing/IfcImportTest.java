package holloway.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.housefile.draft.Draft;
import holloway.units.Length;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the small invented models tell; every number is read off their text. */
class IfcImportTest {
  private static final String BUNGALOW = Models.text("bungalow");
  private static final String TWO_STOREYS = Models.text("two-storeys");
  private static final String TURNED = Models.text("turned");

  private static Draft changed(String text, String from, String to) throws IOException {
    return Models.draft(Models.changed(text, from, to));
  }

  private static double area(Draft.Room r) {
    return new Polygon2(r.outline()).signedAreaMm2() / 1e6;
  }

  private static void assertTells(Draft d, String words) {
    assertTrue(d.toFinish().stream().anyMatch(t -> t.contains(words)), d.toFinish()::toString);
  }

  @Test
  void roomsWallsAndFloorOfTheBungalow() throws IOException {
    Draft d = Models.draft(BUNGALOW);
    assertEquals("Heron Cottage", d.title());
    assertTrue(d.metric());
    assertEquals(
        List.of("Living room", "Garage"), d.rooms().stream().map(Draft.Room::name).toList());
    Draft.Room garage = d.rooms().get(1);
    assertEquals(20.0, area(d.rooms().get(0)), 1e-9);
    assertEquals(12.0, area(garage), 1e-9);
    assertEquals(Optional.empty(), d.rooms().get(0).at());
    assertEquals(Length.mm(5120).nm(), garage.at().orElseThrow().x());
    assertEquals(Optional.of(Length.mm(-100)), garage.elevation());
    assertEquals(Optional.of(Length.mm(2500)), garage.ceilingHeight());
    assertTrue(garage.garage());
    assertEquals(Optional.of(Length.mm(250)), d.outerWalls().thickness());
    assertEquals(Optional.of(Length.mm(120)), d.innerWalls().thickness());
    assertFalse(d.outerWalls().masonry(), "there are studs behind the bricks");
    assertEquals(List.of(), d.walls());
    assertEquals(Length.mm(2400), d.levels().get(0).ceilingHeight());
    assertTrue(d.levels().get(0).toFinish().get(0).endsWith("slab is 150 mm thick"));
  }

  @Test
  void openingsOfTheBungalow() throws IOException {
    List<Draft.Hole> holes = Models.draft(BUNGALOW).openings();
    assertEquals(3, holes.size());
    assertHole(holes.get(0), Opening.Kind.DOOR, "Living room", Side.EAST, 1000, 900, 0, 2000);
    assertHole(holes.get(1), Opening.Kind.DOOR, "Garage", Side.EAST, 750, 2500, 0, 2100);
    assertHole(holes.get(2), Opening.Kind.WINDOW, "Living room", Side.SOUTH, 1500, 1500, 900, 2100);
    assertEquals("to Garage", holes.get(0).remark());
    assertEquals("to the outside", holes.get(2).remark());
  }

  private static void assertHole(
      Draft.Hole h, Opening.Kind kind, String room, Side side, long... mm) {
    assertEquals(kind, h.kind());
    assertEquals(new Draft.Face(room, side, 1), h.face());
    assertEquals(side.runsEastWest() ? Side.WEST : Side.SOUTH, h.from());
    List<Length> all = List.of(h.along(), h.width(), h.sill(), h.head());
    assertEquals(
        List.of(Length.mm(mm[0]), Length.mm(mm[1]), Length.mm(mm[2]), Length.mm(mm[3])), all);
  }

  @Test
  void roofsByTheSlopeOfTheirPanes() throws IOException {
    Draft.Cover gable = Models.draft(BUNGALOW).roofs().get(0);
    assertEquals(Roof.Shape.GABLE, gable.shape());
    assertEquals(Direction.EAST_WEST, gable.ridge());
    assertEquals(30.0, gable.degrees());
    assertEquals(Optional.of("Ground floor"), gable.level());
    Draft single = changed(BUNGALOW, "(#193,#205)", "(#193)");
    assertEquals(Roof.Shape.SHED, single.roofs().get(0).shape());
    assertEquals(Optional.of(Side.SOUTH), single.roofs().get(0).lowSide());
    assertTells(single, "no room of the model lies right under it");
    Draft flat =
        changed(
            changed(BUNGALOW),
            "#187=IFCAXIS2PLACEMENT3D(#185,#186,#47)",
            "#187=IFCAXIS2PLACEMENT3D(#185,$,$)");
    assertEquals(List.of(), flat.roofs());
    assertTells(flat, "the roof: no roof of the model could be told");
  }

  /** One pane lies flat now and the other falls along the walls' diagonal. */
  private static String changed(String text) {
    return Models.changed(
        text,
        "#199=IFCAXIS2PLACEMENT3D(#196,#197,#198)",
        "#199=IFCAXIS2PLACEMENT3D(#196,#903,$);#903=IFCDIRECTION((1.,1.,2.))");
  }

  @Test
  void feetAndIndexedCurvesAndFaceSets() throws IOException {
    Draft d = Models.draft(TWO_STOREYS);
    assertFalse(d.metric());
    assertEquals(
        List.of("Ground Floor", "Upper"), d.levels().stream().map(Draft.Level::name).toList());
    assertEquals(Optional.of(Length.inches(111)), d.levels().get(1).rise());
    assertEquals(Optional.of("Ground Floor"), d.levels().get(1).above());
    assertEquals(
        List.of("Kitchen", "Kitchen 002", "Bed O'Hara's é", "Landing"),
        d.rooms().stream().map(Draft.Room::name).toList());
    assertEquals(14 * 12 * 0.09290304, area(d.rooms().get(0)), 1e-6);
    Draft.Room landing = d.rooms().get(3);
    assertEquals(6, landing.outline().size());
    assertEquals((11.625 * 5 + 5.625 * 7) * 0.09290304, area(landing), 1e-6);
    assertEquals(Length.inches(345, 2).nm(), landing.at().orElseThrow().x());
    assertEquals(Optional.of(Length.inches(9, 2)), d.innerWalls().thickness());
    Draft.Hole door = d.openings().get(0);
    assertEquals(Length.inches(24), door.along());
    assertEquals(Length.inches(30), door.width());
    assertEquals(Length.inches(80), door.head());
    assertEquals(Opening.Kind.OPENING, d.openings().get(2).kind());
    assertEquals(Direction.NORTH_SOUTH, d.levels().get(1).joists());
  }

  @Test
  void aHouseAskewIsTurnedSquare() throws IOException {
    Draft d = Models.draft(TURNED);
    assertEquals(24.0 + 2, area(d.rooms().get(0)), 1e-6);
    assertEquals(1.9 * 1.9, area(d.rooms().get(1)), 1e-6);
    assertEquals(6, d.rooms().get(0).outline().size());
    assertEquals(Length.mm(4100).nm(), d.rooms().get(1).at().orElseThrow().x());
    assertEquals(Length.mm(3100).nm(), d.rooms().get(1).at().orElseThrow().y());
    assertTrue(d.about().get(1).contains("27.00 degrees (clockwise)"), d.about()::toString);
    assertEquals(27, d.turned().degrees(), 1e-4);
    assertHole(d.openings().get(0), Opening.Kind.DOOR, "Store", Side.WEST, 500, 800, 0, 2000);
  }

  /**
   * The site's placement turned by a triangle of 3, 4 and 5, 36.87 degrees counter-clockwise: the
   * same house, and how it stands in its model.
   */
  @Test
  void aModelThatStandsTurnedIsTheSameHouse() throws IOException {
    Draft straight = Models.draft(BUNGALOW);
    Draft d =
        changed(
            BUNGALOW,
            "#3=IFCAXIS2PLACEMENT3D(#2,$,$);",
            "#900=IFCDIRECTION((4.,3.,0.));\n#901=IFCDIRECTION((0.,0.,1.));\n"
                + "#3=IFCAXIS2PLACEMENT3D(#2,#901,#900);");
    assertEquals(36.869898, d.turned().degrees(), 1e-9);
    assertTrue(straight.turned().isNone());
    assertEquals(straight.rooms(), d.rooms());
    assertEquals(straight.openings(), d.openings());
    assertEquals(straight.roofs(), d.roofs());
    assertEquals(straight.levels(), d.levels());
  }

  @Test
  void trueNorthIsTold() throws IOException {
    // 3 west and 4 north: 36.87 degrees counter-clockwise of the grid's own.
    Draft d =
        changed(
            BUNGALOW,
            "'Model',3,1.E-05,#5,$);",
            "'Model',3,1.E-05,#5,#900);\n#900=IFCDIRECTION((-3.,4.));");
    assertTrue(
        d.about().stream().anyMatch(a -> a.contains("36.87 degrees counter-clockwise")),
        d.about()::toString);
    assertTrue(d.turned().isNone());
  }

  @ParameterizedTest
  @CsvSource({"5120,5098,98", "5120,5350,350"})
  void aWallUnlikeTheLayersIsTheGapBetweenItsRooms(String was, String is, long gap)
      throws IOException {
    Draft d = changed(BUNGALOW, "(" + was + ".,", "(" + is + ".,");
    assertEquals(Optional.of(Length.mm(gap)), d.innerWalls().thickness());
  }

  @Test
  void brickWithoutStudsIsMasonryAndAStrangeWallIsNamed() throws IOException {
    Draft d = changed(BUNGALOW, "'Timber stud'", "'Air'");
    assertTrue(d.outerWalls().masonry());
    Draft other = changed(BUNGALOW, "(#57,#67,#79,#89),#109", "(#57,#67,#89),#109");
    Draft thick =
        Models.draft(
            Models.changed(
                Models.changed(BUNGALOW, "(#57,#67,#79,#89),#109", "(#57,#67,#89),#109"),
                "#73,4000.,250.)",
                "#73,4000.,300.)"));
    assertEquals(List.of(), other.walls());
    assertEquals(
        List.of(
            new Draft.Wall(
                List.of(),
                Optional.of(new Draft.Face("Living room", Side.WEST, 1)),
                Length.mm(300))),
        thick.walls());
  }

  /** 30 mm is a sill, less is a threshold; a head needs 150 mm under the ceiling. */
  @ParameterizedTest
  @CsvSource({"29,0,2029", "30,30,2030", "250,250,2250", "300,300,2250"})
  void thresholdsAndHeads(int up, long sill, long head) throws IOException {
    String to = "#121=IFCAXIS2PLACEMENT3D(#904,$,$);#904=IFCCARTESIANPOINT((1000.,0.,%d.))";
    Draft d = changed(BUNGALOW, "#121=IFCAXIS2PLACEMENT3D(#120,$,$)", to.formatted(up));
    Draft.Hole door =
        d.openings().stream()
            .filter(h -> h.width().equals(Length.mm(900)))
            .findFirst()
            .orElseThrow();
    assertEquals(Length.mm(sill), door.sill());
    assertEquals("Living room", door.face().room());
    assertEquals(Length.mm(head), door.head());
  }

  @Test
  void unitsAreObeyed() throws IOException {
    assertEquals(2000.0, area(changed(BUNGALOW, ".MILLI.", ".CENTI.").rooms().get(0)), 1e-6);
    Draft inches = changed(TWO_STOREYS, "IFCLENGTHMEASURE(3.048E-1)", "IFCLENGTHMEASURE(0.9144)");
    assertEquals(9 * 14 * 12 * 0.09290304, area(inches.rooms().get(0)), 1e-4);
    Draft silent = changed(BUNGALOW, "IFCUNITASSIGNMENT((#1))", "IFCUNITASSIGNMENT(())");
    assertTells(silent, "no unit of length");
    assertThrows(ModelFault.class, () -> changed(BUNGALOW, ".MILLI.", ".PARSEC."));
  }

  @Test
  void shapesWithinShapes() throws IOException {
    String mapped =
        "#900=IFCSHAPEREPRESENTATION(#6,'Body','SweptSolid',(#25));"
            + "#901=IFCREPRESENTATIONMAP(#23,#900);"
            + "#902=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#4,0.5,$);"
            + "#903=IFCMAPPEDITEM(#901,#902);"
            + "#26=IFCSHAPEREPRESENTATION(#6,'Body','MappedRepresentation',(#903))";
    String plain = "#26=IFCSHAPEREPRESENTATION(#6,'Body','SweptSolid',(#25))";
    assertEquals(5.0, area(changed(BUNGALOW, plain, mapped).rooms().get(0)), 1e-6);
    String uneven =
        mapped.replace("OPERATOR3D(", "OPERATOR3DNONUNIFORM(").replace("0.5,$)", "0.5,$,0.25,1.)");
    assertEquals(2.5, area(changed(BUNGALOW, plain, uneven).rooms().get(0)), 1e-6);
    String clipped =
        "#900=IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#25,#4);" + plain.replace("#25", "#900");
    Draft.Room room = changed(BUNGALOW, plain, clipped).rooms().get(0);
    assertEquals(List.of("what is cut off from its solid was not looked at"), room.toFinish());
    String arc = "IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5))";
    room = changed(TWO_STOREYS, "IFCLINEINDEX((1,2,3,4,5))", arc).rooms().get(0);
    assertEquals(List.of("an arc of its outline is written as straight pieces"), room.toFinish());
  }

  @Test
  void touchingOpeningsAreOneAndStrayOnesAreNamed() throws IOException {
    Draft d =
        changed(
            BUNGALOW,
            "#167=IFCRELFILLSELEMENT(",
            "#900=IFCWINDOW('w',$,'Side light',$,$,#901,$,$,2100.,500.);"
                + "#901=IFCLOCALPLACEMENT(#154,#902);#902=IFCAXIS2PLACEMENT3D(#904,$,$);"
                + "#904=IFCCARTESIANPOINT((2510.,0.,0.));"
                + "#905=IFCWINDOW('v',$,'Far off',$,$,#906,$,$,2100.,500.);"
                + "#906=IFCLOCALPLACEMENT($,#907);#907=IFCAXIS2PLACEMENT3D(#4,$,$);"
                + "#167=IFCRELFILLSELEMENT(");
    assertEquals(3, d.openings().size());
    assertTells(d, "Up and over door and Side light touch each other");
    assertTells(d, "window 'Far off' is beside no room");
    assertEquals(Length.mm(3010), d.openings().get(2).width());
    assertEquals(Opening.Kind.DOOR, d.openings().get(2).kind());
  }
}
