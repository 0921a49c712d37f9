package holloway.scene;

import java.util.ArrayList;
import java.util.List;

/** Flat-shaded triangles with a normal for each corner. */
record Mesh(List<Vec> corners, List<Vec> normals, List<Integer> triangles) {
  private static final int SIDES = 8;

  static Mesh empty() {
    return new Mesh(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
  }

  /** A cube from -1 to 1. */
  static Mesh cube() {
    Mesh m = empty();
    Vec[] axes = {new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1)};
    for (int i = 0; i < 3; i++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        Vec n = axes[i].times(sign);
        Vec p = axes[(i + 1) % 3];
        Vec q = axes[(i + 2) % 3].times(sign);
        m.quad(n.minus(p).minus(q), n.plus(p).minus(q), n.plus(p).plus(q), n.minus(p).plus(q), n);
      }
    }
    return m;
  }

  /** A round bar about each stretch of a line, closed at both ends. */
  static Mesh tube(List<Vec> path, double radius) {
    Mesh m = empty();
    for (int i = 1; i < path.size(); i++) {
      if (path.get(i).minus(path.get(i - 1)).length() > 1e-6) {
        m.bar(path.get(i - 1), path.get(i), radius);
      }
    }
    return m;
  }

  /** Reaches a little over both ends, so that there is no gap where the line turns. */
  private void bar(Vec from, Vec to, double radius) {
    Vec d = to.minus(from).unit();
    Vec a = from.minus(d.times(radius * 0.7));
    Vec b = to.plus(d.times(radius * 0.7));
    Vec p = d.cross(Math.abs(d.z()) < 0.9 ? new Vec(0, 0, 1) : new Vec(1, 0, 0)).unit();
    Vec q = d.cross(p);
    for (int k = 0; k < SIDES; k++) {
      Vec n0 = round(p, q, k);
      Vec n1 = round(p, q, k + 1);
      Vec r0 = n0.times(radius);
      Vec r1 = n1.times(radius);
      quad(a.plus(r0), a.plus(r1), b.plus(r1), b.plus(r0), n0.plus(n1).unit());
      triangle(a, a.plus(r1), a.plus(r0), d.times(-1));
      triangle(b, b.plus(r0), b.plus(r1), d);
    }
  }

  private static Vec round(Vec p, Vec q, int k) {
    double t = 2 * Math.PI * (k % SIDES) / SIDES;
    return p.times(Math.cos(t)).plus(q.times(Math.sin(t)));
  }

  private void quad(Vec a, Vec b, Vec c, Vec d, Vec n) {
    triangle(a, b, c, n);
    triangle(a, c, d, n);
  }

  private void triangle(Vec a, Vec b, Vec c, Vec n) {
    for (Vec v : List.of(a, b, c)) {
      triangles.add(corners.size());
      corners.add(v);
      normals.add(n);
    }
  }
}
