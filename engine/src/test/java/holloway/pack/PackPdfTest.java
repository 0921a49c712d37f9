package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Node;

/** The PDF of the pack, read back; {@code -Dholloway.samples=all}: of every sample. */
class PackPdfTest {
  private static final Map<String, byte[]> MADE = new TreeMap<>();

  /** Each once for all tests. */
  private static byte[] pdf(String house, Language language, PaperSize paper) {
    return MADE.computeIfAbsent(
        house + language + paper,
        k ->
            PackedHouse.files(PackedHouse.of(house), language, paper, Pictures.none("not asked"))
                .get("pack.pdf"));
  }

  /** Houses with the languages they are read in; of the one sample of every run English. */
  static Stream<Arguments> houses() {
    boolean all = "all".equals(System.getProperty("holloway.samples"));
    return PackedHouse.samples().stream()
        .flatMap(
            h ->
                Stream.of(Language.values())
                    .filter(l -> all || h.equals(PackedHouse.FIRST) || l == Language.ENGLISH)
                    .map(l -> Arguments.of(h, l)));
  }

  @ParameterizedTest
  @MethodSource("houses")
  void nothingIsCutOff(String house, Language language) throws IOException {
    for (PaperSize paper : PaperSize.values()) {
      PrintedPages.within(pdf(house, language, paper), paper);
    }
  }

  /**
   * A letter that the type lacks would be another one in the PDF, so its text would not be there.
   */
  @ParameterizedTest
  @MethodSource("houses")
  void allTextCanBeSelected(String house, Language language) throws Exception {
    String there = new PdfText(pdf(house, language, PaperSize.A4)).all();
    List<String> texts = new ArrayList<>();
    var read = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    String page = PackedHouse.paper(PackedHouse.of(house), language, PaperSize.A4);
    byte[] bytes = page.getBytes(StandardCharsets.UTF_8);
    collect(
        read.parse(new ByteArrayInputStream(bytes)).getElementsByTagName("body").item(0), texts);
    assertTrue(texts.size() > 300, texts.size() + " texts");
    List<String> missing =
        texts.stream().filter(t -> !there.contains(PdfText.bare(t))).distinct().toList();
    assertEquals(List.of(), missing);
  }

  /** Every text of the page and of its drawings. */
  private static void collect(Node n, List<String> to) {
    if (n.getNodeType() == Node.TEXT_NODE && !n.getNodeValue().isBlank()) {
      to.add(n.getNodeValue());
    }
    boolean shown = !List.of("style", "title", "defs").contains(n.getNodeName());
    for (Node c = n.getFirstChild(); shown && c != null; c = c.getNextSibling()) {
      collect(c, to);
    }
  }

  @ParameterizedTest
  @MethodSource("holloway.pack.PackedHouse#samples")
  void bookmarksLeadToWhatTheySay(String house) throws IOException {
    byte[] file = pdf(house, Language.ENGLISH, PaperSize.LETTER);
    List<String> pages = new PdfText(file).pages();
    Map<String, Integer> marks = new LinkedHashMap<>();
    try (PDDocument pdf = Loader.loadPDF(file)) {
      marks(pdf, pdf.getDocumentCatalog().getDocumentOutline(), marks);
    }
    Map<String, String> texts = Language.ENGLISH.texts();
    for (String key : List.of("do", "check", "buy", "holes", "order", "runs", "test", "plans")) {
      assertTrue(marks.containsKey(texts.get(key)), texts.get(key));
    }
    PackedHouse.of(house)
        .planned()
        .plan()
        .holes()
        .forEach(h -> assertTrue(marks.containsKey(h.label())));
    marks.forEach((name, page) -> assertTrue(pages.get(page).contains(PdfText.bare(name)), name));
    assertEquals(marks.values().stream().sorted().toList(), List.copyOf(marks.values()));
  }

  /** Three rows of drawings are not three lines of a text, which would rather stay together. */
  @ParameterizedTest
  @MethodSource("holloway.pack.PackedHouse#samples")
  void whereCableFirstPassesAFloorStandsUnderItsHeading(String house) throws IOException {
    String heading = PdfText.bare(Language.ENGLISH.texts().get("floors"));
    for (PaperSize paper : PaperSize.values()) {
      List<String> pages = new PdfText(pdf(house, Language.ENGLISH, paper)).pages();
      pages.stream()
          .filter(p -> p.contains(heading))
          .forEach(p -> assertTrue(p.contains(PdfText.bare("F1:")), p));
    }
  }

  private static void marks(PDDocument pdf, PDOutlineNode under, Map<String, Integer> to)
      throws IOException {
    for (PDOutlineItem i : under.children()) {
      to.put(i.getTitle(), pdf.getPages().indexOf(i.findDestinationPage(pdf)));
      marks(pdf, i, to);
    }
  }

  @ParameterizedTest
  @MethodSource("holloway.pack.PackedHouse#samples")
  void numbersAreThePlans(String house) throws IOException {
    PdfText text = new PdfText(pdf(house, Language.ENGLISH, PaperSize.A4));
    new PrintedNumbers(text, PackedHouse.json(PackedHouse.of(house))).check();
  }
}
