package holloway.routing;

import holloway.geometry.Point3;

/**
 * A place where a hand space is entered or left: a graph node at {@code at}, the end of a crossing
 * or an outlet.
 *
 * @param hub worth a laying line of its own (an outlet, a chase, a way out), rather than one bay
 *     among many
 * @param overhead a hole in boards outside: cable comes to it from below
 */
record Entry(int node, Point3 at, boolean hub, boolean overhead) {
  Entry(int node, Point3 at, boolean hub) {
    this(node, at, hub, false);
  }
}
