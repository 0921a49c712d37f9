/**
 * The house as the person stated it: facts with spread, origin and line. Nothing here is placed or
 * derived yet.
 */
package holloway.house;
