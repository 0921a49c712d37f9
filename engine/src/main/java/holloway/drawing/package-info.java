/**
 * Floor plans to scale as SVG: what was understood of a house, for a person to see a slip.
 *
 * <p>One unit of the drawing is one millimetre of the house; x grows east, y grows south from the
 * house's own origin, so a point (x, y) of the survey is drawn at (x, -y). Knows the survey, what
 * is wanted, and a finished plan where its runs are drawn in; no hollows.
 */
package holloway.drawing;
