/**
 * Hollows between the members, the crossings that lead from one to the next, the stands people work
 * from, and the accesses where a hand gets in.
 */
package holloway.hollow;
