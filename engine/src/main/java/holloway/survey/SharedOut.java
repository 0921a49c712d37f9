package holloway.survey;

import holloway.units.Length;

/**
 * A loop that closes within its tolerance, and how its small miss was spread.
 *
 * @param size what was left over going round
 * @param tolerance three times the spread of the whole loop
 * @param count measurements in the loop
 * @param moved the most that any of them was changed
 * @param most the one changed most
 */
public record SharedOut(
    String where, Length size, Length tolerance, int count, Length moved, String most) {}
