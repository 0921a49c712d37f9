package holloway.view;

import org.joml.Vector3fc;

/**
 * A tape line as it lies, metres.
 *
 * @param length what the tape shows, with its unit
 * @param landmark where it begins, in words
 */
public record TapeMark(Vector3fc from, Vector3fc to, String length, String landmark) {}
