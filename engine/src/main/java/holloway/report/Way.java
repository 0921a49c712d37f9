package holloway.report;

import holloway.plan.Plan;
import java.util.List;

/**
 * A column of the comparison: the best plan of one way of working.
 *
 * @param sameAs other ways that lead to the same plan
 */
public record Way(String name, List<String> bans, List<String> sameAs, Plan plan) {}
