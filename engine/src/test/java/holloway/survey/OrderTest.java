package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.house.Direction;
import holloway.house.FaceRef;
import holloway.house.Side;
import holloway.house.Tape;
import holloway.house.Where;
import holloway.support.HouseBuilder;
import holloway.support.RoomDraft;
import holloway.support.WallDraft;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Neither the order of the file nor which way the house is turned changes what is found. */
class OrderTest {
  private static HouseBuilder some(boolean mirrored) {
    Side east = mirrored ? Side.WEST : Side.EAST;
    HouseBuilder b =
        house()
            .slab("ground", ft(8, 1))
            .joists("upper", StoreysTest.JOIST, Direction.EAST_WEST, ft(8), "ground")
            .first("garage", "ground", ft(21, 4), ft(22))
            .with("garage", RoomDraft::asGarage)
            .beside("utility", ft(8), ft(9, 2), east, "garage", Side.NORTH)
            .beside("kitchen", ft(14), ft(12, 5), east, "garage", Side.SOUTH)
            .above("office", "upper", ft(11, 3), ft(10), "kitchen", Side.SOUTH, east)
            .beside("landing", ft(9), ft(10), east.opposite(), "office", Side.SOUTH, in(6))
            .wall(WallDraft.between("kitchen", "utility").bearing(true));
    FaceRef low = new FaceRef("garage", east.opposite(), 1, Where.NOWHERE);
    FaceRef high = new FaceRef("kitchen", east, 1, Where.NOWHERE);
    return b.tape(
        new Tape(mirrored ? high : low, mirrored ? low : high, b.taped(ft(35, 9)), b.where()));
  }

  @Test
  void aShuffledFileGivesTheSameHouse() {
    Placed straight = Survey.of(some(false).build()).value();
    for (long seed = 0; seed < 20; seed++) {
      Placed mixed = Survey.of(some(false).shuffled(seed)).value();
      assertEquals(straight.rooms(), mixed.rooms(), "seed " + seed);
      assertEquals(straight.walls(), mixed.walls(), "seed " + seed);
      assertEquals(straight.levels(), mixed.levels(), "seed " + seed);
      assertEquals(straight.misclosures(), mixed.misclosures(), "seed " + seed);
      assertEquals(straight.unaccounted(), mixed.unaccounted(), "seed " + seed);
      assertEquals(straight.assumed(), mixed.assumed(), "seed " + seed);
    }
  }

  /** Positions are rounded to the micrometre on either side, so a length may differ by two. */
  @Test
  void aMirroredHouseKeepsItsLengths() {
    Placed straight = Survey.of(some(false).build()).value();
    Placed mirrored = Survey.of(some(true).build()).value();
    List<long[]> a = lengths(straight);
    List<long[]> b = lengths(mirrored);
    assertEquals(a.size(), b.size());
    for (int i = 0; i < a.size(); i++) {
      for (int k = 0; k < 3; k++) {
        assertEquals(a.get(i)[k], b.get(i)[k], 2000.0, "wall " + i);
      }
    }
    for (PlacedRoom r : straight.rooms()) {
      PlacedRoom m = mirrored.getRoom(r.name());
      assertEquals(r.outline().xRange().length(), m.outline().xRange().length(), 2000.0, r.name());
      assertEquals(r.outline().yRange().length(), m.outline().yRange().length(), 2000.0, r.name());
    }
  }

  /** Length, thickness and height of every wall; names differ where the first room differs. */
  private static List<long[]> lengths(Placed p) {
    return p.walls().stream()
        .map(w -> new long[] {w.length(), w.thickness(), w.height()})
        .sorted(Comparator.comparingLong((long[] w) -> w[0]).thenComparingLong(w -> w[1]))
        .toList();
  }
}
