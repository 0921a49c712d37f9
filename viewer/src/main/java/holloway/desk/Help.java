package holloway.desk;

import holloway.look.Area;
import holloway.look.Panels;
import java.util.List;

/** The keys on the screen: two columns, or one where large type leaves no room for two. */
final class Help {
  private Help() {}

  /**
   * @param by lines that the keys are to be moved down, up under 0, where they have no room
   * @param turned whether the house has a north of its own
   */
  static void say(Panels p, int width, int height, float size, int by, boolean turned) {
    float h = Math.min(height - 2 * size, size * 40);
    Act[] all = Act.values();
    boolean two = width - 2 * size >= 52 * size;
    float w =
        two ? Math.min((width - 2 * size) / 2, size * 30) : Math.min(width - 2 * size, size * 34);
    int half = two ? (all.length + 1) / 2 : all.length;
    p.begin("help", new Area(two ? width / 2f - w : (width - w) / 2, size, w, h));
    p.scroll(by);
    p.heading("Keys");
    keys(p, 0, half);
    if (two) {
      p.end();
      p.begin("help, more", new Area(width / 2f, size, w, h));
      p.scroll(by);
      p.heading("and more of them");
      keys(p, half, all.length);
    }
    p.quiet("Where this list has no room: Up, Down, Page up, Page down or the wheel move it.");
    p.quiet("Drag to turn, with Shift or the other button to shift, wheel to come nearer.");
    p.quiet("Click a hole, outlet, cable, timber or hollow; again in one place: what lies behind.");
    if (turned) {
      p.quiet("In the corner N is north; own is the house's own north, by which its words go.");
    }
    p.end();
  }

  private static void keys(Panels p, int from, int to) {
    for (Act a : List.of(Act.values()).subList(from, to)) {
      p.pair(a.said, a.does);
    }
  }
}
