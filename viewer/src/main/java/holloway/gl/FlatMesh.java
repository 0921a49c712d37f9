package holloway.gl;

import holloway.look.Mark;
import holloway.look.Rgb;
import java.util.Arrays;
import java.util.List;

/** Flat marks as triangles: place, place in the letters' picture, colour. */
final class FlatMesh {
  static final int[] PARTS = {2, 2, 4};
  private static final int STRIDE = 8;

  private final Letters letters;
  private float[] data = new float[STRIDE * 2048];
  private int size;

  private FlatMesh(Letters letters) {
    this.letters = letters;
  }

  static float[] of(List<Mark> marks, Letters letters) {
    FlatMesh m = new FlatMesh(letters);
    for (Mark mark : marks) {
      m.add(mark);
    }
    return Arrays.copyOf(m.data, m.size);
  }

  private void add(Mark mark) {
    if (mark instanceof Mark.Line l) {
      line(l);
    } else if (mark instanceof Mark.Disc d) {
      ring(d.x(), d.y(), 0, d.radius(), d.colour());
    } else if (mark instanceof Mark.Ring r) {
      ring(r.x(), r.y(), r.radius() - r.width(), r.radius(), r.colour());
    } else if (mark instanceof Mark.Slab s) {
      slab(s);
    } else if (mark instanceof Mark.Wedge w) {
      corner(w.x0(), w.y0(), w.colour());
      corner(w.x1(), w.y1(), w.colour());
      corner(w.x2(), w.y2(), w.colour());
    } else if (mark instanceof Mark.Word w) {
      word(w);
    }
  }

  private void line(Mark.Line l) {
    float dx = l.x1() - l.x0();
    float dy = l.y1() - l.y0();
    float length = (float) Math.hypot(dx, dy);
    if (length < 1e-4f) {
      return;
    }
    float ux = dx / length;
    float uy = dy / length;
    float step = l.off() > 0 ? l.on() + l.off() : length;
    float on = l.off() > 0 ? l.on() : length;
    for (float t = 0; t < length; t += step) {
      float e = Math.min(length, t + on);
      stroke(l.x0() + ux * t, l.y0() + uy * t, l.x0() + ux * e, l.y0() + uy * e, ux, uy, l);
    }
  }

  private void stroke(float x0, float y0, float x1, float y1, float ux, float uy, Mark.Line l) {
    float nx = -uy * l.width() / 2;
    float ny = ux * l.width() / 2;
    quad(
        new float[] {x0 + nx, y0 + ny, x1 + nx, y1 + ny, x1 - nx, y1 - ny, x0 - nx, y0 - ny},
        l.colour());
  }

  private void ring(float x, float y, float inner, float outer, int colour) {
    int steps = Math.max(12, Math.min(64, (int) (outer * 3)));
    for (int i = 0; i < steps; i++) {
      double a = 2 * Math.PI * i / steps;
      double b = 2 * Math.PI * (i + 1) / steps;
      float ax = (float) Math.cos(a);
      float ay = (float) Math.sin(a);
      float bx = (float) Math.cos(b);
      float by = (float) Math.sin(b);
      quad(
          new float[] {
            x + ax * inner, y + ay * inner, x + ax * outer, y + ay * outer,
            x + bx * outer, y + by * outer, x + bx * inner, y + by * inner
          },
          colour);
    }
  }

  private void slab(Mark.Slab s) {
    float c = Math.min(s.corner(), Math.min(s.width(), s.height()) / 2);
    float cx = s.x() + s.width() / 2;
    float cy = s.y() + s.height() / 2;
    float[][] centres = {
      {s.x() + s.width() - c, s.y() + s.height() - c},
      {s.x() + c, s.y() + s.height() - c},
      {s.x() + c, s.y() + c},
      {s.x() + s.width() - c, s.y() + c}
    };
    int steps = c > 0 ? 6 : 1;
    float[] last = null;
    float[] first = null;
    for (int q = 0; q < 4; q++) {
      for (int i = 0; i <= steps; i++) {
        double a = Math.PI / 2 * (q + (double) i / steps);
        float[] p = {
          centres[q][0] + c * (float) Math.cos(a), centres[q][1] + c * (float) Math.sin(a)
        };
        first = first == null ? p : first;
        fan(cx, cy, last, p, s.colour());
        last = p;
      }
    }
    fan(cx, cy, last, first, s.colour());
  }

  private void fan(float cx, float cy, float[] a, float[] b, int colour) {
    if (a != null) {
      corner(cx, cy, colour);
      corner(a[0], a[1], colour);
      corner(b[0], b[1], colour);
    }
  }

  private void quad(float[] p, int colour) {
    for (int i : new int[] {0, 1, 2, 0, 2, 3}) {
      corner(p[2 * i], p[2 * i + 1], colour);
    }
  }

  private void word(Mark.Word w) {
    float pen = w.x();
    for (int letter : w.text().codePoints().toArray()) {
      Letters.Letter l = letters.get(letter, w.size(), w.bold());
      int[] b = l.box();
      if (b[2] > b[0]) {
        // Letters stand on whole pixels, or they blur.
        float x = Math.round(pen) + b[0];
        float y = Math.round(w.y()) + b[1];
        letter(l, x, y, x + b[2] - b[0], y + b[3] - b[1], w.colour());
      }
      pen += l.advance();
    }
  }

  private void letter(Letters.Letter l, float x0, float y0, float x1, float y1, int colour) {
    put(x0, y0, l.u0(), l.v0(), colour);
    put(x1, y0, l.u1(), l.v0(), colour);
    put(x1, y1, l.u1(), l.v1(), colour);
    put(x0, y0, l.u0(), l.v0(), colour);
    put(x1, y1, l.u1(), l.v1(), colour);
    put(x0, y1, l.u0(), l.v1(), colour);
  }

  private void corner(float x, float y, int colour) {
    put(x, y, Letters.FULL, Letters.FULL, colour);
  }

  private void put(float x, float y, float u, float v, int colour) {
    if (size + STRIDE > data.length) {
      data = Arrays.copyOf(data, data.length * 2);
    }
    data[size++] = x;
    data[size++] = y;
    data[size++] = u;
    data[size++] = v;
    data[size++] = Rgb.red(colour);
    data[size++] = Rgb.green(colour);
    data[size++] = Rgb.blue(colour);
    data[size++] = Rgb.alpha(colour);
  }
}
