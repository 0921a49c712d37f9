package holloway.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs are told apart by everybody, and words are read by everybody, on both grounds. */
final class ThemeTest {
  static List<Theme> themes() {
    return List.of(Theme.DUSK, Theme.LIGHT);
  }

  @ParameterizedTest
  @MethodSource("themes")
  void anyTwoRunsLookDifferentToAnyEyes(Theme t) {
    for (Eyes eyes : Eyes.values()) {
      for (int a = 0; a < 8; a++) {
        for (int b = 0; b < a; b++) {
          double apart = eyes.apart(t.run(a), t.run(b));
          assertTrue(
              apart > 9, t.name() + ", " + eyes + ": runs " + b + " and " + a + ": " + apart);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("themes")
  void noTwoOfSixtyFourRunsShareColourAndPattern(Theme t) {
    Set<String> seen = new HashSet<>();
    for (int n = 0; n < 64; n++) {
      seen.add(t.run(n) + " " + Theme.dash(n));
    }
    assertEquals(64, seen.size());
  }

  @ParameterizedTest
  @MethodSource("themes")
  void runsStandOutFromTheGroundAndWordsFromTheirPlates(Theme t) {
    for (int n = 0; n < 8; n++) {
      double body = Rgb.contrast(t.run(n), t.ground());
      double rim = Rgb.contrast(Theme.rim(t.run(n)), t.ground());
      // WCAG 2 asks 3 of what has to be seen.
      assertTrue(Math.max(body, rim) >= 3, t.name() + ": run " + n + ": " + body + ", " + rim);
    }
    // WCAG 2: 7 for words of any size, 4.5 for those that matter less.
    assertTrue(Rgb.contrast(t.ink(), t.plate()) >= 7);
    assertTrue(Rgb.contrast(t.quiet(), t.plate()) >= 4.5);
    assertTrue(Rgb.contrast(t.quiet(), t.ground()) >= 4.5);
    assertTrue(Rgb.contrast(t.warn(), t.plate()) >= 4.5);
  }
}
