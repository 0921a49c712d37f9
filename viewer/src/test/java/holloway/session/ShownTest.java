package holloway.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class ShownTest {
  @Test
  void finishesPeelInThreeStepsAndNoFurther() {
    Shown s = Shown.FIRST.with(Peel.FINISHED);
    assertEquals(Peel.VEILED, s.with(s.peel().deeper()).peel());
    assertEquals(Peel.FRAMING, Peel.VEILED.deeper());
    assertEquals(Peel.FRAMING, Peel.FRAMING.deeper());
    assertEquals(Peel.FINISHED, Peel.FINISHED.shallower());
  }

  @Test
  void aLevelTurnedTwiceIsShownAgain() {
    assertEquals(Set.of("upper"), Shown.FIRST.turned("upper").hiddenLevels());
    assertEquals(Set.of(), Shown.FIRST.turned("upper").turned("upper").hiddenLevels());
  }

  @Test
  void choosingSomethingElseEndsAWalk() {
    Shown walking = Shown.FIRST.choosing(new Choice.Run("a")).walking(Optional.of(3));
    assertEquals(Optional.empty(), walking.choosing(new Choice.Hole("h")).step());
  }

  @Test
  void cablesGrowToSixteenTimesAndTypeBySixSteps() {
    Shown s = Shown.FIRST;
    for (int i = 0; i < 20; i++) {
      s = s.fatter(true).larger(1);
    }
    assertEquals(16, s.fat());
    assertEquals(Math.pow(1.15, 6), s.typeScale(), 1e-4);
    for (int i = 0; i < 20; i++) {
      s = s.fatter(false).larger(-1);
    }
    assertEquals(1, s.fat());
    assertEquals(-2, s.type());
  }

  @Test
  void aSliceMovesAndGrowsWithinItsBounds() {
    Cut c = Cut.usual(Cut.Way.WEST, 4_000_000_000L);
    assertEquals(4_100_000_000L, c.moved(100_000_000L).at());
    assertEquals(c.at() - c.thick() / 2, c.low());
    Cut thin = c;
    for (int i = 0; i < 60; i++) {
      thin = thin.thicker(0.8);
    }
    assertEquals(50_000_000L, thin.thick());
    assertEquals(Cut.Way.WEST, Cut.Way.FLOOR.next());
  }
}
