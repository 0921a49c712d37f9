package holloway.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point2;
import holloway.house.WallSpec;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Survey;
import holloway.survey.Wall;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The drawings of the sample houses, read back and compared with the survey. */
class FloorDrawingTest {
  private static final Path SAMPLES = Path.of("..", "samples");

  private record Drawn(Placed placed, PlacedLevel level, Document xml) {}

  private static List<Drawn> drawn(String house) throws Exception {
    Reading.Sound sound = (Reading.Sound) HouseFile.read(SAMPLES.resolve(house + ".yaml"));
    Placed placed = Survey.of(sound.house()).value();
    List<Drawn> out = new ArrayList<>();
    for (PlacedLevel l : placed.levels()) {
      String svg = FloorDrawing.level(placed, sound.request(), l, UnitSystem.METRIC);
      out.add(new Drawn(placed, l, read(svg)));
      out.add(
          new Drawn(
              placed, l, read(FloorDrawing.level(placed, sound.request(), l, UnitSystem.FT_IN))));
    }
    assertEquals(
        placed.levels().size(), FloorDrawing.of(placed, sound.request(), UnitSystem.METRIC).size());
    return out;
  }

  private static Document read(String svg) throws Exception {
    var in = new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8));
    return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
  }

  private static List<Element> list(Document xml, String tag, String kind) {
    List<Element> out = new ArrayList<>();
    NodeList all = xml.getElementsByTagName(tag);
    for (int i = 0; i < all.getLength(); i++) {
      Element e = (Element) all.item(i);
      if (Arrays.asList(e.getAttribute("class").split(" ")).contains(kind)) {
        out.add(e);
      }
    }
    return out;
  }

  private static Element get(Document xml, String kind, String of) {
    List<Element> found =
        list(xml, "polygon", kind).stream()
            .filter(e -> e.getAttribute("data-of").equals(of))
            .toList();
    assertEquals(1, found.size(), kind + " " + of);
    return found.get(0);
  }

  private static List<double[]> points(Element polygon) {
    return Arrays.stream(polygon.getAttribute("points").split(" "))
        .map(p -> Arrays.stream(p.split(",")).mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  private static void assertAt(Point2 p, double[] drawn, String what) {
    assertEquals(p.x() / 1e6, drawn[0], 1, what);
    assertEquals(-p.y() / 1e6, drawn[1], 1, what);
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street"})
  void roomsAndWallsAreWhereTheSurveyHasThem(String house) throws Exception {
    for (Drawn d : drawn(house)) {
      for (PlacedRoom r : d.placed.rooms()) {
        if (r.room().level().equals(d.level.name())) {
          List<double[]> ring = points(get(d.xml, "room", r.name()));
          assertEquals(r.outline().corners().size(), ring.size());
          for (int i = 0; i < ring.size(); i++) {
            assertAt(r.outline().corners().get(i), ring.get(i), r.name());
          }
        }
      }
      for (Wall w : d.placed.walls()) {
        if (w.level().equals(d.level.name())) {
          List<double[]> ring = points(get(d.xml, "wall", w.id()));
          assertAt(w.world(0, 0, 0).plan(), ring.get(0), w.id());
          assertAt(w.world(w.length(), w.thickness(), 0).plan(), ring.get(2), w.id());
          if (w.kind() != WallSpec.Kind.OPEN) { // nothing stands there but a header
            points(get(d.xml, "core", w.id()));
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street"})
  void everyOpeningIsAGapOfItsStatedWidth(String house) throws Exception {
    for (Drawn d : drawn(house)) {
      List<Tags.Tag> tags = Tags.of(d.placed, d.level.name());
      for (Tags.Tag t : tags) {
        List<double[]> ring = points(get(d.xml, "gap", t.name()));
        double wide = Math.hypot(ring.get(1)[0] - ring.get(0)[0], ring.get(1)[1] - ring.get(0)[1]);
        assertEquals(t.opening().opening().width().value().toMm(), wide, 1, t.name());
        Point2 mid = t.wall().world(t.opening().s().mid(), t.wall().thickness() / 2, 0).plan();
        double[] centre = {
          (ring.get(0)[0] + ring.get(2)[0]) / 2, (ring.get(0)[1] + ring.get(2)[1]) / 2
        };
        assertAt(mid, centre, t.name());
      }
      assertEquals(tags.size(), list(d.xml, "polygon", "gap").size());
    }
  }

  /** In the hall and in the hall over it, and in none of their neighbours'. */
  @ParameterizedTest
  @CsvSource({
    "alder-lane, hall, landing",
    "plumb-corner, hall, upper hall",
    "tin-street, hall, landing",
    "wren-hollow, stair hall, landing"
  })
  void aStairsNameStandsInItsOwnRoom(String house, String up, String down) throws Exception {
    int written = 0;
    for (Drawn d : drawn(house)) {
      for (Element e : list(d.xml, "text", "shaft")) {
        String text = e.getTextContent();
        if (text.startsWith("main stair, ")) {
          PlacedRoom own = d.placed.getRoom(text.endsWith("up") ? up : down);
          assertTrue(RoomNames.lies(own, box(e)), house + " " + d.level.name() + ": " + text);
          written++;
        }
      }
    }
    assertEquals(4, written, "up and down, metric and in feet");
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-lane", "plumb-corner", "quince-ranch", "tin-street"})
  void everyNameIsWrittenAndNoTextLiesOnAnother(String house) throws Exception {
    for (Drawn d : drawn(house)) {
      String names =
          list(d.xml, "text", "name").stream()
              .map(Element::getTextContent)
              .collect(Collectors.joining(" ", " ", " "));
      for (PlacedRoom r : d.placed.rooms()) {
        if (r.room().level().equals(d.level.name())) {
          assertTrue(names.contains(" " + r.name() + " "), r.name() + " in " + names);
        }
      }
      List<Element> texts = new ArrayList<>();
      for (String kind : List.of("name", "size", "dim", "tag", "wanted", "seen", "shaft")) {
        texts.addAll(list(d.xml, "text", kind));
      }
      for (int i = 0; i < texts.size(); i++) {
        for (int j = i + 1; j < texts.size(); j++) {
          double shared = box(texts.get(i)).shared(box(texts.get(j)));
          String both = texts.get(i).getTextContent() + " on " + texts.get(j).getTextContent();
          assertEquals(0, shared, both);
        }
      }
    }
  }

  /** The room that a text takes: letters half as wide as high, which sans-serif type keeps to. */
  private static Rect box(Element text) {
    double size = Double.parseDouble(text.getAttribute("font-size"));
    double wide = text.getTextContent().length() * size * 0.5;
    double x = Double.parseDouble(text.getAttribute("x"));
    double y = Double.parseDouble(text.getAttribute("y"));
    return text.hasAttribute("transform")
        ? Rect.around(x, y, size, wide)
        : Rect.around(x, y, wide, size);
  }

  @Test
  void theChainTellsTheClearWidthOfTheFirstRoom() throws Exception {
    Drawn ground = drawn("alder-lane").get(0);
    TreeSet<String> dims = new TreeSet<>();
    list(ground.xml, "text", "dim").forEach(e -> dims.add(e.getTextContent()));
    String garage =
        UnitSystem.METRIC.format(
            new Length(ground.placed.getRoom("garage").outline().xRange().length()));
    assertTrue(dims.contains(garage), garage + " in " + dims);
  }

  @Test
  void theSheetHoldsAllThatIsDrawn() throws Exception {
    for (Drawn d : drawn("quince-ranch")) {
      double[] view =
          Arrays.stream(d.xml.getDocumentElement().getAttribute("viewBox").split(" "))
              .mapToDouble(Double::parseDouble)
              .toArray();
      Rect sheet = new Rect(view[0], view[1], view[0] + view[2], view[1] + view[3]);
      NodeList all = d.xml.getElementsByTagName("polygon");
      for (int i = 0; i < all.getLength(); i++) {
        assertTrue(sheet.holds(Rect.of(points((Element) all.item(i)))));
      }
      double mm =
          Double.parseDouble(d.xml.getDocumentElement().getAttribute("width").replace("mm", ""));
      assertEquals(view[2] / 50, mm, 0.1);
    }
  }

  @Test
  void namesOfFilesAreSafe() {
    assertEquals("upper-2", FloorDrawing.fileName("Upper 2"));
    assertEquals("a-b", FloorDrawing.fileName("../a/b"));
    assertEquals("level", FloorDrawing.fileName("..."));
    assertEquals("&lt;&amp;&gt;&quot;", Svg.escaped("<&>\""));
  }
}
