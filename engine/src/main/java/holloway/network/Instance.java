package holloway.network;

import holloway.routing.RouteGraph;
import holloway.solve.Order;

/**
 * A network as a routing graph, with everything that is to be routed.
 *
 * @param scale units of the planner for one unit of cost
 */
public record Instance(RouteGraph graph, Order order, long scale) {}
