/**
 * What may be bored, how wide and where: figures with their sources, and pure predicates over plain
 * lengths. Knows no house; a rule pack is chosen by place. Every answer defers to the local code,
 * the authority having jurisdiction and licensed people.
 */
package holloway.limits;
