/**
 * Points, frames and boxes in whole nanometres; squares of lengths are taken in double millimetres
 * only.
 */
package holloway.geometry;
