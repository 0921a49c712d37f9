package holloway.framing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Interval;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.pipeline.TwoStoreys;
import holloway.pipeline.WrittenHouse;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Joists, rims and blocking of a floor 12 ft wide inside, over a bearing wall. */
class FloorFramingTest {
  private static final WrittenHouse HOUSE = WrittenHouse.of(TwoStoreys.TEXT);

  private static List<Member> of(MemberKind kind) {
    return HOUSE.framed().membersOf("upper/floor").stream().filter(m -> m.kind() == kind).toList();
  }

  @Test
  void joistsEverySixteenInches() {
    // Outer face to outer face: 144 in + 2 x (1/2 in board + 3-1/2 in stud) = 152 in = 3860.8 mm.
    Deck d = HOUSE.framed().decks().get(0);
    assertEquals(3_860_800_000L, d.outline().yRange().length());
    // Centres at 16, 32 ... 144 in: nine; 152 - 144 = 8 in leaves room before the edge joist.
    // With one along each edge: eleven.
    assertEquals(11, d.joists().size());
    for (int k = 1; k <= 9; k++) {
      Interval j = d.joists().get(k);
      assertEquals(k * 406_400_000L, (j.lo() + j.hi()) / 2, "joist " + k);
    }
    assertEquals(11, of(MemberKind.JOIST).size());
    assertEquals(2, of(MemberKind.RIM).size());
    // D4: 235 mm deep, under 18.3 mm of subfloor (D16).
    assertEquals(new Interval(-253_250_000L, -18_300_000L), d.joistZ());
  }

  @Test
  void blockingOverTheBearingWall() {
    // Wall centre: 12 ft room + 1/2 in board + half of 3-1/2 in = 146.25 in from the room's west
    // face, + 4 in to the framing's corner = 150.25 in = 3816.35 mm; 38 mm thick.
    List<Member> blocking = of(MemberKind.BLOCKING);
    // eleven joists make ten bays
    assertEquals(10, blocking.size());
    blocking.forEach(
        m -> assertEquals(new Interval(3_797_350_000L, 3_835_350_000L), m.box().x(), m.id()));
  }

  @Test
  void theBlockingPartsEachBayAndIsBoredToCrossBetweenTheRooms() {
    List<Hollow> bays =
        HOUSE.hollows().hollows().stream().filter(h -> h.kind() == HollowKind.JOIST_BAY).toList();
    assertEquals(20, bays.size());
    List<Site> through = HOUSE.sites(SiteKind.BLOCKING);
    assertEquals(10, through.size());
    // from rim (38 mm) to blocking, and from blocking to the other rim
    Hollow west = HOUSE.hollows().findHollow("upper/floor/bay-1640-40").orElseThrow();
    assertEquals(new Interval(38_000_000L, 3_797_350_000L), west.clear().x());
    // bay four lies between joists 4 and 5: 64 + 3/4 in to 80 - 3/4 in
    assertEquals(new Interval(1_644_650_000L, 2_012_950_000L), west.clear().y());
    TreeSet<String> joined = new TreeSet<>();
    through.forEach(s -> joined.addAll(List.of(s.hollowA(), s.hollowB())));
    assertEquals(20, joined.size());
  }

  @Test
  void aPartitionThatCarriesNothingLeavesTheBaysWhole() {
    WrittenHouse h = WrittenHouse.of(TwoStoreys.with("bearing: yes", "bearing: no"));
    assertEquals(
        10, h.hollows().hollows().stream().filter(b -> b.kind() == HollowKind.JOIST_BAY).count());
    assertEquals(List.of(), h.sites(SiteKind.BLOCKING));
  }
}
