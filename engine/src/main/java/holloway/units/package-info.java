/** Lengths as exact integers of nanometres, and how people write them. */
package holloway.units;
