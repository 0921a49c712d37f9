package holloway.check;

import holloway.catalog.Cable;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.Direction;
import holloway.house.Straps;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.Optional;

/**
 * A leg over a strapped ceiling lies within a room that the house file states straps for, as far
 * over what is seen as these are deep at most, along the straps, and is no thicker than they are.
 * Read from the house file and the room's outline alone.
 */
final class StrapRule implements Rule {
  private static final double SLACK_MM = 1;

  /** More than this over the ceiling lies no lining: two sheets and plaster. */
  private static final double LINING_MM = 60;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Placed placed = evidence.house().framed().placed();
    for (Walk.At at : evidence.steps()) {
      Optional<Hollow> hollow = at.isLeg() ? evidence.hollow(at) : Optional.empty();
      if (hollow.isEmpty() || hollow.get().kind() != HollowKind.BATTEN_VOID) {
        continue;
      }
      PlacedRoom room = placed.getRoom(hollow.get().owner());
      Optional<Straps> straps = room.room().overhead().straps();
      if (straps.isEmpty()) {
        charge.step(at, "lies over the ceiling of %s, which hangs on no straps", room.name());
      } else {
        judge(at, room, straps.get(), evidence, charge);
      }
    }
  }

  private static void judge(
      Walk.At at, PlacedRoom room, Straps straps, Evidence evidence, Charge charge) {
    double depth = straps.depth().value().toMm();
    double low = room.ceilingZ() / 1e6;
    Outline outline = new Outline(room.outline());
    Optional<Direction> joists = joists(at, evidence);
    for (Span s : at.spans()) {
      boolean high =
          Math.min(s.a().z(), s.b().z()) < low
              || Math.max(s.a().z(), s.b().z()) > low + LINING_MM + depth;
      if (high || !outline.holds(s, SLACK_MM)) {
        charge.step(at, "leaves the straps over the ceiling of %s", room.name());
      }
      double east = Math.abs(s.a().x() - s.b().x());
      double north = Math.abs(s.a().y() - s.b().y());
      double across = joists.equals(Optional.of(Direction.EAST_WEST)) ? east : north;
      if (joists.isPresent() && across > straps.every().value().toMm()) {
        charge.step(at, "goes %.0f mm across the straps of %s", across, room.name());
      }
    }
    double thick =
        Cable.find(at.run().cable())
            .map(c -> Math.max(c.outside().toMm(), c.pullHead().toMm()))
            .orElse(0.0);
    if (thick > depth) {
      charge.step(at, "is %.1f mm thick in a void %.1f mm deep over %s", thick, depth, room.name());
    }
  }

  /** Which way the joists right over the leg run: straps lie across them. */
  private static Optional<Direction> joists(Walk.At at, Evidence evidence) {
    Placed placed = evidence.house().framed().placed();
    PlacedRoom room = placed.getRoom(evidence.hollow(at).orElseThrow().owner());
    return evidence.house().framed().decks().stream()
        .filter(
            d ->
                placed.getLevel(d.level()).isNextOver(placed.getLevel(room.room().level()))
                    && new Outline(d.outline()).holds(at.spans().get(0), SLACK_MM))
        .map(d -> d.spec().run())
        .findFirst();
  }
}
