package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.support.Chain;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What leads from one storey to the next, in a platform and in a balloon frame. */
class StoreysTest {
  /**
   * Two storeys of two rooms each, one over the other, joists east-west, so the middle wall crosses
   * them.
   */
  private static final String HOUSE =
      """
      house: Two Storeys
      place: us
      built: 1990
      framing: FRAMING
      outer-walls: { studs: 2x4, every: 16 in, fill: empty }
      levels:
        ground: { floor: slab, ceiling-height: 8 ft 1 in }
        upper: { above: ground, floor: { joists: JOISTS, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        west room: { level: ground, size: 4.000 m x 4.000 m }
        east room: { level: ground, size: 4.000 m x 4.000 m, east-of: west room, align: south }
        bed one: { level: upper, size: 4.000 m x 4.000 m, above: west room, align: south-west }
        bed two: { level: upper, size: 4.000 m x 4.000 m, east-of: bed one, align: south }
      walls:
        - { between: [west room, east room], name: lower wall, bearing: BEARING }
        - { between: [bed one, bed two], name: upper wall }
        - { side: west room west, name: lower outer }
        - { side: bed one west, name: upper outer }
      EXTRA
      cabinet: { in: west room, wall: north, from: west 1 m, height: 1 m }
      outlets: [{ name: desk, in: bed two, wall: west, from: south 2 m, height: 400 mm, cables: [cat6] }]
      """;

  private static HollowHouse house(String framing, String bearing, String joists, String extra) {
    return Chain.of(
            HOUSE
                .replace("FRAMING", framing)
                .replace("BEARING", bearing)
                .replace("JOISTS", joists)
                .replace("EXTRA", extra))
        .house();
  }

  private static List<Site> kind(HollowHouse h, SiteKind kind, String prefix) {
    return h.sites().stream().filter(s -> s.kind() == kind && s.id().startsWith(prefix)).toList();
  }

  @Test
  void aPlatformBayEndsAtItsPlatesAndOneBoreInLineLeadsOn() {
    HollowHouse h = house("platform", "no", "2x10", "");
    Hollow bay =
        h.hollows().stream().filter(x -> x.owner().equals("lower wall")).findFirst().orElseThrow();
    // Wall 2463.8 + 12.7 = 2476.5 high, less a bottom plate of 38 and two top plates of 76.
    assertEquals(38.0, bay.clear().z0() / 1e6);
    assertEquals(2400.5, bay.clear().z1() / 1e6);
    List<Site> stacks = kind(h, SiteKind.PLATE_STACK, "lower wall/");
    assertFalse(stacks.isEmpty());
    // Two top plates, the joist bay of 9-1/4 in, 23/32 in of subfloor, one bottom plate.
    List<String> layers =
        stacks.get(0).layers().stream()
            .map(l -> l.what() + " " + Math.round(l.thickness() / 1e5) / 10.0)
            .toList();
    assertEquals(
        List.of(
            "top plate 38.0", "top plate 38.0", "void 235.0", "subfloor 18.3", "bottom plate 38.0"),
        layers);
  }

  @Test
  void noBoreInLineHasAJoistInIt() {
    HollowHouse h = house("platform", "no", "2x10", "");
    // Joists stand at 16 in centres from the south edge, as the studs of the wall do: every axis
    // keeps
    // off them by more than half a bit.
    for (Site s : kind(h, SiteKind.PLATE_STACK, "lower wall/")) {
      assertTrue(s.pierces().stream().noneMatch(p -> p.contains("joist")), s.id());
    }
  }

  @Test
  void blockingOverABearingWallShutsTheJoistBaysAndTheLine() {
    HollowHouse h = house("platform", "yes", "2x10", "");
    // Blocks stand on the wall's centre line: 19 mm each side leave no room for a straight bore
    // there.
    assertTrue(
        kind(h, SiteKind.PLATE_STACK, "lower wall/").stream().allMatch(s -> s.platedBit() <= 16));
    long shut = h.sites().stream().filter(s -> s.kind() == SiteKind.BLOCKING).count();
    assertTrue(
        shut > 5, "each joist bay is cut in two and could be bored through its block: " + shut);
  }

  @Test
  void aBalloonBayRunsThroughBothStoreys() {
    HollowHouse h = house("balloon", "no", "2x10", "");
    Hollow bay =
        h.hollows().stream()
            .filter(x -> x.owner().equals("lower outer") && x.clear().x().length() > 300_000_000)
            .findFirst()
            .orElseThrow();
    // From the sill plate (38) to under the top plates of the upper wall: 2476.5 + 234.95 + 18.3 +
    // 2438.4 + 12.7 - 76.
    assertEquals(38.0, bay.clear().z0() / 1e6);
    assertEquals(2476.5 + 234.95 + 18.3 + 2438.4 + 12.7 - 76, bay.clear().z1() / 1e6, 0.06);
    assertTrue(kind(h, SiteKind.PLATE_STACK, "lower outer/").isEmpty());
  }

  @Test
  void aFireBlockDividesABay() {
    String block =
        "obstacles: [{ fire-block, side: west room east, from: south 1 m, width: 600 mm, bottom: 1.2 m, top: 1.24 m }]";
    HollowHouse h = house("platform", "no", "2x10", block);
    List<Site> blocks = kind(h, SiteKind.BLOCK, "lower wall/");
    assertFalse(blocks.isEmpty());
    assertTrue(blocks.get(0).layers().get(0).what().equals("fire block"));
  }

  @Test
  void solidJoistsAreBoredInTheirMiddleAndIJoistsNever() {
    List<Site> solid =
        house("platform", "no", "2x10", "").sites().stream()
            .filter(s -> s.kind() == SiteKind.JOIST)
            .toList();
    assertFalse(solid.isEmpty());
    // C1-8: 2x10, min(d/3, d - 4 in) = 3.08 in = 78 mm: the widest bit of the ladder, tried for a
    // 32
    // mm hole at most, is lawful; the axis lies at half depth.
    assertTrue(solid.stream().allMatch(s -> s.platedBit() == 32));
    HollowHouse webs = house("platform", "no", "2x10, kind: open-web", "");
    assertTrue(webs.sites().stream().noneMatch(s -> s.kind() == SiteKind.JOIST));
    assertTrue(webs.refused().stream().anyMatch(r -> r.what().startsWith("joist between")));
  }
}
