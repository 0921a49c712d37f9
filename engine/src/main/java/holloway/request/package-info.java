/** What is wanted: cabinet, outlets, runs, wishes, crew and the effort table. */
package holloway.request;
