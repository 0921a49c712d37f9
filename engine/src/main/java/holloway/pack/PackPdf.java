package holloway.pack;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Turns the paper form of the page into a PDF. */
final class PackPdf {
  private PackPdf() {}

  /**
   * @param page well-formed, with its own style
   */
  static byte[] of(String page) {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder b = new PdfRendererBuilder();
    b.useFont(() -> font("LiberationSans-Regular"), "Pack", 400, FontStyle.NORMAL, true);
    b.useFont(() -> font("LiberationSans-Bold"), "Pack", 700, FontStyle.NORMAL, true);
    b.useFont(() -> font("LiberationSans-Italic"), "Pack", 400, FontStyle.ITALIC, true);
    b.useFont(() -> font("LiberationSans-BoldItalic"), "Pack", 700, FontStyle.ITALIC, true);
    b.useSVGDrawer(new BatikSVGDrawer());
    b.withHtmlContent(page, null);
    b.withProducer("Holloway");
    b.toStream(out);
    try {
      b.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static InputStream font(String name) {
    return PackPdf.class.getResourceAsStream("/liberation/" + name + ".ttf");
  }
}
