/** Solid members worked out from the placed house: what a bit or a cable can run into. */
package holloway.framing;
