package holloway.gl;

import static org.lwjgl.glfw.GLFW.*;
import static org.lwjgl.nuklear.Nuklear.*;
import static org.lwjgl.opengl.GL33C.*;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Pixels;
import holloway.look.Session;
import holloway.look.Sheet;
import holloway.look.Theme;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.lwjgl.glfw.Callbacks;
import org.lwjgl.nuklear.NkContext;
import org.lwjgl.nuklear.NkVec2;
import org.lwjgl.system.MemoryStack;

/** A window that shows a session. A frame is drawn when something changed, and else never. */
public final class Window implements AutoCloseable {
  private static final double REST = 0.1;

  private static final double SOON = 0.008;

  private static final float CLICK = 5;

  /** Seconds after which an eye that moved is at rest. */
  private static final double AT_REST = 0.15;

  private final long window;
  private final Session session;
  private final Painter painter;
  private final NkDraw draws;
  private final NkContext context;
  private final Deque<Runnable> events = new ArrayDeque<>();
  private NkFonts fonts;
  private List<Area> panels = List.of();
  private Target target;
  private Sheet drawn;
  private Theme dressed;
  private long frames;
  private long houses;

  /** When the eye was last moved by hand, seconds of the window's clock. */
  private double turned = -1;

  private boolean rough;
  private boolean touched = true;
  private boolean frameAfter;
  private float px;
  private float py;
  private float pressedX;
  private float pressedY;
  private int held = -1;
  private boolean moved;
  private boolean onPanel;
  private String title = "";

  private Window(Session session, int width, int height) {
    this.session = session;
    window = Start.window(width, height, session.title());
    painter = new Painter();
    draws = new NkDraw();
    context = NkContext.calloc();
    fonts = new NkFonts(painter.letters(), Canvas.TYPE);
    nk_init(context, draws.memory(), fonts.plain);
    listen();
    resized();
  }

  /**
   * Opens a window that nobody sees and closes it again.
   *
   * @throws NoDisplay when no window can be opened
   */
  public static void probe() {
    Start.close(Start.window(64, 64, ""));
  }

  /**
   * Shows a session until it is over or the window is closed.
   *
   * @throws NoDisplay when no window can be opened; then nothing was started
   */
  public static void show(Session session, int width, int height) {
    try (Window w = new Window(session, width, height)) {
      glfwShowWindow(w.window);
      w.run();
    }
  }

  private void run() {
    while (!session.isOver() && !glfwWindowShouldClose(window)) {
      if (events.isEmpty()) {
        double rest = session.isWaiting() ? SOON : rough ? 0.03 : REST;
        glfwWaitEventsTimeout(touched || session.isStale() ? 0.001 : rest);
      }
      nk_input_begin(context);
      frameAfter = false;
      // One press or release a frame: the panels would not see a quick click otherwise.
      while (!events.isEmpty() && !frameAfter) {
        events.poll().run();
      }
      nk_input_end(context);
      session.tick();
      if (rough && !isMoving()) {
        // At rest it is drawn once more, as well as it can be.
        drawn = null;
        touched = true;
      }
      if (touched || session.isStale()) {
        frame();
      }
    }
  }

  private void listen() {
    glfwSetFramebufferSizeCallback(window, (w, x, y) -> events.add(this::resized));
    glfwSetWindowContentScaleCallback(window, (w, x, y) -> events.add(this::resized));
    glfwSetWindowRefreshCallback(window, w -> touched = true);
    glfwSetCursorPosCallback(window, (w, x, y) -> events.add(() -> pointer(x, y)));
    glfwSetMouseButtonCallback(
        window, (w, button, action, mods) -> events.add(() -> button(button, action, mods)));
    glfwSetScrollCallback(window, (w, x, y) -> events.add(() -> wheel((float) y)));
    glfwSetKeyCallback(
        window,
        (w, key, code, action, mods) -> {
          if (action != GLFW_RELEASE) {
            events.add(() -> key(key, code, mods));
          }
        });
  }

  private void resized() {
    int[] w = new int[1];
    int[] h = new int[1];
    glfwGetFramebufferSize(window, w, h);
    float[] scale = new float[1];
    glfwGetWindowContentScale(window, scale, new float[1]);
    if (w[0] < 1 || h[0] < 1) {
      return;
    }
    if (target != null) {
      target.close();
    }
    target = new Target(w[0], h[0]);
    drawn = null;
    touched = true;
    session.resized(w[0], h[0], Math.max(1, scale[0]));
  }

  /** Pixels of what is drawn for each step of the pointer: more than one on some systems. */
  private float dense() {
    int[] w = new int[1];
    glfwGetWindowSize(window, w, new int[1]);
    return w[0] == 0 ? 1 : (float) target.width / w[0];
  }

  private boolean overPanel(float x, float y) {
    return panels.stream()
        .anyMatch(a -> x >= a.x() && x < a.right() && y >= a.y() && y < a.bottom());
  }

  private void pointer(double wx, double wy) {
    float x = (float) wx * dense();
    float y = (float) wy * dense();
    nk_input_motion(context, Math.round(x), Math.round(y));
    boolean wasOn = overPanel(px, py);
    if (held >= 0 && !onPanel) {
      moved |= Math.hypot(x - pressedX, y - pressedY) > CLICK;
      if (moved) {
        boolean shift = glfwGetKey(window, GLFW_KEY_LEFT_SHIFT) == GLFW_PRESS;
        turned = glfwGetTime();
        session.drag(x - px, y - py, held != GLFW_MOUSE_BUTTON_LEFT || shift);
      }
    }
    px = x;
    py = y;
    touched |= wasOn || overPanel(x, y);
  }

  private void button(int button, int action, int mods) {
    boolean down = action == GLFW_PRESS;
    if (button == GLFW_MOUSE_BUTTON_LEFT) {
      nk_input_button(context, NK_BUTTON_LEFT, Math.round(px), Math.round(py), down);
    }
    frameAfter = true;
    touched = true;
    if (down) {
      held = button;
      moved = false;
      pressedX = px;
      pressedY = py;
      onPanel = overPanel(px, py);
    } else {
      if (held == GLFW_MOUSE_BUTTON_LEFT && !moved && !onPanel) {
        session.click(px, py);
      }
      held = -1;
    }
  }

  private void wheel(float steps) {
    if (overPanel(px, py)) {
      try (MemoryStack stack = MemoryStack.stackPush()) {
        nk_input_scroll(context, NkVec2.malloc(stack).set(0, steps));
      }
      frameAfter = true;
      touched = true;
    } else {
      turned = glfwGetTime();
      session.wheel(steps, px, py);
    }
  }

  private void key(int key, int code, int mods) {
    boolean shift = (mods & GLFW_MOD_SHIFT) != 0;
    boolean control = (mods & (GLFW_MOD_CONTROL | GLFW_MOD_SUPER)) != 0;
    Keys.of(key, code).ifPresent(k -> session.key(k, shift, control));
  }

  private void frame() {
    touched = false;
    Sheet sheet = session.sheet(painter.letters());
    dress(sheet.theme(), session.typeSize());
    if (sheet != drawn) {
      draw(sheet);
    }
    target.show();
    NkPanels said = new NkPanels(context, fonts, sheet.theme());
    session.panels(said);
    panels = List.copyOf(said.areas());
    glViewport(0, 0, target.width, target.height);
    painter.flat(target.width, target.height);
    draws.draw(context, target.height);
    painter.over(said.samples(), target.width, target.height);
    frames++;
    if (session.wantsPicture()) {
      glBindFramebuffer(GL_FRAMEBUFFER, 0);
      glReadBuffer(GL_BACK);
      byte[] pixels = Target.pixels(target.width, target.height);
      session.taken(Png.of(new Pixels(target.width, target.height, pixels)));
    }
    glfwSwapBuffers(window);
    if (!session.title().equals(title)) {
      title = session.title();
      glfwSetWindowTitle(window, title);
    }
    session.shown(frames, houses, rough ? 1 : target.samples());
  }

  private boolean isMoving() {
    return glfwGetTime() - turned < AT_REST;
  }

  /** Draws the house: with one sample a pixel while the eye moves, with several once it rests. */
  private void draw(Sheet sheet) {
    rough = isMoving();
    if (rough) {
      target.bindRough();
      painter.draw(sheet);
    } else {
      target.bind();
      painter.draw(sheet);
      target.settle();
    }
    houses++;
    drawn = sheet;
  }

  private void dress(Theme theme, float size) {
    if (fonts.size != size) {
      NkFonts old = fonts;
      fonts = new NkFonts(painter.letters(), size);
      nk_style_set_font(context, fonts.plain);
      old.close();
      dressed = null;
    }
    if (theme != dressed) {
      NkTheme.dress(context, theme, size);
      dressed = theme;
    }
  }

  @Override
  public void close() {
    Callbacks.glfwFreeCallbacks(window);
    nk_free(context);
    context.free();
    draws.close();
    fonts.close();
    if (target != null) {
      target.close();
    }
    painter.close();
    Start.close(window);
  }
}
