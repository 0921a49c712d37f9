/**
 * Plans all runs together over the routing graph and proves how close to the least the plan is.
 *
 * <h2>The plan</h2>
 *
 * Runs are inserted one after the other where they add least (works already open are free), for
 * every set of the dearest zones and in several orders; then runs are taken out and put back in
 * turn, and groups of runs are ruined and recreated. The search prices a work once for each place
 * of a path that needs it; the draft's price, which decides, is exact. So at last each run is
 * looked for with labels that remember what is paid, and runs of unlike cable change stretches of
 * their ways. The plan is never worse than all runs on the paths the same search finds for each
 * alone with shared works paid once, because that plan is one of the candidates.
 *
 * <h2>The bound</h2>
 *
 * Let a plan be given. It pays travel for every run, and every open work once. Divide the price f
 * of each work w into shares of (group of like runs, place), where a place is a node, an edge or a
 * hole that needs w, with all shares of w together at most f. A run that passes the place uses w
 * there, and passes the place at most once, so the plan pays at least the travel of each run plus
 * its shares on the way; and that is at least the shortest path with those lengths. Shares of a
 * group count for the group: if some of its q runs use a work, the whole share is due, which is at
 * least the average over the q runs, so q times the travel plus the share may be minimised on one
 * path. Adding up over groups bounds the plan from below, whatever the shares. In particular:
 *
 * <ul>
 *   <li>A work needed at several places of one path is charged at each with a share of its own, and
 *       these shares sum to at most f like all others.
 *   <li>A hole charges the least of its methods; the plan makes it one way for all runs, so for
 *       each run the least method is no more.
 *   <li>A work that belongs to one hole alone tells what the hole costs with n cables: at least f
 *       plus the least extra for the n slimmest jackets of the order with its slimmest head. Sets
 *       of cables that do not fit never meet, so for each n that fits the n largest shares of
 *       single cables must sum to at most that, and larger sets need no limit. One work of each
 *       method tells it, for the sizes that the methods with it bore: what a flexible bit is not
 *       made in, a hole bored with one does not take.
 *   <li>A hole may have a rent: its tellers may share out so much more, and the bound is less by
 *       it. A plan makes a hole one way or not at all, so it is over its price by the rent at most.
 *       That charges those who pass a full hole what passing is worth, which may be far more than
 *       it costs. Never together with directed shares, which have no limits.
 *   <li>A hole of which no own work tells, because it is there already or all its works serve
 *       others too, has its room as a row: the shares of those who pass are at most what n cables
 *       cost there beyond the works, and the rent. Else a conduit for three cables would take all
 *       runs in the bound.
 *   <li>A class of thicker cables has its room as rows too, one for each teller: those of the class
 *       that fit by the methods with it pay no more than the rent of the class. A plan makes the
 *       hole by one method, so one rent covers them all.
 *   <li>A work that no method with a teller does without may lend it, or a class that passes by it,
 *       part of its price: a plan that makes the hole so pays for the lender besides.
 *   <li>Works at every alternative of an end that some run has are paid by every plan: in full.
 *   <li>Alternatives of an end are chosen by each group freely, and a cable that would not pass a
 *       hole alone may not pass; both only widen what plans may do.
 *   <li>Plans are told apart by which zones they set up, then by single works opened or not. A part
 *       pays its works in full and charges nothing for them, and shuts the others; each plan is in
 *       a part, so the least part bounds all.
 *   <li>Directed shares: if all runs start at one end, no hole that costs something lies on two
 *       edges and none is limited, then leaving limits out loses nothing, and some optimum routes
 *       all runs along the tree of shortest travel within its own open works. In a tree no edge is
 *       walked both ways and no node is entered by two arcs. So a work met on one edge only may be
 *       shared out in full once for each direction, a work of one node once for each arc into it.
 *   <li>Every price is a whole multiple of the greatest common divisor of all prices, so the bound
 *       is rounded up to the next one.
 * </ul>
 *
 * A first division comes from dual ascent or from the plan, whichever proves more. The division is
 * then improved by column generation: short paths of every group at the present shares make up a
 * model, the model's best shares are found by an accelerated gradient method over soft minima, and
 * the next shares to try lie between the best so far and the model's. The model is reckoned in
 * doubles (with strict mathematics, so that all machines agree) and only proposes; every proposal
 * is priced in exact long integers over the whole graph, so the best one is the proof and nothing
 * needs to be rounded afterwards. Profiles differ only in the prices: fewest-holes adds 10^10 to a
 * work for each hole it counts for, shortest adds an edge's length in nanometres to its price,
 * which is 10^6 for each millimetre.
 */
package holloway.solve;
