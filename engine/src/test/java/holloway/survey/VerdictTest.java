package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static holloway.support.HouseBuilder.in;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.FaceRef;
import holloway.house.Side;
import holloway.house.Tape;
import holloway.house.Where;
import holloway.support.HouseBuilder;
import holloway.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rooms of {@link LoopTest}, and what is said of them. */
class VerdictTest {
  private static HouseBuilder rows(Length middle) {
    return house()
        .slab("ground", ft(8))
        .first("a", "ground", ft(10), ft(8))
        .beside("b", ft(10), ft(8), Side.EAST, "a", Side.SOUTH)
        .beside("c", ft(10), ft(8), Side.EAST, "b", Side.SOUTH)
        .beside("d", ft(9), ft(8), Side.NORTH, "a", Side.WEST)
        .beside("e", middle, ft(8), Side.EAST, "d", Side.SOUTH)
        .beside("f", ft(9), ft(8), Side.NORTH, "c", Side.EAST);
  }

  private static FaceRef face(String room, Side side) {
    return new FaceRef(room, side, 1, Where.NOWHERE);
  }

  private static HouseBuilder taped(HouseBuilder b, FaceRef from, FaceRef to, Length length) {
    return b.tape(new Tape(from, to, b.taped(length), b.where()));
  }

  private static Placed placed(HouseBuilder b) {
    return Survey.of(b.build()).value();
  }

  /** In one loop nobody can tell, and all twelve are named, those read from a tape first. */
  @Test
  void aSingleLoopNamesThemAll() {
    Misclosure m = placed(rows(ft(12).plus(in(2)))).misclosures().get(0);
    assertEquals(12, m.suspects().size());
    assertEquals(1, m.suspects().stream().mapToInt(Misclosure.Suspect::group).max().orElse(0));
    assertTrue(m.suspects().get(0).measurement().contains("east-west"), m.toString());
    String said = m.verdict().get(0);
    assertTrue(said.startsWith("One of these 12 is wrong"), said);
    assertTrue(said.contains("the tape read 2 in too much in d east-west 9 ft (test.yaml:"), said);
    assertTrue(said.contains(", or in e east-west 12 ft 2 in (test.yaml:"), said);
    assertTrue(said.contains("the tape read 2 in too little in a east-west 10 ft"), said);
    assertEquals("measure-again", m.severity());
  }

  /** Two more tapes single the culprit out: across e itself, and from its west side to f's east. */
  @Test
  void moreTapesSingleItOut() {
    HouseBuilder b = rows(ft(12).plus(in(2)));
    taped(b, face("e", Side.WEST), face("e", Side.EAST), ft(12));
    taped(b, face("e", Side.WEST), face("f", Side.EAST), ft(21).plus(in(9, 2)));
    Placed p = placed(b);
    Misclosure first = p.misclosures().get(0);
    assertEquals(1, first.suspects().size(), first.toString());
    assertEquals(50.8, first.suspects().get(0).error().toMm(), 1e-3);
    String said = first.verdict().get(0);
    assertTrue(said.startsWith("Likeliest culprit (w"), said);
    assertTrue(said.contains("read 2 in too much in e east-west 12 ft 2 in (test.yaml:"), said);
    assertTrue(said.contains("give or take "), said);
  }

  @Test
  void theWalkCanBeAddedAgain() {
    Misclosure m = placed(rows(ft(12).plus(in(2)))).misclosures().get(0);
    assertEquals(12, m.steps().size());
    long sum = m.steps().stream().mapToLong(s -> s.value().nm()).sum();
    assertEquals(in(2).nm(), Math.abs(sum));
    assertEquals(sum, m.steps().get(11).sum().nm());
    assertTrue(
        m.steps().stream()
            .filter(s -> s.what().contains("east-west"))
            .allMatch(s -> s.where().line() > 0 && s.spread().equals(Length.mm(5))),
        m.toString());
  }

  /** 3/8 in is spread by variance: a tape takes 25 / 157.333 of 9.525 mm = 1.5135 mm. */
  @Test
  void aSmallMissIsSpreadAndThatIsSaid() {
    Placed p = placed(rows(ft(12).plus(in(3, 8))));
    assertTrue(p.misclosures().isEmpty());
    assertEquals(1, p.shared().size());
    SharedOut s = p.shared().get(0);
    assertEquals(Length.mm(9.525), s.size());
    assertEquals(12, s.count());
    assertEquals(9.525 * 25 / (150 + 64 / 9.0 + 2 / 9.0), s.moved().toMm(), 1e-5);
    assertTrue(s.most().contains("east-west"), s.most());
    assertTrue(placed(rows(ft(12))).shared().isEmpty());
  }

  /** Ten spreads of 7.35 mm are less than the 114.3 mm of a wall, so the wall decides. */
  @Test
  void aMissThickerThanAWallIsRefused() {
    // 8 ft ceiling, board, 2x10 and subfloor are 2704.4 mm
    assertEquals(1, StoreysTest.twoLevels(Length.mm(2704.4 + 114.3)).misclosures().size());
    SurveyException e =
        assertThrows(
            SurveyException.class,
            () -> StoreysTest.twoLevels(new Length(2_704_400_000L + 114_300_001L)));
    String said = e.problems().get(0).text();
    assertTrue(said.contains("miss by 4-1/2 in going round"), said);
    assertTrue(said.contains("One of these 3 is wrong"), said);
    assertTrue(said.contains("rise from floor to floor"), said);
    assertTrue(e.problems().get(0).where().line() > 0, e.getMessage());
  }

  /** Where much is uncertain more is borne: ten spreads, once they are wider than a wall. */
  @Test
  void aLooseLoopIsBorneUpToTenSpreads() {
    Misclosure within = new Misclosure("x", Length.mm(500), Length.mm(150), List.of());
    Misclosure beyond = new Misclosure("x", new Length(500_000_001L), Length.mm(150), List.of());
    assertEquals("measure-again", within.severity());
    assertEquals("error", beyond.severity());
  }

  /** e and f would overlap: both sizes and the way from one to the other are in the message. */
  @Test
  void roomsThatOverlapAreExplained() {
    SurveyException e = assertThrows(SurveyException.class, () -> Survey.of(rows(ft(13)).build()));
    String said = e.problems().get(0).text();
    assertTrue(said.contains("rooms e and f overlap"), said);
    assertTrue(said.contains("e east-west 13 ft (test.yaml:"), said);
    assertTrue(said.contains("f east-west 9 ft (test.yaml:"), said);
    assertTrue(said.contains("From e east to f west: "), said);
  }
}
