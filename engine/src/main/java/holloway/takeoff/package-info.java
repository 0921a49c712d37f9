/** What to buy and how long to cut: counted from a plan, without prices. */
package holloway.takeoff;
