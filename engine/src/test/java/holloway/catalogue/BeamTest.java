package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.SiteKind;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A beam below a ceiling is gone under; one within the joists ends them on both sides. */
@Feature("hanging beam")
class BeamTest {
  private static final String PLAIN =
      """
      house: Beam Toy
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft }
        upper: { above: ground, floor: { joists: 2x10, run: east-west }, ceiling-height: 8 ft }
      rooms:
        hall: { level: ground, size: 20 ft x 10 ft }
        loft: { level: upper, size: 20 ft x 10 ft, above: hall, align: south-west }
      roof:
        - { over: upper, shape: gable, ridge: east-west, pitch: 6/12, eaves: 16 in, frame: trusses }
      cabinet: { in: hall, wall: north, from: west 4 ft, height: 7 ft 6 in }
      outlets:
        - { name: desk, in: hall, wall: north, from: east 4 ft, height: 7 ft 6 in, cables: [cat6] }
      """;

  private static String beam(String more) {
    return PLAIN.replace(
        "roof:",
        "beams:\n  - { beam: spine, in: hall, run: north-south, from: west 10 ft, "
            + more
            + " }\nroof:");
  }

  private static final String HANGING = beam("width: 6 in, drop: 10 in");
  private static final String STEEL = beam("width: 6 in, depth: 9-1/4 in, made: steel");

  private static Plan inSight(String text) {
    return WrittenHouse.of(text).plan("attic", "joist-bays", "outside");
  }

  private static List<Hollow> bays(String text) {
    return WrittenHouse.of(text).hollows().hollows().stream()
        .filter(h -> h.kind() == HollowKind.JOIST_BAY)
        .toList();
  }

  @Test
  void cableOnTheWallGoesUnderAHangingBeam() {
    double straight = inSight(PLAIN).runs().get(0).routeM();
    Plan under = inSight(HANGING);
    assertEquals(0, under.totals().holes());
    // From 7 ft 6 in up to the line 40 mm below the ceiling at 2398.4 mm, down to 12 mm below the
    // beam at 2172.4 mm and up again: 2 x 226 mm more than the line over both.
    double more = under.runs().get(0).routeM() - straight;
    assertTrue(more > 0.1 && more <= 0.46, () -> "more by " + more);
    long lowest =
        under.runs().get(0).steps().stream()
            .flatMap(s -> s.path().stream())
            .filter(p -> Math.abs(p.x() - 3_048_000_000L) < 110_000_000)
            .mapToLong(p -> p.z())
            .min()
            .orElseThrow();
    assertEquals(2_438_400_000L - 254_000_000 - 12_000_000, lowest);
  }

  @Test
  void theRefereeSeesABeamGoneThrough() {
    Plan straight = inSight(PLAIN);
    WrittenHouse beamed = WrittenHouse.of(HANGING);
    String says = Referee.check(straight, beamed.hollows(), beamed.request()).refusals().toString();
    assertTrue(says.contains("goes through the beam spine of hall"), says);
  }

  @Test
  void joistsRunOnOverAHangingBeam() {
    assertEquals(bays(PLAIN).size(), bays(HANGING).size());
    WrittenHouse house = WrittenHouse.of(HANGING);
    assertTrue(
        house.framed().members().stream().anyMatch(m -> m.id().contains("/beam-post-")),
        "nobody knows what carries its ends: the bay there is shut");
  }

  @Test
  @Feature("steel within the joists' depth")
  void joistsEndOnBothSidesOfASteelBeam() {
    assertEquals(2 * bays(PLAIN).size(), bays(STEEL).size());
    long edge = 3_048_000_000L - 76_200_000;
    for (Hollow h : bays(STEEL)) {
      long u0 = h.frame().origin().x() + h.clear().x0();
      long u1 = h.frame().origin().x() + h.clear().x1();
      assertTrue(u1 <= edge || u0 >= edge + 152_400_000, h::toString);
    }
    WrittenHouse steel = WrittenHouse.of(STEEL);
    assertTrue(
        steel.framed().members().stream()
            .filter(m -> m.kind().word().equals("joist"))
            // those along the edges of the floor run on past its ends
            .filter(m -> m.box().y0() > 100_000_000 && m.box().y1() < 3_250_000_000L)
            .filter(
                m -> {
                  long u0 = m.frame().origin().x() + m.box().x0();
                  long u1 = m.frame().origin().x() + m.box().x1();
                  return u0 < edge && u1 > edge + 152_400_000;
                })
            .toList()
            .isEmpty());
    // nothing is bored between the bays on its two sides
    assertTrue(
        steel.sites(SiteKind.BLOCKING).stream().noneMatch(s -> s.layers().size() != 1),
        "the beam is no blocking");
    assertEquals(0, steel.sites(SiteKind.BLOCKING).size());
  }

  @Test
  @Feature("steel within the joists' depth")
  void aRunThroughTheBaysIsLostToIt() {
    String ceilings =
        "cabinet: { in: loft, wall: west, from: south 5 ft, height: 16 in }\noutlets:\n"
            + "  - { name: desk, in: loft, wall: east, from: south 5 ft, height: 16 in, cables: [cat6] }\n";
    String plain = PLAIN.substring(0, PLAIN.indexOf("cabinet:")) + ceilings;
    Plan through = WrittenHouse.of(plain).plan("surface", "attic", "outside");
    String steel = STEEL.substring(0, STEEL.indexOf("cabinet:")) + ceilings;
    Plan with = WrittenHouse.of(steel).plan("surface", "attic", "outside");
    assertTrue(
        WrittenHouse.way(through, "desk/cat6-1").stream()
            .anyMatch(s -> s.startsWith("upper/floor/bay")),
        through.runs()::toString);
    // Through one bay from wall to wall; with the beam round by the studs of the north wall.
    assertTrue(with.totals().minutes() > through.totals().minutes() + 60, with.totals()::toString);
    WrittenHouse beamed = WrittenHouse.of(steel);
    String says = Referee.check(through, beamed.hollows(), beamed.request()).refusals().toString();
    assertTrue(says.contains("goes through the beam spine of hall"), says);
  }
}
