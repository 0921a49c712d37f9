package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The PDF of the pack, read back, says what the plan beside it says. */
class PackVerbTest {
  @TempDir Path folder;

  private static int say(String... args) {
    PrintStream nowhere = new PrintStream(new ByteArrayOutputStream());
    return Holloway.run(args, nowhere, nowhere);
  }

  @Test
  void paperSaysWhatThePlanSays() throws Exception {
    Path house = folder.resolve("first.yaml");
    assertEquals(0, say("start", "--out", house.toString()));
    Path out = folder.resolve("pack");
    assertEquals(
        0,
        say(
            "pack",
            house.toString(),
            "--out",
            out.toString(),
            "--units",
            "metric",
            "--effort",
            "quick"));
    JsonNode plan = new ObjectMapper().readTree(out.resolve("plan.json").toFile());
    String page = Files.readString(out.resolve("index.html"));
    try (PDDocument pdf = Loader.loadPDF(out.resolve("pack.pdf").toFile())) {
      assertNotNull(pdf.getDocumentCatalog().getDocumentOutline().getFirstChild());
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertTrue(plan.get("holes").size() > 0 && plan.get("runs").size() > 0);
      for (JsonNode h : plan.get("holes")) {
        String head = h.get("label").asText() + ": " + h.get("kind").asText() + ", ";
        String size = h.get("diameter-mm").asInt() + " mm";
        assertTrue(text.contains(head + size), head + size);
        for (JsonNode line : h.get("tape").get("side-a")) {
          assertTrue(text.contains(line.asText()), line.asText());
          assertTrue(page.contains(line.asText()), line.asText());
        }
      }
      for (JsonNode r : plan.get("runs")) {
        assertTrue(text.contains(r.get("id").asText()), r.get("id").asText());
      }
    }
  }
}
