package holloway.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Where nothing can draw, one sentence says what to do, and nothing is left behind. */
@EnabledOnOs(OS.LINUX)
final class NoDisplayTest {
  private static final String HOUSE = Path.of("src", "test", "resources", "hut.yaml").toString();

  @TempDir Path dir;

  private record Said(int code, String out, String err) {}

  private Said run(Map<String, String> env, List<String> jvm, String... args)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(jvm);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "holloway.app.Main"));
    command.addAll(List.of(args));
    Path out = dir.resolve("out");
    Path err = dir.resolve("err");
    ProcessBuilder p =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    p.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
    p.environment().putAll(env);
    int code = p.start().waitFor();
    return new Said(code, Files.readString(out), Files.readString(err));
  }

  private void oneSentence(Said s, String advice) {
    assertEquals(7, s.code, s.err);
    assertEquals("", s.out);
    assertEquals(1, s.err.lines().count(), s.err);
    assertTrue(s.err.startsWith("holloway: "), s.err);
    assertTrue(s.err.contains(advice), s.err);
    assertFalse(Files.exists(dir.resolve("p.png")));
  }

  private String[] picture() {
    return new String[] {
      "picture", HOUSE, "--of", "hole", "H1", "--out", dir.resolve("p.png").toString()
    };
  }

  @Test
  void aPictureWithoutADriverSaysWhatToInstall() throws Exception {
    String none = dir.resolve("none.json").toString();
    Said s = run(Map.of("__EGL_VENDOR_LIBRARY_FILENAMES", none), List.of(), picture());
    oneSentence(s, "apt-get install libegl1 libgl1-mesa-dri");
  }

  @Test
  void aDriverThatIsTooOldSaysWhatToInstall() throws Exception {
    Said s = run(Map.of("MESA_GL_VERSION_OVERRIDE", "2.1"), List.of(), picture());
    oneSentence(s, "OpenGL 3.3");
  }

  @Test
  void aWindowLibraryThatCannotBeLoadedIsNoStackTrace() throws Exception {
    String missing = dir.resolve("libnone.so").toString();
    Said s = run(Map.of(), List.of("-Dorg.lwjgl.glfw.libname=" + missing), picture());
    oneSentence(s, "install a graphics driver");
  }

  @Test
  void aWindowWithoutADisplayPointsToPictures() throws Exception {
    oneSentence(run(Map.of(), List.of(), "view", HOUSE), "picture draws without one");
  }
}
