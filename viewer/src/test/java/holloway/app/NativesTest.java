package holloway.app;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the jar is made of holds the libraries of all five desktops, wherever it was built. */
class NativesTest {
  @ParameterizedTest
  @CsvSource({
    "linux/x64, lib, .so, glfw",
    "linux/arm64, lib, .so, glfw",
    "windows/x64, '', .dll, glfw",
    "macos/x64, lib, .dylib, glfw_async",
    "macos/arm64, lib, .dylib, glfw_async"
  })
  void aPlatformHasItsLibraries(String platform, String before, String after, String window) {
    isThere(platform, "org/lwjgl", before + "lwjgl" + after);
    isThere(platform, "org/lwjgl/glfw", before + window + after);
    isThere(platform, "org/lwjgl/opengl", before + "lwjgl_opengl" + after);
    isThere(platform, "org/lwjgl/nuklear", before + "lwjgl_nuklear" + after);
    isThere(platform, "org/lwjgl/stb", before + "lwjgl_stb" + after);
  }

  private static void isThere(String platform, String where, String file) {
    String path = platform + "/" + where + "/" + file;
    assertNotNull(NativesTest.class.getClassLoader().getResource(path), path);
  }
}
