package holloway.house;

import holloway.units.Length;

/**
 * One more taped distance between two faces that look along the same axis, from {@code from} to
 * {@code to} eastward or northward.
 */
public record Tape(FaceRef from, FaceRef to, Fact<Length> distance, Where where) {}
