package holloway.check;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.PlacedRoom;

/**
 * Nothing lies in or goes through the opening of a skylight, however high over the ceiling: its
 * place is taken from the house file and the room's outline again.
 */
final class SkylightRule implements Rule {
  /** Higher than any roof stands over a ceiling. */
  private static final long HIGH = 30_000_000_000L;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    var placed = evidence.house().framed().placed();
    for (Roof roof : placed.house().roofs()) {
      for (Roof.Skylight k : roof.skylights()) {
        Solid open = new Solid(Frame.WORLD, box(k, placed.getRoom(k.at().room())));
        for (Walk.At at : evidence.steps()) {
          if (at.spans().stream().anyMatch(s -> open.entered(s, 1))) {
            charge.step(at, "goes through the skylight of %s", k.at().room());
          }
        }
      }
    }
  }

  /** The opening, from the ceiling up. */
  static Box box(Roof.Skylight k, PlacedRoom room) {
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    long dx = k.at().eastWest().distance().value().nm();
    long dy = k.at().northSouth().distance().value().nm();
    long cx = k.at().eastWest().from() == Side.EAST ? x.hi() - dx : x.lo() + dx;
    long cy = k.at().northSouth().from() == Side.NORTH ? y.hi() - dy : y.lo() + dy;
    long ew = k.eastWest().nm() / 2;
    long ns = k.northSouth().nm() / 2;
    return new Box(cx - ew, cx + ew, cy - ns, cy + ns, room.ceilingZ(), room.ceilingZ() + HIGH);
  }
}
