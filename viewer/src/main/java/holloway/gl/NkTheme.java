package holloway.gl;

import static org.lwjgl.nuklear.Nuklear.*;

import holloway.look.Rgb;
import holloway.look.Theme;
import org.lwjgl.nuklear.NkColor;
import org.lwjgl.nuklear.NkContext;
import org.lwjgl.nuklear.NkStyle;
import org.lwjgl.system.MemoryStack;

/** Dresses the panels in a theme's colours: flat plates, quiet lines, what is on is lit. */
final class NkTheme {
  private NkTheme() {}

  static void dress(NkContext context, Theme t, float size) {
    // Words under a panel would shine through between its own.
    int plate = Rgb.opaque(Rgb.mix(t.plate(), t.ground(), 0.35));
    int raised = Rgb.with(Rgb.mix(t.ground(), t.ink(), 0.12), 1);
    int hover = Rgb.with(Rgb.mix(t.ground(), t.ink(), 0.22), 1);
    int lit = Rgb.with(Rgb.mix(t.ground(), t.glow(), t.additive() ? 0.45 : 0.55), 1);
    int line = Rgb.with(t.ink(), 0.16);
    try (MemoryStack stack = MemoryStack.stackPush()) {
      NkColor.Buffer table = NkColor.malloc(NK_COLOR_COUNT, stack);
      for (int i = 0; i < NK_COLOR_COUNT; i++) {
        set(table.get(i), raised);
      }
      set(table.get(NK_COLOR_TEXT), Rgb.opaque(t.ink()));
      set(table.get(NK_COLOR_WINDOW), plate);
      set(table.get(NK_COLOR_HEADER), plate);
      set(table.get(NK_COLOR_BORDER), line);
      set(table.get(NK_COLOR_BUTTON), raised);
      set(table.get(NK_COLOR_BUTTON_HOVER), hover);
      set(table.get(NK_COLOR_BUTTON_ACTIVE), lit);
      set(table.get(NK_COLOR_SELECT), Rgb.with(t.plate(), 0));
      set(table.get(NK_COLOR_SELECT_ACTIVE), lit);
      set(table.get(NK_COLOR_SCROLLBAR), Rgb.with(t.ink(), 0.06));
      set(table.get(NK_COLOR_SCROLLBAR_CURSOR), Rgb.with(t.ink(), 0.3));
      set(table.get(NK_COLOR_SCROLLBAR_CURSOR_HOVER), Rgb.with(t.ink(), 0.45));
      set(table.get(NK_COLOR_SCROLLBAR_CURSOR_ACTIVE), Rgb.with(t.ink(), 0.6));
      nk_style_from_table(context, table);
    }
    shape(context.style(), size);
  }

  private static void shape(NkStyle s, float size) {
    s.window().rounding(size * 0.35f).border(1).padding().set(size * 0.7f, size * 0.45f);
    s.window().spacing().set(size * 0.35f, size * 0.22f);
    s.window().scrollbar_size().set(size * 0.55f, 0);
    s.window().header().padding().set(size * 0.35f, size * 0.2f);
    s.window().header().label_padding().set(size * 0.2f, size * 0.15f);
    s.button().rounding(size * 0.3f).border(0).padding().set(size * 0.3f, size * 0.1f);
    s.selectable().rounding(size * 0.25f).padding().set(size * 0.3f, size * 0.1f);
    s.text().padding().set(0, 0);
  }

  static NkColor set(NkColor to, int argb) {
    return to.set((byte) (argb >> 16), (byte) (argb >> 8), (byte) argb, (byte) (argb >>> 24));
  }
}
