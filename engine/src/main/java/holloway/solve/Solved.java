package holloway.solve;

import holloway.plan.Certificate;
import holloway.plan.Plan;
import java.util.List;
import java.util.Map;

/**
 * The planner's answer.
 *
 * @param plan the plan with everything but house name, inputs, findings and materials
 * @param reached for each run without a route, by id: names of the places it can reach that lie
 *     nearest to its far end, at most five
 * @param bound what proves the plan's bound
 * @param cut whether time ended the search, so that another time it may end elsewhere
 * @param ways bit set of the {@link holloway.hollow.Way}s that its edges, holes and zones use
 */
public record Solved(
    Plan plan, Map<String, List<String>> reached, Certificate bound, int ways, boolean cut) {}
