package holloway.gl;

import static org.lwjgl.glfw.GLFW.*;

import java.io.OutputStream;
import java.io.PrintStream;
import java.util.function.Supplier;
import org.lwjgl.glfw.GLFWErrorCallback;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GL33C;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.Platform;

/** Starts the window library, with a window system or without, and makes contexts. */
final class Start {
  private static final String DRIVER =
      "install a graphics driver with OpenGL 3.3 (on Debian and Ubuntu: apt-get install libegl1"
          + " libgl1-mesa-dri)";

  private static String lastError = "";

  private Start() {}

  /** A context that draws without a window system where there is none. */
  static long hidden() {
    return guarded(
        () -> {
          if (Platform.get() == Platform.LINUX) {
            long bare = bare();
            if (bare != 0) {
              return bare;
            }
          }
          if (platform() == GLFW_PLATFORM_NULL) {
            throw new NoDisplay("nothing here can draw a picture: " + DRIVER + why());
          }
          start(platform());
          hints();
          glfwWindowHint(GLFW_VISIBLE, GLFW_FALSE);
          return make(64, 64, "no display and no driver that draws without one: " + DRIVER);
        });
  }

  /** A window that is seen. */
  static long window(int width, int height, String title) {
    return guarded(
        () -> {
          if (platform() == GLFW_PLATFORM_NULL) {
            throw new NoDisplay(noDisplay());
          }
          start(platform());
          hints();
          glfwWindowHint(GLFW_SCALE_TO_MONITOR, GLFW_TRUE);
          glfwWindowHint(GLFW_VISIBLE, GLFW_FALSE);
          long w = glfwCreateWindow(width, height, title, 0, 0);
          return current(w, "no window with OpenGL 3.3 can be opened: " + DRIVER);
        });
  }

  /**
   * The window system that the surroundings name; asking one that is not there makes it complain.
   */
  private static int platform() {
    if (Platform.get() != Platform.LINUX || isSet("WAYLAND_DISPLAY")) {
      return GLFW_ANY_PLATFORM;
    }
    return isSet("DISPLAY") ? GLFW_PLATFORM_X11 : GLFW_PLATFORM_NULL;
  }

  private static boolean isSet(String name) {
    String value = System.getenv(name);
    return value != null && !value.isEmpty();
  }

  private static long bare() {
    try {
      start(GLFW_PLATFORM_NULL);
    } catch (NoDisplay e) {
      return 0;
    }
    hints();
    glfwWindowHint(GLFW_CONTEXT_CREATION_API, GLFW_EGL_CONTEXT_API);
    long w = glfwCreateWindow(64, 64, "", 0, 0);
    if (w == 0) {
      glfwTerminate();
      return 0;
    }
    return current(w, DRIVER);
  }

  private static void start(int platform) {
    Configuration.DEBUG_STREAM.set(new PrintStream(OutputStream.nullOutputStream()));
    if (Platform.get() == Platform.MACOSX) {
      // There windows belong to the first thread, and Java's main is not it.
      Configuration.GLFW_LIBRARY_NAME.set("glfw_async");
    }
    GLFWErrorCallback old =
        glfwSetErrorCallback((code, text) -> lastError = text == 0 ? "" : MemoryUtil.memUTF8(text));
    if (old != null) {
      old.free();
    }
    glfwInitHint(GLFW_PLATFORM, platform);
    if (!glfwInit()) {
      throw new NoDisplay(noDisplay());
    }
  }

  private static String noDisplay() {
    return "there is no display to open a window on; picture draws without one (%s)"
        .formatted(lastError.isEmpty() ? "no window system answers" : plain(lastError));
  }

  private static String why() {
    return lastError.isEmpty() ? "" : " (" + plain(lastError) + ")";
  }

  private static String plain(String text) {
    return text.replaceAll("^[A-Za-z0-9]+: ", "").strip();
  }

  private static void hints() {
    glfwDefaultWindowHints();
    glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
    glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
    glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
    glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
  }

  private static long make(int width, int height, String otherwise) {
    return current(glfwCreateWindow(width, height, "", 0, 0), otherwise);
  }

  private static long current(long window, String otherwise) {
    if (window == 0) {
      glfwTerminate();
      throw new NoDisplay(otherwise + why());
    }
    glfwMakeContextCurrent(window);
    if (!GL.createCapabilities(true).OpenGL33) {
      String has = GL33C.glGetString(GL33C.GL_VERSION);
      glfwDestroyWindow(window);
      glfwTerminate();
      throw new NoDisplay("the graphics driver has OpenGL " + has + "; " + DRIVER);
    }
    return window;
  }

  /** What a missing library throws is not an exception of ours but an error of the machine. */
  private static long guarded(Supplier<Long> start) {
    try {
      return start.get();
    } catch (LinkageError | InternalError | IllegalStateException e) {
      throw new NoDisplay("nothing here can draw (%s): %s".formatted(first(e), DRIVER));
    }
  }

  private static String first(Throwable e) {
    String says = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return says.lines().findFirst().orElse("").strip();
  }

  static void close(long window) {
    GL.setCapabilities(null);
    glfwMakeContextCurrent(0);
    glfwDestroyWindow(window);
    glfwTerminate();
    GLFWErrorCallback old = glfwSetErrorCallback(null);
    if (old != null) {
      old.free();
    }
  }
}
