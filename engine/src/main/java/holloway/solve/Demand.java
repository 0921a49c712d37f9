package holloway.solve;

/**
 * One run as the search sees it.
 *
 * @param from end index, {@code to} likewise
 * @param kind index into the order's cable kinds
 * @param pin edges of which the route must use one, or null if it is free
 */
record Demand(int from, int to, int kind, boolean[] pin) {}
