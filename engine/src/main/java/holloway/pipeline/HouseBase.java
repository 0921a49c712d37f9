package holloway.pipeline;

import holloway.hollow.HollowBase;
import holloway.routing.RoutingMemory;

/**
 * What of a house's hollows and ways does not hang on where its ends are.
 *
 * @param memory of ways at one set of prices
 */
record HouseBase(HollowBase hollows, RoutingMemory memory) {}
