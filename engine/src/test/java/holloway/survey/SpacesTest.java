package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Chase;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.Where;
import holloway.support.HouseBuilder;
import holloway.support.WallDraft;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Space nothing accounts for, and walls whose gap tells more than the person did. */
class SpacesTest {
  /** A hall south of two rooms that leave a gap between them; a store closes it in the north. */
  static HouseBuilder gap(Length gap) {
    HouseBuilder b =
        house()
            .slab("ground", ft(8))
            .first("hall", "ground", ft(24), ft(5))
            .beside("left", ft(10), ft(9), Side.NORTH, "hall", Side.WEST);
    Length x = ft(10).plus(gap);
    Length y = ft(5).plus(in(9, 2));
    return b.room(
            "right",
            "ground",
            ft(24).minus(x),
            ft(9),
            new Placing.At(b.taped(x), b.taped(y), b.where()))
        .beside("store", ft(24), ft(6), Side.NORTH, "left", Side.WEST);
  }

  @Test
  void aGapOfTwoFeetBetweenRoomsIsReportedAsAChase() {
    Placed p = Survey.of(gap(in(24)).build()).value();
    assertEquals(1, p.unaccounted().size());
    Unaccounted u = p.unaccounted().get(0);
    // across: 609.6 less two walls of 12.7 + 88.9 = 406.4 mm; along: from wall to wall, 9 ft of
    // rooms
    assertEquals(406.4, u.outline().xRange().length() / 1e6, 0.01);
    assertEquals(ft(9).toMm(), u.outline().yRange().length() / 1e6, 40);
    assertEquals(u.outline().signedAreaMm2() / 1e6, u.areaM2(), 0.001);
    assertEquals("ground", u.level());
  }

  @Test
  void itsWallsAreInnerOnesSeenFromOneSide() {
    Placed p = Survey.of(gap(in(24)).build()).value();
    Wall w = p.getWall("ground/left-space/1");
    assertEquals(-1, w.outside());
    assertEquals(1, w.faces().size());
    assertEquals(12_700_000 + 88_900_000, w.thickness());
  }

  @Test
  void aStatedChaseAccountsForIt() {
    Fact<Length> along = Fact.measured(ft(9), Where.NOWHERE);
    Fact<Length> away = Fact.measured(in(16), Where.NOWHERE);
    Chase chase =
        new Chase(
            "flue side",
            new FaceRef("left", Side.EAST, 1, Where.NOWHERE),
            Optional.empty(),
            false,
            "ground",
            "attic",
            along,
            away,
            List.of(),
            Map.of(),
            true,
            Where.NOWHERE);
    assertTrue(Survey.of(gap(in(24)).chase(chase).build()).value().unaccounted().isEmpty());
  }

  @Test
  void anOrdinaryHouseHasNone() {
    assertTrue(Survey.of(gap(in(9, 2)).build()).value().unaccounted().isEmpty());
  }

  @Test
  void aGapOfSixAndAHalfInchesIsTakenForTwoBySixAndSaidSo() {
    var outcome = Survey.of(gap(in(13, 2)).build());
    Wall w = outcome.value().getWall("ground/left-right/1");
    assertEquals("2x6", w.studs().value().name());
    assertEquals(139_700_000, w.core().length());
    assertTrue(outcome.findings().stream().anyMatch(f -> f.rule().equals("wall-taken-for-2x6")));
  }

  @Test
  void statedStudsThatDoNotFitAreAFinding() {
    Timber wide = Timber.solid("2x8", Length.mm(38), Length.mm(184));
    var outcome =
        Survey.of(
            gap(in(13, 2))
                .wall(WallDraft.between("left", "right").studs(wide).thickness(in(13, 2)))
                .build());
    assertTrue(outcome.findings().stream().anyMatch(f -> f.rule().equals("studs-do-not-fit")));
  }

  @Test
  void masonryFillsTheGapBetweenItsPlaster() {
    Placed p =
        Survey.of(
                gap(in(5))
                    .wall(
                        WallDraft.between("left", "right")
                            .kind(WallSpec.Kind.MASONRY)
                            .thickness(in(5)))
                    .build())
            .value();
    Wall w = p.getWall("ground/left-right/1");
    assertEquals(127_000_000 - 2 * 13_000_000, w.core().length());
    assertEquals(WallSpec.Kind.MASONRY, w.kind());
  }

  @Test
  void fillFollowsTheEra() {
    Wall young = outer(gap(in(9, 2)).built(1994));
    assertEquals(Fill.FACED_BATT, young.fill().value());
    assertTrue(young.fill().isAssumed());
    assertEquals(Fill.UNKNOWN, outer(gap(in(9, 2)).built(1925)).fill().value());
  }

  private static Wall outer(HouseBuilder b) {
    return Survey.of(b.build()).value().walls().stream()
        .filter(Wall::isOuter)
        .findFirst()
        .orElseThrow();
  }
}
