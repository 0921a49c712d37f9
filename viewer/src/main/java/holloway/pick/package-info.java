/**
 * What a pixel points at: a ray from the eye through a tree of bounding boxes. Knows no OpenGL and
 * no house, only shapes by number.
 */
package holloway.pick;
