package holloway.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.cli.Holloway;
import holloway.gl.Driver;
import holloway.pipeline.Progress;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture of a plan that cannot be, or must not, ends with the code that {@code plan} gives. */
final class PictureCodesTest {
  private static final Path HUT = Path.of("src", "test", "resources", "hut.yaml");

  @TempDir Path dir;

  private record Said(int code, String text) {}

  @BeforeEach
  void driver() {
    Driver.orSkip().close();
  }

  private String hut(String more) throws IOException {
    return Files.writeString(dir.resolve("hut.yaml"), Files.readString(HUT) + more).toString();
  }

  /** Foam fills the only wall that leads to the printer, and nothing may lie on a surface. */
  private String unreachable() throws IOException {
    return hut(
        """
        walls: [{ side: office north, fill: foam }]
        wishes: { bans: [surface] }
        """);
  }

  private static Said said(String... args) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(all, true, StandardCharsets.UTF_8);
    int code =
        Holloway.run(
            args,
            out,
            out,
            new ViewVerb(out, out, Progress.SILENT),
            new PictureVerb(out, Progress.SILENT));
    return new Said(code, all.toString(StandardCharsets.UTF_8));
  }

  private Said picture(String house, String kind, String name) {
    String to = dir.resolve("p.png").toString();
    return said(
        "picture",
        house,
        "--effort",
        "quick",
        "--size",
        "320x240",
        "--of",
        kind,
        name,
        "--out",
        to);
  }

  private int plan(String house) {
    return said("plan", house, "--effort", "quick").code();
  }

  @Test
  void whereAllIsWellItIsZero() throws Exception {
    String house = hut("");
    assertEquals(0, plan(house));
    assertEquals(new Said(0, ""), picture(house, "level", "main"));
  }

  @Test
  void aRunWithoutARouteIsToldAndTheOthersAreDrawn() throws Exception {
    String house = unreachable();
    assertEquals(4, plan(house));
    Said level = picture(house, "level", "main");
    assertEquals(4, level.code(), level.text());
    assertTrue(level.text().contains("not in the picture, no route: printer/cat6-1"), level.text());
    assertTrue(Files.exists(dir.resolve("p.png")));
  }

  /** It is no mistake of the command line to ask for it: the house has it. */
  @Test
  void ofARunWithoutARouteThereIsNoPictureAndItSaysWhy() throws Exception {
    Said run = picture(unreachable(), "run", "printer/cat6-1");
    assertEquals(4, run.code(), run.text());
    assertTrue(run.text().contains("no picture, no route: printer/cat6-1"), run.text());
    assertTrue(run.text().contains("foam"), run.text());
    assertFalse(Files.exists(dir.resolve("p.png")));
  }

  @Test
  void aPlanThatBreaksALawIsDrawnAndSaidSo() throws Exception {
    String house =
        hut("things: [{ socket, in: office, wall: north, from: west 5 ft, height: 16 in }]\n");
    assertEquals(5, plan(house));
    Said level = picture(house, "level", "main");
    assertEquals(5, level.code(), level.text());
    assertTrue(level.text().contains("breaks a rule of law"), level.text());
    assertTrue(Files.exists(dir.resolve("p.png")));
  }
}
