package holloway.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point2;
import holloway.hollow.SiteKind;
import holloway.pipeline.WrittenHouse;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A floor between masonry walls begins with a joist along each of them, also where a framed
 * partition upstairs reaches into their plaster.
 */
class EdgeJoistTest {
  private static final String TEXT =
      """
      house: Stone Toy
      place: eu
      built: 1905
      outer-walls: { kind: masonry, thickness: 40 cm }
      levels:
        ground: { floor: slab, ceiling-height: 3 m }
        first: { above: ground, ceiling-height: 2.8 m, floor: { joists: 140x200, every: 800 mm, run: north-south } }
      rooms:
        salon: { level: ground, size: 5 m x 8.15 m, plain: yes }
        studio: { level: first, size: 5 m x 4 m, above: salon, align: south-west, tied: measured, plain: yes }
        study: { level: first, size: 5 m x 4 m, north-of: studio, align: west }
      walls:
        - { between: [studio, study], studs: 80x120, every: 600 mm }
      cabinet: { in: salon, wall: south, from: west 2 m, height: 1 m }
      outlets:
        - { name: desk, in: studio, wall: south, from: west 2 m, height: 300 mm, cables: [cat6] }
      """;

  @Test
  void alongBothMasonryWalls() {
    WrittenHouse house = WrittenHouse.of(TEXT);
    long west = house.placed().getRoom("studio").outline().xRange().lo();
    List<Deck> decks = house.framed().decks();
    assertEquals(1, decks.size());
    // From face to face: the partition's ends in the plaster, 13 mm each, are no floor.
    assertEquals(west, decks.get(0).outline().xRange().lo());
    assertEquals(west + 5_000_000_000L, decks.get(0).outline().xRange().hi());
    for (long x : new long[] {west + 70_000_000, west + 4_930_000_000L}) {
      assertTrue(
          house.framed().members().stream()
              .filter(m -> m.kind() == MemberKind.JOIST)
              .anyMatch(m -> holds(m, x)),
          "no joist at " + x);
    }
  }

  private static boolean holds(Member m, long x) {
    long a = m.frame().toWorld(m.box().x0(), m.box().y0(), 0).x();
    long b = m.frame().toWorld(m.box().x0(), m.box().y1(), 0).x();
    return Math.min(a, b) <= x && x <= Math.max(a, b);
  }

  /** The joist along the west wall is 140 mm wide: a bore 70 mm from the corner meets it. */
  @Test
  void noBoreComesUpInIt() {
    WrittenHouse house = WrittenHouse.of(TEXT);
    Point2 corner = house.placed().getRoom("studio").outline().corners().get(0);
    List<Long> ways =
        house.sites(SiteKind.CEILING_AND_FLOOR).stream()
            .map(s -> Math.abs(s.a().x() - corner.x()) / 1_000_000)
            .toList();
    assertTrue(!ways.isEmpty() && ways.stream().allMatch(mm -> mm >= 140 + 6), ways::toString);
  }
}
