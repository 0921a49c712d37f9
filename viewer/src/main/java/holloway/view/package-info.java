/**
 * Turns a planned house into sheets: which bodies are shown, where the eye stands, what is written
 * where. Knows no OpenGL and no window.
 */
package holloway.view;
