package holloway.schedule;

/**
 * What is printed on both ends of a cable, and where each end goes.
 *
 * @param id such as {@code 1A-A03}: floor and letter of the space with the cabinet, letter of the
 *     panel, port (the simple class of TIA-606-A, one telecom space; A8-2, A8-3: the exact string
 *     is from memory). Upper case, printed, at both ends (A8-5), within 300 mm of them (A8-16,
 *     practice)
 * @param from where the first end goes: a panel's port, gear, or an outlet's port
 * @param to where the other end goes
 * @param room of the outlet at the other end
 * @param port of the panel, 0 where the cable goes to no panel
 */
public record Label(
    String id,
    String run,
    String cable,
    String from,
    String to,
    String room,
    int port,
    boolean spare,
    double cutM) {}
