package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import org.junit.jupiter.api.Test;

/** The largest lawful bits in real members of a house, at and about the limits. */
class BoreLimitsTest {
  private static Lawful.Bits at(WrittenHouse h, Member m, double part) {
    Box b = m.box();
    boolean upright = b.z().length() > b.x().length();
    Point3 p =
        upright
            ? new Point3(b.x().mid(), b.y().mid(), b.z0() + Math.round(part * b.z().length()))
            : new Point3(b.x0() + Math.round(part * b.x().length()), b.y().mid(), b.z().mid());
    return new Lawful(h.framed()).at(m, m.frame().toWorld(p.x(), p.y(), p.z()));
  }

  private static Member first(WrittenHouse h, String owner, MemberKind kind) {
    return h.framed().membersOf(owner).stream()
        .filter(m -> m.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aTwoBySixJoistTakesThirtyEight() {
    WrittenHouse h = WrittenHouse.of(TwoStoreys.with("2x10", "2x6"));
    // C1-8: min(139.7 / 3, 139.7 - 101.6) = min(46.6, 38.1) = 38.1 mm: the 38 mm bit, not the 51
    assertEquals(38, at(h, first(h, "upper/floor", MemberKind.JOIST), 0.3).plated());
    // C1-3: anywhere along the span
    assertEquals(38, at(h, first(h, "upper/floor", MemberKind.JOIST), 0.5).plated());
  }

  @Test
  void aTwoByFourJoistTakesNone() {
    // C1-8: 88.9 - 101.6 < 0
    WrittenHouse h = WrittenHouse.of(TwoStoreys.with("2x10", "2x4"));
    assertEquals(0, at(h, first(h, "upper/floor", MemberKind.JOIST), 0.3).plated());
    assertTrue(h.sites(SiteKind.JOIST).isEmpty());
  }

  @Test
  void studsByTheirWall() {
    WrittenHouse h = WrittenHouse.of(TwoStoreys.TEXT);
    // C2-3: bearing 40 % of 88.9 = 35.56 mm: 32 mm; B20: 25.4 mm without a plate: 25 mm
    Lawful.Bits bearing = at(h, first(h, "low wall", MemberKind.STUD), 0.5);
    assertEquals(32, bearing.plated());
    assertEquals(25, bearing.plain());
    // C2-5: else 60 % = 53.3 mm, and 5/8 in left each side (C2-6) asks 88.9 - 31.75 = 57.2: 51 mm
    Lawful.Bits light = at(h, first(h, "high wall", MemberKind.STUD), 0.5);
    assertEquals(51, light.plated());
    assertEquals(25, light.plain());
  }

  @Test
  void britishJoistsOnlyBetweenAQuarterAndFourTenths() {
    WrittenHouse h = WrittenHouse.of(TwoStoreys.with("place: us", "place: uk"));
    Member m = first(h, "upper/floor", MemberKind.JOIST);
    // The bearing wall stands at 3816.35 mm, so the west span is 38 to 3816.35 of 38 to 7480.4.
    double span = (3816.35 - 38) / (7480.4 - 38);
    // C4-1: 0.25 x 235 = 58.7 mm (under 65): the ladder's largest, 51
    assertEquals(51, at(h, m, 0.30 * span).plated());
    assertEquals(51, at(h, m, 0.39 * span).plated());
    assertEquals(0, at(h, m, 0.41 * span).plated());
    assertEquals(0, at(h, m, 0.24 * span).plated());
    assertEquals(0, at(h, m, 0.50 * span).plated());
  }

  @Test
  void chordsAndHeadersAreNeverBored() {
    WrittenHouse h = WrittenHouse.of(TwoStoreys.TEXT);
    // C1-10
    assertEquals(0, at(h, first(h, "roof over upper", MemberKind.CHORD), 0.3).plated());
    assertEquals(0, at(h, first(h, "roof over upper", MemberKind.TOP_CHORD), 0.3).plated());
    assertTrue(
        h.hollows().sites().stream()
            .flatMap(s -> s.pierces().stream())
            .noneMatch(id -> id.contains("chord") || id.contains("header")));
  }

  @Test
  void iJoistsAreNeverPiercedTopOrBottom() {
    WrittenHouse h =
        WrittenHouse.of(TwoStoreys.with("joists: 2x10,", "joists: 2x10, kind: i-joist,"));
    // C1-11: flanges never; a straight-up bore beside a joist does not touch it
    assertTrue(
        h.hollows().sites().stream()
            .filter(s -> s.kind() != SiteKind.JOIST)
            .flatMap(s -> s.pierces().stream())
            .noneMatch(id -> id.startsWith("upper/floor/joist")));
  }
}
