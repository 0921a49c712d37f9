/**
 * Networks that are no houses, from open benchmark sets, put to the same planner: so that what it
 * finds and proves can be judged by known answers.
 */
package holloway.network;
