package holloway.view;

import org.joml.Vector3fc;

/** The cabinet or an outlet. */
public record EndMark(String name, Vector3fc at, boolean cabinet) {}
