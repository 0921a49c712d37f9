package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Interval;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What leads from one storey into the next, and what does not. */
class BetweenStoreysTest {
  /** Joists north-south; the wall's middle lies 150.25 in = 9 x 16 + 6.25 in from the west edge. */
  private static WrittenHouse joistsAlongTheWall(String first) {
    return WrittenHouse.of(
        TwoStoreys.with("run: east-west, from: south 16 in", "run: north-south, from: " + first));
  }

  private static List<Site> stacksOf(WrittenHouse h, String wall) {
    return h.sites(SiteKind.PLATE_STACK).stream().filter(s -> s.id().startsWith(wall)).toList();
  }

  @Test
  void aPlatformBayEndsAtItsPlates() {
    WrittenHouse h = WrittenHouse.of(TwoStoreys.TEXT);
    List<Hollow> low =
        h.hollows().hollows().stream().filter(b -> b.owner().equals("low wall")).toList();
    // 97.5 in less two plies of 38 mm (D10): 2476.5 - 76
    low.forEach(b -> assertEquals(new Interval(38_000_000L, 2_400_500_000L), b.clear().z()));
    // nothing leads on but a bore
    assertTrue(
        h.hollows().sites().stream()
            .filter(s -> s.hollowA().startsWith("low wall") || s.hollowB().startsWith("low wall"))
            .noneMatch(Site::made));
  }

  @Test
  void oneBoreThroughPlatesAndFloorWhereTheBaysLineUp() {
    WrittenHouse h = joistsAlongTheWall("west 14-1/4 in");
    List<Site> stacks = stacksOf(h, "low wall");
    assertFalse(stacks.isEmpty());
    for (Site s : stacks) {
      // plate, plate, the joists' depth (2x10 is 234.95 mm), subfloor 18.3 (D16), plate
      assertEquals(
          List.of("top plate", "top plate", "void", "subfloor", "bottom plate"),
          s.layers().stream().map(Site.Layer::what).toList());
      assertEquals(
          List.of(38_000_000L, 38_000_000L, 234_950_000L, 18_300_000L, 38_000_000L),
          s.layers().stream().map(Site.Layer::thickness).toList());
    }
  }

  @Test
  void aJoistOverTheWallShutsEveryBay() {
    // Counted from 6-1/4 in, the tenth joist stands at 6.25 + 144 = 150.25 in, over the wall's
    // middle: 19 mm each side of it, and the axis may leave the middle by 18.
    assertEquals(List.of(), stacksOf(joistsAlongTheWall("west 6-1/4 in"), "low wall"));
  }

  @Test
  void blockingOverABearingWallShutsItToo() {
    assertEquals(List.of(), stacksOf(WrittenHouse.of(TwoStoreys.TEXT), "low wall"));
    WrittenHouse light = WrittenHouse.of(TwoStoreys.with("bearing: yes", "bearing: no"));
    assertFalse(stacksOf(light, "low wall").isEmpty());
  }

  @Test
  void baysThatDoNotStandOverEachOtherHaveNoStack() {
    // The office is 3 ft wider than the garage, so the upper wall stands 3 ft further east.
    WrittenHouse h =
        WrittenHouse.of(
            TwoStoreys.with(
                "bearing: yes", "bearing: no",
                "office: { level: upper, size: 12 ft x", "office: { level: upper, size: 15 ft x",
                "bedroom: { level: upper, size: 11 ft 7-1/2 in",
                    "bedroom: { level: upper, size: 8 ft 7-1/2 in"));
    assertEquals(List.of(), stacksOf(h, "low wall"));
  }

  @Test
  void aBalloonBayRunsThroughBothStoreys() {
    WrittenHouse h =
        WrittenHouse.of(TwoStoreys.with("built: 1994", "built: 1905\nframing: balloon"));
    Hollow tall =
        h.hollows().hollows().stream()
            .filter(b -> b.owner().startsWith("ground/") && b.kind() == HollowKind.STUD_BAY)
            .max((a, b) -> Long.compare(a.clear().z().length(), b.clear().z().length()))
            .orElseThrow();
    // More than a storey: from the sole plate to the plates under the attic.
    long attic = h.framed().attics().get(0).plateZ();
    assertEquals(attic - 76_000_000L, tall.frame().origin().z() + tall.clear().z1());
    assertEquals(38_000_000L, tall.clear().z0());
  }

  @Test
  void aClosedChaseNeedsAHoleAndAnOpenOneDoesNot() {
    WrittenHouse closed = WrittenHouse.of(TwoStoreys.TEXT);
    Site floor = closed.hollows().findSite("chase/shaft/floor-upper").orElseThrow();
    assertFalse(floor.made());
    // from the joists' underside: their depth, then the subfloor
    assertEquals(
        List.of("void", "subfloor"), floor.layers().stream().map(Site.Layer::what).toList());
    WrittenHouse open = WrittenHouse.of(TwoStoreys.with("upper: closed", "upper: open"));
    Site way = open.hollows().findSite("chase/shaft/way-upper").orElseThrow();
    assertTrue(way.made());
    assertEquals(SiteKind.OPENING, way.kind());
    assertTrue(open.hollows().findSite("chase/shaft/floor-upper").isEmpty());
  }

  @Test
  void aFlueIsRefused() {
    WrittenHouse h =
        WrittenHouse.of(TwoStoreys.with("known: yes,", "known: yes, contents: [flue],"));
    assertTrue(h.hollows().hollows().stream().noneMatch(b -> b.kind() == HollowKind.CHASE));
    // C3-5
    assertEquals(
        "it holds a flue: no cable goes there", h.findRefused("chase shaft").orElseThrow().why());
  }

  @Test
  void masonryHasNoBays() {
    WrittenHouse h =
        WrittenHouse.of(
            TwoStoreys.with(
                "name: low wall, bearing: yes, studs-from: south 8 in",
                "name: low wall, kind: masonry"));
    assertTrue(
        h.hollows().hollows().stream()
            .noneMatch(b -> b.owner().equals("low wall") && b.kind() == HollowKind.STUD_BAY));
  }

  @Test
  void aFireBlockPartsABayAndIsBored() {
    WrittenHouse h =
        WrittenHouse.of(TwoStoreys.with("name: high wall,", "name: high wall, blocks-at: [4 ft],"));
    List<Hollow> bays =
        h.hollows().hollows().stream().filter(b -> b.owner().equals("high wall")).toList();
    // Block's middle 48 in over the plate's underside: 1219.2 -+ 19 mm.
    assertTrue(
        bays.stream()
            .anyMatch(b -> b.clear().z().equals(new Interval(38_000_000L, 1_200_200_000L))));
    // upper wall: 96.5 in = 2451.1 less 76
    assertTrue(
        bays.stream()
            .anyMatch(b -> b.clear().z().equals(new Interval(1_238_200_000L, 2_375_100_000L))));
    // one bore a bay
    assertEquals(bays.size() / 2, h.sites(SiteKind.BLOCK).size());
  }
}
