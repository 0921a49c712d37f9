/**
 * The routing graph: hand places as nodes, fishes and laid stretches as edges, holes with methods,
 * works that are paid once.
 */
package holloway.routing;
