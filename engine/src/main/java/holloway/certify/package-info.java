/**
 * Looks at a proof again: recomputes a plan's lower bound from its certificate and the routing
 * graph, in whole numbers, and refuses one that claims more than it proves. Shares no code with the
 * planner; why the shares bound a plan from below is told in the planner's own package, and each
 * condition of that argument is looked at here by itself.
 */
package holloway.certify;
