/**
 * A house that another program described, in the words of a house file, and how it is written as
 * one for a person to finish by hand.
 */
package holloway.housefile.draft;
