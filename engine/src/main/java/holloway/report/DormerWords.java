package holloway.report;

import holloway.house.Dormer;
import holloway.house.Roof;

/** What was understood of a dormer. */
final class DormerWords {
  private DormerWords() {}

  static String of(Roof roof, Dormer d, UnitWords units) {
    return d.room()
        .map(in -> ofRoom(roof, d, in, units))
        .orElseGet(() -> overAttic(roof, d, units));
  }

  private static String overAttic(Roof roof, Dormer d, UnitWords units) {
    return "dormer over the %s eave of '%s', %s wide between its cheeks, %s from the roof's %s end, its front %s in from the outside of the studs below and %s high over the joists, under a %s roof; trimmers, headers and cheeks are assumed"
        .formatted(
            d.side().word(),
            roof.name(),
            units.tape(d.width().value().nm()),
            units.tape(d.from().distance().value().nm()),
            d.from().from().word(),
            units.tape(d.back().value().nm()),
            units.tape(d.height().value().nm()),
            d.cover().word());
  }

  private static String ofRoom(Roof roof, Dormer d, String room, UnitWords units) {
    return "dormer of '%s' over the %s eave of '%s', %s wide between its cheeks, %s from the room's %s end, its front %s out from the knee wall's face and %s high over the floor, under a %s roof; trimmers, headers and cheeks are assumed, behind the knee wall its width is shut"
        .formatted(
            room,
            d.side().word(),
            roof.name(),
            units.tape(d.width().value().nm()),
            units.tape(d.from().distance().value().nm()),
            d.from().from().word(),
            units.tape(d.back().value().nm()),
            units.tape(d.height().value().nm()),
            d.cover().word());
  }
}
