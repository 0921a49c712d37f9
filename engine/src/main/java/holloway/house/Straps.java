package holloway.house;

import holloway.units.Length;

/**
 * Battens, straps, furring or resilient channels that run across the joists and carry the lining
 * below them. Nobody sees where they are: they are taken to stand at their spacing from where
 * layouts begin.
 *
 * @param depth from the joists to the back of the lining
 * @param every from middle to middle
 */
public record Straps(Fact<Length> depth, Fact<Length> every) {
  /** Usual spacing, 16 in; common practice, no published source. */
  public static final Length EVERY = Length.inches(16, 1);
}
