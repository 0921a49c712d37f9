package holloway.gl;

import static org.lwjgl.nuklear.Nuklear.*;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Dash;
import holloway.look.Mark;
import holloway.look.Panels;
import holloway.look.Rgb;
import holloway.look.Theme;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import org.lwjgl.nuklear.NkColor;
import org.lwjgl.nuklear.NkContext;
import org.lwjgl.nuklear.NkRect;
import org.lwjgl.system.MemoryStack;

/** The panels as Nuklear draws them. */
final class NkPanels implements Panels {
  private final NkContext context;
  private final NkFonts fonts;
  private final Theme theme;
  private final List<Sample> samples = new ArrayList<>();
  private final List<Area> areas = new ArrayList<>();
  private Area current = new Area(0, 0, 0, 0);
  private int parts;
  private int part;

  NkPanels(NkContext context, NkFonts fonts, Theme theme) {
    this.context = context;
    this.fonts = fonts;
    this.theme = theme;
  }

  /** Where panels are in this frame. */
  List<Area> areas() {
    return areas;
  }

  /** A piece of a run, in which panel. */
  private record Sample(int panel, Area at, List<Mark> marks) {}

  /** Flat marks that belong over the panels, where no later panel lies over them. */
  List<Mark> samples() {
    List<Mark> out = new ArrayList<>();
    for (Sample s : samples) {
      boolean free = true;
      for (int i = s.panel + 1; i < areas.size(); i++) {
        free &= areas.get(i).shared(s.at) == 0;
      }
      if (free) {
        out.addAll(s.marks);
      }
    }
    return out;
  }

  private float line() {
    return fonts.size * 1.3f;
  }

  @Override
  public void begin(String title, Area at) {
    current = at;
    areas.add(at);
    try (MemoryStack stack = MemoryStack.stackPush()) {
      NkRect r = NkRect.malloc(stack).set(at.x(), at.y(), at.width(), at.height());
      nk_begin(context, title, r, NK_WINDOW_BORDER);
      nk_window_set_bounds(context, title, r);
    }
  }

  @Override
  public void scroll(int lines) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer x = stack.mallocInt(1);
      IntBuffer y = stack.mallocInt(1);
      nk_window_get_scroll(context, x, y);
      // Nuklear itself keeps it within what there is.
      nk_window_set_scroll(context, x.get(0), Math.max(0, y.get(0) + Math.round(lines * line())));
    }
  }

  @Override
  public void end() {
    nk_end(context);
  }

  private void whole(float height) {
    if (part < parts) {
      part++;
      return;
    }
    nk_layout_row_dynamic(context, height, 1);
  }

  @Override
  public void row(int count) {
    nk_layout_row_dynamic(context, line() * 1.15f, count);
    parts = count;
    part = 0;
  }

  @Override
  public void heading(String text) {
    nk_style_push_font(context, fonts.bold);
    for (String l : new Canvas(theme, fonts(), 1).lines(text, fonts.size, true, inner())) {
      whole(fonts.size * 1.24f);
      nk_label(context, l, NK_TEXT_LEFT);
    }
    nk_style_pop_font(context);
  }

  @Override
  public void words(String text) {
    paragraph(text, Rgb.opaque(theme.ink()));
  }

  @Override
  public void quiet(String text) {
    paragraph(text, Rgb.opaque(theme.quiet()));
  }

  private void paragraph(String text, int colour) {
    float most = inner();
    try (MemoryStack stack = MemoryStack.stackPush()) {
      NkColor c = NkTheme.set(NkColor.malloc(stack), colour);
      for (String l : new Canvas(theme, fonts(), 1).lines(text, fonts.size, false, most)) {
        whole(fonts.size * 1.18f);
        nk_label_colored(context, l, NK_TEXT_LEFT, c);
      }
    }
  }

  private holloway.look.Measure fonts() {
    return fonts.measure();
  }

  /** The width that rows have. */
  private float inner() {
    return current.width() - fonts.size * (2 * 0.7f + 1.1f) - 4;
  }

  @Override
  public void pair(String left, String right) {
    float most = inner();
    float end = fonts.measure().width(right, fonts.size, false);
    nk_layout_row_begin(context, NK_STATIC, line(), 2);
    float first = Math.max(0, most - end - fonts.size * 0.5f);
    nk_layout_row_push(context, first);
    nk_label(
        context,
        new Canvas(theme, fonts(), 1).fitted(left, fonts.size, false, first),
        NK_TEXT_LEFT);
    nk_layout_row_push(context, end + 2);
    nk_label(context, right, NK_TEXT_RIGHT);
    nk_layout_row_end(context);
  }

  @Override
  public boolean button(String text, boolean on) {
    whole(line() * 1.15f);
    if (!on) {
      return nk_button_label(context, text);
    }
    // What is on is said by a mark too, not by its colour alone.
    nk_style_push_style_item(
        context,
        context.style().button().normal(),
        nk_style_item_color(
            NkTheme.set(NkColor.create(), Rgb.with(Rgb.mix(theme.ground(), theme.glow(), 0.5), 1)),
            org.lwjgl.nuklear.NkStyleItem.create()));
    boolean pressed = nk_button_label(context, "\u2022" + text);
    nk_style_pop_style_item(context);
    return pressed;
  }

  @Override
  public boolean run(String text, String right, int colour, Dash dash, boolean chosen) {
    float most = inner();
    float end = fonts.measure().width(right, fonts.size, false) + 2;
    float sample = fonts.size * 2.4f;
    float gap = fonts.size * 0.35f;
    nk_layout_row_begin(context, NK_STATIC, line(), 3);
    nk_layout_row_push(context, sample);
    try (MemoryStack stack = MemoryStack.stackPush()) {
      NkRect at = NkRect.malloc(stack);
      nk_widget_bounds(context, at);
      sample(at, colour, dash);
    }
    nk_label(context, "", NK_TEXT_LEFT);
    float first = Math.max(0, most - end - sample - 2 * gap);
    nk_layout_row_push(context, first);
    boolean now =
        select(new Canvas(theme, fonts(), 1).fitted(text, fonts.size, false, first - gap), chosen);
    nk_layout_row_push(context, end);
    nk_label(context, right, NK_TEXT_RIGHT);
    nk_layout_row_end(context);
    return now;
  }

  private void sample(NkRect at, int colour, Dash dash) {
    float y = at.y() + at.h() / 2;
    if (y < current.y() + 2 || y > current.bottom() - 4) {
      return;
    }
    Canvas c = new Canvas(theme, fonts(), 1);
    c.sample(at.x(), y, at.w() - 2, fonts.size * 0.32f, colour, dash);
    Area place = new Area(at.x(), at.y(), at.w(), at.h());
    samples.add(new Sample(areas.size() - 1, place, c.marks()));
  }

  private boolean select(String text, boolean chosen) {
    return nk_select_label(context, text, NK_TEXT_LEFT, chosen) != chosen;
  }

  @Override
  public boolean item(String text, boolean chosen) {
    whole(line());
    return select(
        new Canvas(theme, fonts(), 1).fitted(text, fonts.size, false, inner() - 8), chosen);
  }

  @Override
  public void gap() {
    nk_layout_row_dynamic(context, fonts.size * 0.25f, 1);
    nk_spacer(context);
  }
}
