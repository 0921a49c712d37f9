/**
 * The only package that knows how a house is written down. {@link holloway.housefile.HouseFile}
 * reads a YAML or JSON file into a {@link holloway.house.House} and a {@link
 * holloway.request.Request}, or into the whole list of its problems, each with file, line, column,
 * what was read, what was expected and the nearest valid word.
 *
 * <p>Two companion files beside {@code NAME.yaml} are read when they are there: {@code
 * NAME.found.yaml} (what the work uncovered) and {@code NAME.wishes.yaml} (what was changed without
 * touching the person's text). Found beats the wishes file, and the wishes file beats the house
 * file. An effort file named by {@code effort:} overrides the default minutes key by key.
 *
 * <p>{@link holloway.housefile.HouseSchema} writes the JSON Schema out of the same key tables that
 * the reader obeys, so that the two cannot drift.
 */
package holloway.housefile;
