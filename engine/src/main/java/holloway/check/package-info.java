/**
 * The judges of a finished plan. {@code Referee} verifies it against the hollows and members with
 * geometry and arithmetic of its own; {@code rules} says what codes, standards and practice ask of
 * it. Nothing here knows the routing graph or the solver.
 */
package holloway.check;
