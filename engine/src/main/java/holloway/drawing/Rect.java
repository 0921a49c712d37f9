package holloway.drawing;

import java.util.List;

/** A rectangle on the sheet, millimetres of the house, y downwards. */
record Rect(double x0, double y0, double x1, double y1) {
  static Rect around(double x, double y, double wide, double high) {
    return new Rect(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2);
  }

  static Rect of(List<double[]> points) {
    Rect r = new Rect(Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE);
    for (double[] p : points) {
      r = r.with(new Rect(p[0], p[1], p[0], p[1]));
    }
    return r;
  }

  Rect with(Rect o) {
    return new Rect(Math.min(x0, o.x0), Math.min(y0, o.y0), Math.max(x1, o.x1), Math.max(y1, o.y1));
  }

  Rect grown(double by) {
    return new Rect(x0 - by, y0 - by, x1 + by, y1 + by);
  }

  double wide() {
    return x1 - x0;
  }

  double high() {
    return y1 - y0;
  }

  double shared(Rect o) {
    double w = Math.min(x1, o.x1) - Math.max(x0, o.x0);
    double h = Math.min(y1, o.y1) - Math.max(y0, o.y0);
    return w > 0 && h > 0 ? w * h : 0;
  }

  boolean holds(Rect o) {
    return o.x0 >= x0 && o.x1 <= x1 && o.y0 >= y0 && o.y1 <= y1;
  }
}
