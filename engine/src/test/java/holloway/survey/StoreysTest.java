package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Direction;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.support.HouseBuilder;
import holloway.support.RoomDraft;
import holloway.units.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Heights, the lower garage, and an upper storey that stands partly over it. */
class StoreysTest {
  static final Timber JOIST = Timber.solid("2x10", Length.mm(38), Length.mm(235));

  static Placed twoLevels(Length rise) {
    HouseBuilder b = house().slab("ground", ft(8));
    b.level(
        "upper",
        b.joistFloor(JOIST, Direction.EAST_WEST),
        ft(8),
        Optional.of("ground"),
        Optional.of(rise));
    b.first("den", "ground", ft(12), ft(10))
        .above("bed", "upper", ft(12), ft(10), "den", Side.SOUTH, Side.WEST);
    return Survey.of(b.build()).value();
  }

  /** Garage 20 ft x 20 ft, slab 4 in lower; kitchen east of it; an office over both. */
  private static Placed withGarage() {
    return Survey.of(
            house()
                .slab("ground", ft(8, 1))
                .joists("upper", JOIST, Direction.EAST_WEST, ft(8), "ground")
                .first("garage", "ground", ft(20), ft(20))
                .with("garage", RoomDraft::asGarage)
                .with("garage", r -> r.atElevation(in(-4)))
                .beside("kitchen", ft(14), ft(20), Side.EAST, "garage", Side.SOUTH)
                .above("office", "upper", ft(24), ft(20), "kitchen", Side.SOUTH, Side.EAST)
                .build())
        .value();
  }

  @Test
  void theRiseIsCeilingBoardJoistsAndSubfloor() {
    Placed p = withGarage();
    // zero is the garage slab, 101.6 mm below the ground floor
    assertEquals(0, p.getRoom("garage").floorZ());
    assertEquals(Length.mm(101.6).nm(), p.getRoom("kitchen").floorZ());
    double ceiling = 101.6 + 97 * 25.4;
    assertEquals(Length.mm(ceiling).nm(), p.getRoom("kitchen").ceilingZ());
    // 12.7 board + 235 joist + 18.3 subfloor
    assertEquals(Length.mm(ceiling + 266).nm(), p.getRoom("office").floorZ());
    // the garage's 5/8 in board hangs on the same joists, so it is 3.175 mm lower
    assertEquals(Length.mm(ceiling - 3.175).nm(), p.getRoom("garage").ceilingZ());
  }

  @Test
  void everyWallOfALevelCarriesTheSameJoists() {
    Placed p = withGarage();
    long underside = p.getRoom("kitchen").ceilingZ() + 12_700_000;
    for (Wall w : p.walls()) {
      if (w.level().equals("ground")) {
        assertEquals(underside, w.frame().origin().z() + w.height(), w.id());
      }
    }
    assertEquals(underside + 235_000_000 + 18_300_000, p.getLevel("upper").floorZ());
  }

  @Test
  void theSeparationStandsOnTheHigherFloorAndShowsTheLowerOneBelowItsPlate() {
    Wall w = withGarage().getWall("ground/garage-kitchen/1");
    assertTrue(w.garageSeparation());
    assertTrue(w.bearing().value());
    assertEquals(Length.mm(101.6).nm(), w.frame().origin().z());
    Wall.WallFace garage =
        w.faces().stream().filter(f -> f.room().equals("garage")).findFirst().orElseThrow();
    assertEquals(Length.mm(-101.6).nm(), garage.floorZ());
  }

  @Test
  void theUpperOuterWallStandsOverTheMiddleOfTheGarage() {
    Placed p = withGarage();
    // kitchen's east face: 20 ft + 4-1/2 in + 14 ft = 412.5 in; office is 288 in wide
    long west = Length.inches(249, 2).nm();
    assertEquals(west, p.getRoom("office").outline().xRange().lo());
    Wall upper =
        p.walls().stream()
            .filter(w -> w.level().equals("upper") && w.outside() == 1 && w.frame().u().y() == 1)
            .findFirst()
            .orElseThrow();
    // v is west, so the room's face is t = 0 at x = west
    assertEquals(west, upper.frame().origin().x());
    assertTrue(west < p.getRoom("garage").outline().xRange().hi());
    assertFalse(
        p.walls().stream()
            .filter(w -> w.level().equals("ground"))
            .anyMatch(w -> w.frame().origin().x() == west));
  }

  @Test
  void anAssumedTieReachesTheUpperWallsSpread() {
    Placed p = withGarage();
    double ground = p.getWall("ground/garage-kitchen/1").spread().toMm();
    Wall upper =
        p.walls().stream()
            .filter(w -> w.level().equals("upper") && w.outside() == 0 && w.frame().u().y() == 1)
            .findFirst()
            .orElseThrow();
    // the office's east face is tied to the kitchen's with 25 mm; that one is two tapes and a wall
    // from the garage's corner: root(25^2 + 5^2 + 5^2 + (4/3)^2) = 26.01 mm
    assertEquals(Math.sqrt(625 + 50 + 16 / 9.0), upper.spread().toMm(), 0.01);
    assertTrue(ground < 6);
    assertTrue(p.assumed().stream().anyMatch(a -> a.startsWith("office above kitchen")));
  }

  @Test
  void aTapedRiseIsAdjustedWithTheCeilingHeight() {
    // made up 2704.4 mm (see LoopTest), taped 8 ft 11 in = 2717.8 mm: 13.4 mm out of 54 mm^2;
    // the rise gives 25/54 of it, the floor 4/54
    Placed p = twoLevels(ft(8, 11));
    assertTrue(p.misclosures().isEmpty());
    assertEquals(2717.8 - 13.4 * 25 / 54, p.getRoom("bed").floorZ() / 1e6, 0.001);
    // sections are what they are: the ceiling stays one board and one deck below the upper floor
    assertEquals(p.getRoom("bed").floorZ() - 266_000_000, p.getRoom("den").ceilingZ());
  }

  @Test
  void aDroppedCeilingStaysDropped() {
    Placed p =
        Survey.of(
                house()
                    .slab("ground", ft(8))
                    .first("den", "ground", ft(12), ft(10))
                    .beside("bath", ft(6), ft(10), Side.EAST, "den", Side.SOUTH)
                    .with("bath", r -> r.withCeiling(ft(7)))
                    .build())
            .value();
    assertEquals(ft(7).nm(), p.getRoom("bath").ceilingZ());
    // the wall between still goes up to the higher ceiling
    assertEquals(ft(8).nm() + 12_700_000, p.getWall("ground/bath-den/1").height());
  }

  @Test
  void levelsAreOrderedByTheRoomsThatStandOnEachOther() {
    Placed p =
        Survey.of(
                house()
                    .slab("a-upper", ft(8))
                    .slab("b-ground", ft(8))
                    .first("den", "b-ground", ft(12), ft(10))
                    .above("bed", "a-upper", ft(12), ft(10), "den", Side.SOUTH, Side.WEST)
                    .build())
            .value();
    assertEquals(
        "[b-ground, a-upper]", p.levels().stream().map(PlacedLevel::name).toList().toString());
  }
}
