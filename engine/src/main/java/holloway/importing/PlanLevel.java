package holloway.importing;

/**
 * A storey with rooms on it, millimetres.
 *
 * @param floor where most of its floor lies
 * @param height floor to ceiling of most of its rooms
 */
record PlanLevel(String name, double floor, double height) {}
