package holloway.limits;

import holloway.units.Length;

/**
 * A notch in a member that spans.
 *
 * @param depth of the member, {@code thickness} its other side
 * @param deep of the notch, {@code run} its length along the member
 * @param top cut into the upper edge, else the lower
 * @param from the nearer support to the near end of the notch, {@code to} to its far end
 * @param end it begins at the member's end
 */
public record JoistNotch(
    Length depth,
    Length thickness,
    Length deep,
    Length run,
    boolean top,
    Length from,
    Length to,
    Length span,
    boolean end,
    MemberMake make) {}
