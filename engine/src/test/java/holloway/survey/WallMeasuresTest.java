package holloway.survey;

import static holloway.support.HouseBuilder.ft;
import static holloway.support.HouseBuilder.house;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Finding;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Origin;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.house.Tape;
import holloway.house.WallSpec;
import holloway.house.Where;
import holloway.support.HouseBuilder;
import holloway.support.WallDraft;
import holloway.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Walls that framing or masonry cannot be, with what was measured in both rooms. */
class WallMeasuresTest {
  private static List<Finding> findings(Length gap, WallDraft... said) {
    HouseBuilder b = house().slab("ground", ft(8)).first("den", "ground", ft(10), ft(8));
    for (WallDraft w : said) {
      b.wall(w);
    }
    Placing at = new Placing.At(b.taped(ft(10).plus(gap)), b.taped(ft(0)), b.where());
    b.room("hall", "ground", ft(9), ft(8), at);
    // a tape so sure that the usual thickness of a wall does not pull at the gap
    Fact<Length> sure = new Fact<>(gap, new Length(1000), Origin.MEASURED, b.where());
    b.tape(new Tape(face("den", Side.EAST), face("hall", Side.WEST), sure, b.where()));
    return Survey.of(b.build()).findings();
  }

  private static FaceRef face(String room, Side side) {
    return new FaceRef(room, side, 1, Where.NOWHERE);
  }

  private static void assertNot(String rule, List<Finding> findings) {
    assertTrue(findings.stream().noneMatch(f -> f.rule().equals(rule)), findings.toString());
  }

  private static void assertFlagged(String rule, List<Finding> findings) {
    String said =
        findings.stream()
            .filter(f -> f.rule().equals(rule))
            .map(Finding::text)
            .findFirst()
            .orElse("nothing of " + rule + " in " + findings);
    assertTrue(said.contains("den east-west 10 ft (test.yaml:"), said);
    assertTrue(said.contains("hall east-west 9 ft (test.yaml:"), said);
    assertTrue(said.contains("From den east to hall west: "), said);
  }

  private static WallDraft framed() {
    return WallDraft.between("den", "hall").studs(Makeup.STUD_2X4);
  }

  private static WallDraft masonry() {
    return WallDraft.between("den", "hall").kind(WallSpec.Kind.MASONRY);
  }

  /** 88.9 mm of stud and 3 mm on each side. */
  @Test
  void thinnerThanAssumedStuds() {
    assertFlagged("thin-wall", findings(Length.mm(94.8)));
    assertNot("thin-wall", findings(Length.mm(95)));
  }

  /** 88.9 mm of stud and 40 mm on each side. */
  @Test
  void thickerThanAssumedStuds() {
    assertFlagged("thick-wall", findings(Length.mm(200)));
    assertNot("thick-wall", findings(Length.mm(130)));
  }

  @Test
  void thinnerThanStatedStuds() {
    assertFlagged("studs-do-not-fit", findings(Length.mm(94.8), framed()));
    assertNot("studs-do-not-fit", findings(Length.mm(95), framed()));
  }

  @Test
  void thickerThanStatedStuds() {
    assertFlagged("wall-thicker-than-framing", findings(Length.mm(169), framed()));
    assertNot("wall-thicker-than-framing", findings(Length.mm(168.8), framed()));
  }

  /** 3-5/8 in is 92.1 mm; with 13 mm of plaster on each side 118.1 mm. */
  @Test
  void masonryThinnerThanAny() {
    assertFlagged("thin-masonry", findings(Length.mm(118), masonry()));
    assertNot("thin-masonry", findings(Length.mm(118.2), masonry()));
  }

  @Test
  void masonryNotAsThickAsStated() {
    assertFlagged(
        "wall-not-as-thick-as-stated",
        findings(Length.mm(163), masonry().thickness(Length.mm(150))));
    assertNot(
        "wall-not-as-thick-as-stated",
        findings(Length.mm(162), masonry().thickness(Length.mm(150))));
  }
}
