package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Member;
import holloway.geometry.Point3;
import holloway.schedule.HoleView;
import holloway.schedule.Tapes;
import holloway.support.RandomHouseText;
import holloway.support.Rough;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Dimensions close: the tape lines of either side of a hole lead to one point, and nothing stands
 * between a landmark and the hole. Arithmetic of its own on random houses; {@code
 * -Dholloway.seeds=N} looks at more.
 */
class ClosingTapesTest {
  private static final double MM = 1e6;

  /** How near to a body a tape may run: it lies on a surface. */
  private static final double TOUCH = 2;

  private final List<String> faults = new ArrayList<>();
  private int both;
  private int looked;
  private int drawn;

  @Test
  void bothSidesLeadToOnePointAndNothingIsHidden() throws Exception {
    int last = Integer.getInteger("holloway.seeds", 3);
    for (long seed = 201; seed < 201 + last; seed++) {
      Path house = Files.createTempFile("random", ".yaml");
      try {
        Files.writeString(house, RandomHouseText.of(RandomHouseText.Shape.of(seed)));
        look("seed " + seed + " ", new Pipeline(Progress.SILENT).pack(house, Rough.SETTINGS));
      } finally {
        Files.delete(house);
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(
        both > last && looked > 8 * last && drawn > 8 * last, both + " " + looked + " " + drawn);
  }

  private void look(String seed, Answers.Packed packed) {
    PlannedHouse house = packed.house().orElseThrow();
    List<Member> members = house.hollows().framed().members();
    for (Tapes t : house.tapes().values()) {
      String name = seed + t.holeId();
      double[] axis = minus(at(t.b()), at(t.a()));
      if (length(axis) < 1) {
        continue;
      }
      closes(name, t, axis);
      t.sideA().forEach(l -> visible(name, l, members));
      t.sideB().forEach(l -> visible(name, l, members));
      packed.views().holes().getOrDefault(t.holeId(), List.of()).forEach(v -> agrees(name, v, t));
    }
  }

  /** The hole's axis crosses the plane that both tapes of a side give in the point they lead to. */
  private void closes(String name, Tapes t, double[] axis) {
    double[] a = led(t.sideA(), axis, at(t.a()));
    double[] b = led(t.sideB(), axis, at(t.a()));
    double[] hole = at(t.a());
    for (double[] p : new double[][] {a, b}) {
      if (p != null && length(minus(p, hole)) > 1) {
        faults.add(name + ": the tapes lead " + length(minus(p, hole)) + " mm beside the hole");
      }
    }
    if (a != null && b != null) {
      both++;
      if (length(minus(a, b)) > 1) {
        faults.add(name + ": the two sides lead to two points");
      }
    }
  }

  /**
   * The point at which a person arrives: what the tapes show, laid off from their landmarks, and as
   * deep along the axis as the hole's first end.
   */
  private double[] led(List<Tapes.Line> side, double[] axis, double[] deep) {
    if (side.size() != 2) {
      return null;
    }
    double[][] m = new double[3][];
    double[] v = new double[3];
    for (int i = 0; i < 2; i++) {
      double[] from = at(side.get(i).from());
      m[i] = unit(minus(at(side.get(i).to()), from));
      v[i] = dot(from, m[i]) + side.get(i).nm() / MM;
    }
    m[2] = unit(axis);
    v[2] = dot(deep, m[2]);
    double d = det(m[0], m[1], m[2]);
    if (Math.abs(d) < 0.5) {
      faults.add("two tapes of one side run along one another or along the bore");
      return null;
    }
    double[] p = new double[3];
    for (int k = 0; k < 3; k++) {
      double[][] c = {m[0].clone(), m[1].clone(), m[2].clone()};
      for (int i = 0; i < 3; i++) {
        c[i][k] = v[i];
      }
      p[k] = det(c[0], c[1], c[2]) / d;
    }
    return p;
  }

  /** A line that is laid straight into a wall is measured through its board on purpose. */
  private void visible(String name, Tapes.Line l, List<Member> members) {
    if (l.landmark().contains("straight into it")) {
      return;
    }
    looked++;
    double[] from = at(l.from());
    double[] way = minus(at(l.to()), from);
    int steps = (int) Math.ceil(length(way) / 5);
    for (Member m : members) {
      // The skin before a shared wall is nothing that one sees: only cable is kept off it.
      for (int i = 1; i < steps && !m.id().contains("/shared-face-"); i++) {
        double f = (double) i / steps;
        double far = Math.min(f, 1 - f) * length(way);
        double[] p = {from[0] + f * way[0], from[1] + f * way[1], from[2] + f * way[2]};
        if (far > TOUCH && inside(m, p)) {
          faults.add(name + ": " + l.landmark() + " is hidden behind " + m.id());
          return;
        }
      }
    }
  }

  private static boolean inside(Member m, double[] mm) {
    Point3 p =
        m.frame()
            .toLocal(
                new Point3(Math.round(mm[0] * MM), Math.round(mm[1] * MM), Math.round(mm[2] * MM)));
    long t = (long) (TOUCH * MM);
    return p.x() > m.box().x0() + t
        && p.x() < m.box().x1() - t
        && p.y() > m.box().y0() + t
        && p.y() < m.box().y1() - t
        && p.z() > m.box().z0() + t
        && p.z() < m.box().z1() - t;
  }

  /** A drawn line is as long as its tape, and its end lies level with the hole. */
  private void agrees(String name, HoleView v, Tapes t) {
    List<Tapes.Line> lines = v.drillSide() ? t.sideA() : t.sideB();
    for (HoleView.Tape d : v.tapes()) {
      double dx = d.to()[0] - d.from()[0];
      double dy = d.to()[1] - d.from()[1];
      double wide = Math.hypot(dx, dy);
      boolean known =
          lines.stream().anyMatch(l -> l.nm() == d.nm() && l.landmark().equals(d.landmark()));
      if (!known) {
        faults.add(name + ": " + v.kind() + " shows a tape that the card has not");
      }
      boolean flat = wide > 1;
      if (flat) {
        drawn++;
        double aside = (d.to()[0] * dx + d.to()[1] * dy) / wide;
        double hole = (v.bore().get(0)[0] * dx + v.bore().get(0)[1] * dy) / wide;
        if (Math.abs(wide - d.nm() / MM) > 1 || Math.abs(aside - hole) > 1) {
          faults.add(
              "%s: %s draws %.1f mm of %.1f, %.1f mm beside the hole"
                  .formatted(name, v.kind(), wide, d.nm() / MM, aside - hole));
        }
      }
    }
  }

  private static double[] at(Point3 p) {
    return new double[] {p.x() / MM, p.y() / MM, p.z() / MM};
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double length(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  private static double[] unit(double[] a) {
    double n = length(a);
    return new double[] {a[0] / n, a[1] / n, a[2] / n};
  }

  private static double det(double[] a, double[] b, double[] c) {
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        - a[1] * (b[0] * c[2] - b[2] * c[0])
        + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
}
