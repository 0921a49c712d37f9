package holloway.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The front of what hangs in the cabinet: panels with their ports in rows, and what goes to no
 * panel listed below. Not to scale: ports are drawn large enough to write on.
 */
public final class CabinetFront {
  private static final double WIDE = 300;
  private static final double HIGH = 330;

  private final Svg svg = new Svg();
  private final int row;

  private CabinetFront(int row) {
    this.row = row;
  }

  /** How many ports stand beside one another. */
  public enum Form {
    /** As on the panel. */
    PAPER(12),
    /** On a screen of 360 pixels. */
    NARROW(3);

    private final int row;

    Form(int row) {
      this.row = row;
    }
  }

  /**
   * One port, or one cable that goes to no panel.
   *
   * @param panel letter of the panel; empty for no panel
   * @param number of the port, from 1; 0 for no panel
   * @param label what is printed on the cable
   * @param to the outlet at the other end
   */
  public record Port(String panel, int number, String label, String to, boolean spare) {}

  /**
   * @param panels how many ports each panel has: the first is A, and free ports are drawn too
   */
  public static String of(List<Port> ports, List<Integer> panels, String title, Form form) {
    CabinetFront f = new CabinetFront(form.row);
    double y = 0;
    for (int i = 0; i < panels.size(); i++) {
      String panel = String.valueOf((char) ('A' + i));
      List<Port> here = ports.stream().filter(p -> p.panel().equals(panel)).toList();
      y = f.panel(panel, here, panels.get(i), y) + 250;
    }
    f.loose(ports.stream().filter(p -> p.panel().isEmpty()).toList(), y);
    if (ports.isEmpty()) {
      f.svg.text("left", title, 0, 0, 100, false);
    }
    return Paper.of(f.svg, title, 120, "");
  }

  /** The foot of the panel. */
  private double panel(String name, List<Port> ports, int size, double top) {
    int rows = (size + row - 1) / row;
    svg.text("left strong", name, 0, top + rows * HIGH / 2, 160, false);
    double x0 = 200;
    svg.rect(
        "frame", name, new Rect(x0 - 40, top - 40, x0 + row * WIDE + 40, top + rows * HIGH + 40));
    for (int n = 1; n <= size; n++) {
      double x = x0 + (n - 1) % row * WIDE;
      double y = top + (n - 1) / row * HIGH;
      port(n, ports, x, y);
    }
    return top + rows * HIGH;
  }

  private void port(int n, List<Port> ports, double x, double y) {
    Port p = ports.stream().filter(q -> q.number() == n).findFirst().orElse(null);
    String kind = p == null || p.spare() ? "port spare" : "port";
    svg.rect(
        kind, p == null ? "" : p.label(), new Rect(x + 15, y + 10, x + WIDE - 15, y + HIGH - 10));
    svg.text("strong", String.valueOf(n), x + WIDE / 2, y + 55, 70, false);
    if (p != null) {
      svg.text("label", p.label(), x + WIDE / 2, y + 125, 48, false);
      double line = y + 185;
      for (String words : folded(p.to().split(",")[0], 10)) {
        svg.text("to", words, x + WIDE / 2, line, row < 12 ? 44 : 40, false);
        line += 50;
      }
    }
  }

  private void loose(List<Port> ports, double top) {
    double y = top + 60;
    for (Port p : ports) {
      int most = (int) ((row * WIDE - 100) / 70 / Labels.LETTER);
      svg.circle(p.spare() ? "port spare" : "port", p.label(), new double[] {240, y}, 35);
      for (String line : Labels.folded(p.label() + "   " + p.to(), most)) {
        svg.text("left", line, 330, y, 70, false);
        y += 90;
      }
      y += 20;
    }
  }

  /** At most three lines of so many letters; a word that is too long is cut short with a mark. */
  static List<String> folded(String text, int letters) {
    List<String> out = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String shown = word.length() <= letters ? word : word.substring(0, letters - 1) + "…";
      if (line.isEmpty()) {
        line = shown;
      } else if (line.length() + 1 + shown.length() <= letters) {
        line = line + " " + shown;
      } else {
        out.add(line);
        line = shown;
      }
    }
    out.add(line);
    return out.size() <= 3 ? out : out.subList(0, 3);
  }
}
