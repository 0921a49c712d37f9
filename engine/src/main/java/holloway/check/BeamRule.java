package holloway.check;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.house.Beam;
import holloway.house.Direction;
import holloway.house.Side;
import holloway.survey.PlacedRoom;

/**
 * Nothing goes through a beam: its place is taken from the house file and the room's outline again,
 * over the whole width of the room.
 */
final class BeamRule implements Rule {
  private static final double STEP_MM = 10;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    var placed = evidence.house().framed().placed();
    for (Beam b : placed.house().beams()) {
      PlacedRoom room = placed.getRoom(b.room());
      Solid solid = new Solid(Frame.WORLD, box(b, room));
      Outline outline = new Outline(room.outline());
      for (Walk.At at : evidence.steps()) {
        if (at.spans().stream().anyMatch(s -> solid.entered(s, 1) && meets(s, solid, outline))) {
          charge.step(at, "goes through the beam %s of %s", b.name(), b.room());
        }
      }
    }
  }

  /** Beams of an angled room end at its outline, so places along the stretch are looked at. */
  private static boolean meets(Span s, Solid solid, Outline outline) {
    int parts = 1 + (int) (s.length() / STEP_MM);
    for (int i = 0; i <= parts; i++) {
      Mm p = s.at(i / (double) parts);
      if (solid.holds(p, -1) && outline.holds(new Span(p, p), 1)) {
        return true;
      }
    }
    return false;
  }

  private static Box box(Beam b, PlacedRoom room) {
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    long d = b.from().distance().value().nm();
    long half = b.width().value().nm() / 2;
    long z0 = room.ceilingZ() - b.drop().value().nm();
    long z1 = z0 + b.height().value().nm();
    if (b.run() == Direction.EAST_WEST) {
      long mid = b.from().from() == Side.SOUTH ? y.lo() + d : y.hi() - d;
      return new Box(x.lo(), x.hi(), mid - half, mid + half, z0, z1);
    }
    long mid = b.from().from() == Side.WEST ? x.lo() + d : x.hi() - d;
    return new Box(mid - half, mid + half, y.lo(), y.hi(), z0, z1);
  }
}
