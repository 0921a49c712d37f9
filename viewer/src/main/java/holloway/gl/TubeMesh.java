package holloway.gl;

import holloway.look.Rgb;
import holloway.look.Tube;
import java.util.Arrays;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** Makes tubes of many flat sides out of lines: a sleeve for each piece and a ball at each bend. */
final class TubeMesh {
  /** Numbers a corner: centre, outward, fan, colour with one to spare, shape. */
  static final int[] PARTS = {3, 3, 3, 4, 4};

  private static final int STRIDE = 17;
  private static final int SIDES = 8;
  private static final int RINGS = 4;

  private float[] data = new float[STRIDE * 1024];
  private int size;

  static float[] of(List<Tube> tubes) {
    TubeMesh m = new TubeMesh();
    tubes.forEach(m::add);
    return Arrays.copyOf(m.data, m.size);
  }

  private void add(Tube t) {
    float along = 0;
    for (int i = 0; i + 1 < t.points().size(); i++) {
      Vector3fc a = t.points().get(i);
      Vector3fc b = t.points().get(i + 1);
      float length = a.distance(b);
      if (length > 1e-6f) {
        sleeve(t, i, along, length);
      }
      if (i == 0 || bends(t, i)) {
        ball(t, i, along);
      }
      along += length;
    }
    ball(t, t.points().size() - 1, along);
  }

  /** Whether the tube turns or changes its lane at a point: else the sleeves meet without a gap. */
  private static boolean bends(Tube t, int i) {
    if (!t.fan().get(i - 1).equals(t.fan().get(i), 1e-4f)
        || !t.fan().get(i).equals(t.fan().get(i + 1), 1e-4f)) {
      return true;
    }
    Vector3f in = new Vector3f(t.points().get(i)).sub(t.points().get(i - 1));
    Vector3f out = new Vector3f(t.points().get(i + 1)).sub(t.points().get(i));
    float both = in.length() * out.length();
    return both == 0 || in.dot(out) < 0.9999f * both;
  }

  private void sleeve(Tube t, int i, float along, float length) {
    Vector3fc a = t.points().get(i);
    Vector3fc b = t.points().get(i + 1);
    Vector3f axis = new Vector3f(b).sub(a).normalize();
    // Any way across does; the one least along the axis is the safest.
    boolean upright = Math.abs(axis.z) > 0.7f;
    Vector3f x =
        axis.cross(upright ? new Vector3f(1, 0, 0) : new Vector3f(0, 0, 1), new Vector3f());
    x.normalize();
    Vector3f y = axis.cross(x, new Vector3f());
    for (int s = 0; s < SIDES; s++) {
      Vector3f n0 = round(x, y, s);
      Vector3f n1 = round(x, y, s + 1);
      float end = along + length;
      corner(t, i, n0, along);
      corner(t, i, n1, along);
      corner(t, i + 1, n1, end);
      corner(t, i, n0, along);
      corner(t, i + 1, n1, end);
      corner(t, i + 1, n0, end);
    }
  }

  private static Vector3f round(Vector3fc x, Vector3fc y, int side) {
    double angle = 2 * Math.PI * side / SIDES;
    return new Vector3f(x)
        .mul((float) Math.cos(angle))
        .add(new Vector3f(y).mul((float) Math.sin(angle)));
  }

  private void ball(Tube t, int i, float along) {
    for (int r = 0; r < RINGS; r++) {
      for (int s = 0; s < SIDES; s++) {
        Vector3f a = onBall(r, s);
        Vector3f b = onBall(r, s + 1);
        Vector3f c = onBall(r + 1, s + 1);
        Vector3f d = onBall(r + 1, s);
        for (Vector3f n : new Vector3f[] {a, c, b, a, d, c}) {
          corner(t, i, n, along);
        }
      }
    }
  }

  private static Vector3f onBall(int ring, int side) {
    double up = Math.PI * ring / RINGS;
    double round = 2 * Math.PI * side / SIDES;
    return new Vector3f(
        (float) (Math.sin(up) * Math.cos(round)),
        (float) (Math.sin(up) * Math.sin(round)),
        (float) Math.cos(up));
  }

  private void corner(Tube t, int i, Vector3fc outward, float along) {
    if (size + STRIDE > data.length) {
      data = Arrays.copyOf(data, data.length * 2);
    }
    put(t.points().get(i));
    put(outward);
    put(t.fan().get(i));
    data[size++] = Rgb.red(t.colour());
    data[size++] = Rgb.green(t.colour());
    data[size++] = Rgb.blue(t.colour());
    data[size++] = 0;
    data[size++] = t.radius();
    data[size++] = along;
    data[size++] = t.dash().ordinal();
    data[size++] = t.strength();
  }

  private void put(Vector3fc v) {
    data[size++] = v.x();
    data[size++] = v.y();
    data[size++] = v.z();
  }
}
