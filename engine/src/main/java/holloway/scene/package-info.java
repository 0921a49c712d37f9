/**
 * A house and its plan as shapes in world millimetres (x east, y north, z up), for viewers and
 * files; knows no graphics library.
 */
package holloway.scene;
