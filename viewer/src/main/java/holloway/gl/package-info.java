/**
 * Draws: the only place that knows OpenGL, windows and letters' shapes. It is given sheets of
 * `look` and gives back pixels; what a picture shows is decided elsewhere.
 */
package holloway.gl;
