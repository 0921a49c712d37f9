package holloway.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.Polygon2;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The referee's own geometry against arithmetic by hand and against dense sampling. */
class GeometryTest {
  private static final long MM = 1_000_000L;

  @Test
  void distanceToABoxByHand() {
    Solid cube = new Solid(Frame.WORLD, new Box(0, 100 * MM, 0, 100 * MM, 0, 100 * MM));
    assertEquals(50, cube.distance(span(150, 50, 50, 400, 50, 50)), 1e-6);
    assertEquals(0, cube.distance(span(-50, 50, 50, 150, 50, 50)), 1e-6);
    assertEquals(Math.sqrt(200), cube.distance(span(110, 110, -500, 110, 110, 500)), 1e-6);
    assertEquals(Math.sqrt(5000), cube.distance(span(150, 50, 50, 50, 150, 50)) * 2, 200);
    assertTrue(cube.entered(span(50, 50, 90, 50, 50, 200), 1));
    assertFalse(cube.entered(span(50, 50, 99.5, 50, 50, 200), 1));
  }

  @Test
  void distanceToATurnedBoxMatchesDenseSampling() {
    Random random = new Random(7);
    for (int n = 0; n < 300; n++) {
      double turn = random.nextDouble() * Math.PI;
      Frame frame =
          Frame.level(
              new Point3(random.nextInt(500) * MM, random.nextInt(500) * MM, 0),
              Math.cos(turn),
              Math.sin(turn));
      Solid solid = new Solid(frame, new Box(0, 300 * MM, 0, 60 * MM, 0, 200 * MM));
      Span span = new Span(any(random), any(random));
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i <= 4000; i++) {
        Mm p = span.at(i / 4000.0);
        least = Math.min(least, solid.distance(new Span(p, p)));
      }
      assertEquals(least, solid.distance(span), 0.3, "case " + n);
    }
  }

  @Test
  void aBoreMeetsABoxExactlyWhenSomePointOfItDoes() {
    Random random = new Random(11);
    int hits = 0;
    for (int n = 0; n < 120; n++) {
      double turn = random.nextDouble() * Math.PI;
      Frame frame =
          Frame.level(
              new Point3(random.nextInt(300) * MM, random.nextInt(300) * MM, 0),
              Math.cos(turn),
              Math.sin(turn));
      Solid solid = new Solid(frame, new Box(0, 200 * MM, 0, 40 * MM, 0, 200 * MM));
      Span axis = new Span(any(random), any(random));
      double sampled = sampledDepth(axis, 25, solid);
      boolean hit = new Bored(axis, 50).hits(solid);
      hits += hit ? 1 : 0;
      if (sampled > 3.5) {
        assertTrue(hit, "case " + n + " goes " + sampled + " mm deep");
      }
      if (hit) {
        assertTrue(sampled > -4, "case " + n + " stays clear");
      }
    }
    assertTrue(hits > 10 && hits < 110, hits + " hits");
  }

  /** Greatest depth of sampled points of the cylinder in the box; negative when all are outside. */
  private static double sampledDepth(Span axis, double radius, Solid solid) {
    Mm along = axis.b().minus(axis.a()).unit();
    Mm side = along.cross(Math.abs(along.z()) < 0.9 ? new Mm(0, 0, 1) : new Mm(1, 0, 0)).unit();
    Mm up = along.cross(side);
    double deepest = -Double.MAX_VALUE;
    for (int i = 0; i <= 240; i++) {
      for (int k = 0; k < 32; k++) {
        for (double r = 0; r <= radius; r += radius / 5) {
          double a = 2 * Math.PI * k / 32;
          Mm p =
              axis.at(i / 240.0).plus(side.times(r * Math.cos(a))).plus(up.times(r * Math.sin(a)));
          deepest = Math.max(deepest, depth(solid, p));
        }
      }
    }
    return deepest;
  }

  private static double depth(Solid solid, Mm p) {
    double outside = solid.distance(new Span(p, p));
    if (outside > 0) {
      return -outside;
    }
    double in = 0;
    while (in < 20 && solid.entered(new Span(p, p), in + 0.5)) {
      in += 0.5;
    }
    return in;
  }

  @Test
  void aBoreBetweenTwoBoxesThatOnlyTouchesTheirFacesIsClear() {
    Solid plate = new Solid(Frame.WORLD, new Box(0, 100 * MM, 0, 100 * MM, 0, 38 * MM));
    assertFalse(new Bored(span(50, 50, 38, 50, 50, 76), 25).hits(plate));
    assertTrue(new Bored(span(50, 50, 0, 50, 50, 76), 25).hits(plate));
    assertFalse(new Bored(span(111.6, 50, -10, 111.6, 50, 76), 25).hits(plate));
    assertTrue(new Bored(span(111.4, 50, -10, 111.4, 50, 76), 25).hits(plate));
  }

  @Test
  void anOutlineHoldsWhatStaysInside() {
    Polygon2 ell =
        new Polygon2(
            List.of(
                pt(0, 0),
                pt(2000, 0),
                pt(2000, 1000),
                pt(1000, 1000),
                pt(1000, 2000),
                pt(0, 2000)));
    Outline outline = new Outline(ell);
    assertTrue(outline.holds(span(100, 100, 0, 1900, 900, 0), 1));
    assertFalse(outline.holds(span(500, 1900, 0, 1900, 500, 0), 1), "cuts the inner corner");
    assertTrue(outline.holds(span(1000, 1000, 0, 1000, 2000, 0), 1), "runs along the border");
    assertFalse(outline.holds(span(1002, 1002, 0, 1002, 1900, 0), 1));
  }

  @Test
  void stretchesApart() {
    assertEquals(10, span(0, 0, 0, 100, 0, 0).distanceTo(span(50, -50, 10, 50, 50, 10)), 1e-9);
    assertEquals(5, span(0, 0, 0, 100, 0, 0).distanceTo(span(103, 4, 0, 200, 4, 0)), 1e-9);
    assertEquals(7, span(0, 0, 0, 0, 0, 0).distanceTo(span(7, 0, 0, 7, 0, 0)), 1e-9);
  }

  @Test
  void aLegLooksAtFewOfTwentyThousandMembers() {
    List<Member> members = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      long x = i % 200 * 400 * MM;
      long y = i / 200 * 400 * MM;
      members.add(
          new Member(
              "m" + i,
              MemberKind.STUD,
              Frame.WORLD,
              new Box(x, x + 38 * MM, y, y + 89 * MM, 0, 2400 * MM),
              "w",
              false));
    }
    SolidGrid grid = new SolidGrid(members);
    Random random = new Random(3);
    int hits = 0;
    int looked = 0;
    for (int leg = 0; leg < 6000; leg++) {
      Span span =
          span(
              random.nextInt(70_000),
              random.nextInt(30_000),
              1000,
              random.nextInt(70_000),
              random.nextInt(30_000),
              1000);
      Span part = new Span(span.a(), span.at(Math.min(1, 6000 / Math.max(1, span.length()))));
      for (int i : grid.near(part, 4)) {
        looked++;
        hits += grid.solid(i).distance(part) < 3 ? 1 : 0;
      }
    }
    assertTrue(looked < 6000 * 200, looked + " looked at: more than a hundredth of all");
    assertTrue(hits > 1000, hits + " hits");
  }

  private static Point2 pt(long x, long y) {
    return new Point2(x * MM, y * MM);
  }

  private static Mm any(Random random) {
    return new Mm(random.nextInt(800) - 150, random.nextInt(800) - 150, random.nextInt(500) - 150);
  }

  private static Span span(double x0, double y0, double z0, double x1, double y1, double z1) {
    return new Span(new Mm(x0, y0, z0), new Mm(x1, y1, z1));
  }
}
