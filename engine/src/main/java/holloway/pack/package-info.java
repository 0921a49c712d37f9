/**
 * The work pack: a page for the phone, the same on paper, and the lists. It lays out what other
 * stages found and computes nothing of the plan itself.
 */
package holloway.pack;
