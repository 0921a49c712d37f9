/** Plans all runs together over the routing graph and proves how close to the least the plan is. */
package holloway.solve;
