package holloway.schedule;

import java.util.ArrayList;
import java.util.List;

/** Cuts a line off at the edge of a window. */
final class Clip {
  private Clip() {}

  /**
   * The stretch of a line of points round the window's origin that stays in the window.
   *
   * @param window left, foot, right, top
   */
  static List<double[]> lineWithin(List<double[]> line, double[] window) {
    int at = 0;
    for (int i = 1; i < line.size(); i++) {
      if (passesOrigin(line.get(i - 1), line.get(i))) {
        at = i;
        break;
      }
    }
    List<double[]> back = new ArrayList<>();
    walk(line, at - 1, -1, window, back);
    List<double[]> out = new ArrayList<>();
    for (int i = back.size() - 1; i >= 0; i--) {
      out.add(back.get(i));
    }
    walk(line, at, 1, window, out);
    return out;
  }

  private static boolean passesOrigin(double[] a, double[] b) {
    return a[1] * b[1] <= 0 && a[1] != b[1] && Math.abs(a[0]) < 100;
  }

  /** From the origin outwards until the window's edge. */
  private static void walk(
      List<double[]> line, int start, int turn, double[] window, List<double[]> out) {
    double[] here = {0, 0};
    for (int i = start; i >= 0 && i < line.size(); i += turn) {
      double[] next = line.get(i);
      double part = part(here, next, window);
      out.add(
          new double[] {
            here[0] + (next[0] - here[0]) * part, here[1] + (next[1] - here[1]) * part
          });
      if (part < 1) {
        return;
      }
      here = next;
    }
  }

  /** How much of a piece that begins inside lies inside. */
  private static double part(double[] a, double[] b, double[] window) {
    double part = 1;
    for (int axis = 0; axis < 2; axis++) {
      double move = b[axis] - a[axis];
      double limit = move > 0 ? window[axis + 2] : window[axis];
      if (Math.abs(move) > 1e-9) {
        part = Math.min(part, Math.max(0, (limit - a[axis]) / move));
      }
    }
    return part;
  }
}
