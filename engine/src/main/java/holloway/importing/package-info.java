/**
 * Reads a building model (IFC, ISO 16739) and tells what of it a house file can hold: levels,
 * rooms, walls, openings and roofs as a {@link holloway.housefile.draft.Draft}, with what it could
 * not tell. Lengths are double millimetres until the plan is squared; then whole nanometres.
 */
package holloway.importing;
