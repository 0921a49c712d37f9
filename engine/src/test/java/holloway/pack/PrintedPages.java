package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where the letters of a PDF stand. */
final class PrintedPages {
  private static final double POINTS = 72 / 25.4;

  /** Margins of both styles, millimetres; what is numbered at the foot stands in the lowest. */
  private static final double SIDE = 14;

  private static final double TOP = 16;
  private static final double FOOT = 8;

  private PrintedPages() {}

  /** Every page is of that size, and every letter stands between its margins. */
  static void within(byte[] file, PaperSize paper) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file)) {
      assertTrue(pdf.getNumberOfPages() > 1);
      for (PDPage page : pdf.getPages()) {
        PDRectangle box = page.getMediaBox();
        assertEquals(paper.wideMm(), box.getWidth() / POINTS, 0.5);
        assertEquals(paper.highMm(), box.getHeight() / POINTS, 0.5);
      }
      List<String> outside = new ArrayList<>();
      int letters = new Letters(outside, paper).count(pdf);
      assertEquals(List.of(), outside, "letters over the margin");
      assertTrue(letters > 2000, letters + " letters in all");
    }
  }

  private static final class Letters extends PDFTextStripper {
    private final List<String> outside;
    private final PaperSize paper;
    private int seen;

    Letters(List<String> outside, PaperSize paper) {
      this.outside = outside;
      this.paper = paper;
    }

    int count(PDDocument pdf) throws IOException {
      getText(pdf);
      return seen;
    }

    @Override
    protected void processTextPosition(TextPosition t) {
      super.processTextPosition(t);
      seen++;
      double x0 = t.getX() / POINTS;
      double y1 = t.getY() / POINTS;
      double x1 = x0 + t.getWidth() / POINTS;
      double y0 = y1 - t.getHeight() / POINTS;
      boolean in =
          x0 >= SIDE - 0.2
              && x1 <= paper.wideMm() - SIDE + 0.2
              && y0 >= TOP - 0.2
              && y1 <= paper.highMm() - FOOT;
      if (!in && !t.getUnicode().isBlank()) {
        outside.add(
            "page %d: %s at %.1f %.1f".formatted(getCurrentPageNo(), t.getUnicode(), x0, y1));
      }
    }
  }
}
