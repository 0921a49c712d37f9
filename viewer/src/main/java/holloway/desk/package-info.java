/**
 * The viewer's desk: keys, pointer, panels and files put together over a {@code session}. Draws
 * nothing itself and opens no window, so that all of it can be tested.
 */
package holloway.desk;
