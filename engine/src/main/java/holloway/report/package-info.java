/**
 * Text for people and JSON documents, from records that earlier stages filled; computes nothing.
 */
package holloway.report;
