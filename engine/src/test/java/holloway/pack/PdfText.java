package holloway.pack;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What can be selected in a PDF, page by page in the order of the page, without blanks. */
final class PdfText {
  private final List<String> pages = new ArrayList<>();
  private final StringBuilder blanks = new StringBuilder();

  PdfText(byte[] file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file)) {
      for (int n = 1; n <= pdf.getNumberOfPages(); n++) {
        Body body = new Body(pdf.getPage(n - 1).getMediaBox().getHeight());
        body.setStartPage(n);
        body.setEndPage(n);
        String text = body.getText(pdf);
        pages.add(bare(text));
        blanks.append(' ').append(text.replaceAll("[\\s\u00a0]+", " "));
      }
    }
  }

  List<String> pages() {
    return pages;
  }

  String all() {
    return String.join("", pages);
  }

  /** The same with one blank wherever there are some, lines' ends among them. */
  String blanks() {
    return blanks.toString();
  }

  static String bare(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "");
  }

  /** Without the numbers of pages in the margin at the foot. */
  private static final class Body extends PDFTextStripper {
    private final double foot;

    Body(double high) {
      foot = high - 18 * 72 / 25.4;
    }

    @Override
    protected void processTextPosition(TextPosition t) {
      if (t.getY() < foot) {
        super.processTextPosition(t);
      }
    }
  }
}
