/** What to do at each hole and in which order: cards for the person on the ladder. */
package holloway.schedule;
