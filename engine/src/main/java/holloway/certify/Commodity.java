package holloway.certify;

import holloway.catalog.Cable;
import java.util.List;

/**
 * Runs that are alike.
 *
 * @param runs how many
 * @param from node alternatives of one end, {@code to} of the other
 * @param pin edges of which the route must use one, or null
 */
record Commodity(int runs, List<Integer> from, List<Integer> to, Cable cable, boolean[] pin) {}
