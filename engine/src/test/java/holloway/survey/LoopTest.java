package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.house.Side;
import holloway.support.HouseBuilder;
import holloway.units.Length;
import org.junit.jupiter.api.Test;

/**
 * Three rooms in a row and three north of them; the outer two stand in line, so the six widths must
 * agree.
 *
 * <p>The loop: a, wall, b, wall, c against d, wall, e, wall, f, with d in line with a and f with c.
 * Its variance is 6 x 5^2 (tapes) + 4 x (4/3)^2 (walls) + 2 x (1/3)^2 (faces in line) = 150 + 7.111
 * + 0.222 = 157.333 mm^2, its spread 12.543 mm, three times that 37.63 mm. 1-1/2 in is 38.1 mm:
 * out. 3/8 in is 9.525 mm: not.
 */
class LoopTest {
  private static final double VARIANCE = 150 + 4 * 16 / 9.0 + 2 / 9.0;

  private static Placed rows(Length middle) {
    HouseBuilder b =
        house()
            .slab("ground", ft(8))
            .first("a", "ground", ft(10), ft(8))
            .beside("b", ft(10), ft(8), Side.EAST, "a", Side.SOUTH)
            .beside("c", ft(10), ft(8), Side.EAST, "b", Side.SOUTH)
            .beside("d", ft(9), ft(8), Side.NORTH, "a", Side.WEST)
            .beside("e", middle, ft(8), Side.EAST, "d", Side.SOUTH)
            .beside("f", ft(9), ft(8), Side.NORTH, "c", Side.EAST);
    return Survey.of(b.build()).value();
  }

  @Test
  void aLoopThatClosesIsNotReportedAndKeepsEveryStatedLength() {
    Placed p = rows(ft(12));
    assertTrue(p.misclosures().isEmpty());
    assertEquals(ft(12).nm(), p.getRoom("e").outline().xRange().length());
  }

  @Test
  void sixMeasurementsAnInchAndAHalfOutAreReported() {
    Placed p = rows(ft(12).plus(in(3, 2)));
    assertEquals(1, p.misclosures().size());
    Misclosure m = p.misclosures().get(0);
    assertEquals(Length.mm(38.1), m.size());
    assertEquals(3 * Math.sqrt(VARIANCE), m.tolerance().toMm(), 0.001);
    assertEquals(12, m.measurements().size());
    assertEquals(
        6, m.measurements().stream().filter(t -> t.contains("east-west")).count(), m.toString());
    assertTrue(
        m.measurements().stream()
            .anyMatch(t -> t.startsWith("e east-west 12 ft 1-1/2 in (test.yaml:")),
        m.toString());
  }

  @Test
  void threeEighthsOfAnInchIsNot() {
    assertTrue(rows(ft(12).plus(in(3, 8))).misclosures().isEmpty());
    assertTrue(rows(ft(12).minus(in(3, 8))).misclosures().isEmpty());
  }

  @Test
  void theMissIsSharedOutByVariance() {
    Placed p = rows(ft(12).plus(in(3, 2)));
    // a tape takes 25 / 157.333 of 38.1 mm = 6.054 mm, a wall 16/9 / 157.333 of it = 0.4305 mm
    double tape = 38.1 * 25 / VARIANCE;
    double wall = 38.1 * (16 / 9.0) / VARIANCE;
    assertEquals(ft(12).toMm() + 38.1 - tape, width(p, "e"), 0.001);
    assertEquals(ft(10).toMm() + tape, width(p, "b"), 0.001);
    Interval a = p.getRoom("a").outline().xRange();
    Interval b = p.getRoom("b").outline().xRange();
    assertEquals(114.3 + wall, (b.lo() - a.hi()) / 1e6, 0.001);
  }

  @Test
  void heightsCloseALoopToo() {
    // 8 ft ceiling 2438.4 + board 12.7 + 2x10 235 + subfloor 18.3 = 2704.4 mm; taped rise 9 ft 2 in
    // = 2794 mm: 89.6 mm out, spread root(25 + 4 + 25) = 7.35 mm
    Placed p = StoreysTest.twoLevels(ft(9, 2));
    assertEquals(1, p.misclosures().size());
    assertEquals(Length.mm(89.6), p.misclosures().get(0).size());
    assertEquals(3 * Math.sqrt(54), p.misclosures().get(0).tolerance().toMm(), 0.001);
  }

  private static double width(Placed p, String room) {
    return p.getRoom(room).outline().xRange().length() / 1e6;
  }
}
