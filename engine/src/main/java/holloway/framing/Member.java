package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;

/**
 * One solid piece: a box in the frame of its wall, floor or roof plane, whole nanometres.
 *
 * @param owner wall, deck, room or roof it belongs to
 * @param assumed its position hangs on an assumed layout
 */
public record Member(
    String id, MemberKind kind, Frame frame, Box box, String owner, boolean assumed) {}
