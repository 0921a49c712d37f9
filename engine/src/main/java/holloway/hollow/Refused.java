package holloway.hollow;

import holloway.geometry.Point3;

/** A hole, stand or access that cannot be had, and which limit stopped it. */
public record Refused(String what, Point3 at, String why, String source) {
  /** As a line of "why not". */
  public String line() {
    return what + ": " + why + " (" + source + ")";
  }
}
