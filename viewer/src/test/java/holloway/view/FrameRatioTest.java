package holloway.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.gl.Driver;
import holloway.gl.Offscreen;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * A frame of the house of 600 m2 against as many bare boxes, as a ratio of one run. Planning that
 * house takes long, so this is part of the profile {@code large}.
 */
@EnabledIfSystemProperty(named = "holloway.large", matches = "yes")
class FrameRatioTest {
  @Test
  void aFrameTakesAtMostHalfAsLongAgainAsItsBareBoxes() {
    try (Offscreen draws = Driver.orSkip()) {
      Frames.Ratio r =
          Frames.measured(draws, Frames.planned(Path.of("..", "samples", "wren-hollow.yaml")));
      System.err.println(r);
      assertTrue(r.pieces() > 2_000, r.toString());
      assertTrue(r.times() <= 1.5, r.toString());
    }
  }
}
