/**
 * Reads the clear text of ISO 10303-21 ("STEP files"): tokens, then entities by number. It knows
 * nothing of what the entities mean.
 */
package holloway.step;
