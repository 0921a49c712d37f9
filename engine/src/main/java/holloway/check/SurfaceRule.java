package holloway.check;

import holloway.framing.Lowered;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point2;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.survey.Placed;
import holloway.survey.PlacedBeam;
import holloway.survey.PlacedRoom;
import holloway.survey.PlacedStair;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Cable in sight is clipped to something all the way: to a wall of the room that it runs in, to the
 * ceiling, a box or a beam under it. Faces are laid out again from the room's outline, openings are
 * taken out of them, and what is left of each stretch must lie on one. Never across an alcove's
 * mouth, a doorway or the middle of a room.
 */
final class SurfaceRule implements Rule {
  /** Clip, cable and a joint in the board: nothing that is fixed stands further off a face. */
  private static final double OFF_MM = 20;

  private static final double SLACK_MM = 1;

  /** So far from a wall cable may lie on the floor, on its way to a hole beside the wall. */
  private static final long FLOOR_EDGE = 150_000_000;

  /** Casing and jamb that stand in a rough opening: cable may be clipped to them. */
  private static final long JAMB = 40_000_000;

  private static final long OFF = (long) (OFF_MM * 1_000_000);
  private static final long SLACK = 1_000_000;

  /** What holds cable in a room, and what of the walls is open. */
  private record Faces(List<Solid> walls, List<Solid> openings, List<Solid> over, List<Solid> up) {}

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Map<String, Faces> known = new TreeMap<>();
    for (Walk.At at : evidence.steps()) {
      Optional<Hollow> room =
          (at.isLeg() ? evidence.hollow(at) : Optional.<Hollow>empty())
              .filter(h -> h.kind() == HollowKind.ROOM_SURFACE)
              .filter(h -> h.id().equals(h.owner() + "/surface"));
      if (room.isPresent()) {
        Faces faces = known.computeIfAbsent(room.get().owner(), name -> faces(evidence, name));
        Optional<Mm> bare = at.spans().stream().flatMap(s -> bare(s, faces).stream()).findFirst();
        bare.ifPresent(
            p -> charge.step(at, "hangs in the air at %s: no wall or ceiling is there", p));
      }
    }
  }

  /** The middle of a part of the stretch that lies on nothing. */
  private static Optional<Mm> bare(Span span, Faces faces) {
    double length = span.length();
    if (length < SLACK_MM) {
      return Optional.empty();
    }
    Stretches held =
        Stretches.of(span, faces.walls()).without(Stretches.of(span, faces.openings()));
    Stretches over = Stretches.of(span, faces.over()).without(Stretches.of(span, faces.up()));
    return held.with(over).firstGap(SLACK_MM / length).map(span::at);
  }

  private static Faces faces(Evidence evidence, String name) {
    Placed placed = evidence.house().framed().placed();
    PlacedRoom room = placed.getRoom(name);
    long top = Lowered.visibleCeiling(placed, room);
    List<Solid> over = new ArrayList<>();
    Box b =
        new Box(
            room.outline().xRange().lo() - SLACK,
            room.outline().xRange().hi() + SLACK,
            room.outline().yRange().lo() - SLACK,
            room.outline().yRange().hi() + SLACK,
            top - OFF - SLACK,
            top + SLACK);
    if (!room.room().vaulted()) {
      over.add(new Solid(Frame.WORLD, b));
    }
    for (PlacedBeam beam : PlacedBeam.of(placed)) {
      if (beam.hangs() && beam.room().name().equals(name)) {
        over.add(new Solid(Frame.WORLD, around(beam.box())));
      }
    }
    for (Member m : evidence.house().framed().members()) {
      boolean hung = m.owner().equals(name) && m.id().startsWith("soffit/");
      if (m.kind() == MemberKind.LINING && hung) {
        over.add(new Solid(m.frame(), around(m.box())));
      }
    }
    return new Faces(walls(room, top), openings(placed, room), over, up(placed, room, b));
  }

  /** Where the ceiling is open: stairwells, and the shafts of skylights. */
  private static List<Solid> up(Placed placed, PlacedRoom room, Box ceiling) {
    Stream<Box> wells =
        placed.stairs().stream()
            .filter(w -> w.room().room().level().equals(room.room().level()))
            .map(PlacedStair::box);
    Stream<Box> shafts =
        placed.house().roofs().stream()
            .flatMap(r -> r.skylights().stream())
            .filter(k -> k.at().room().equals(room.name()))
            .map(k -> SkylightRule.box(k, room));
    return Stream.concat(wells, shafts)
        .map(o -> new Box(o.x0(), o.x1(), o.y0(), o.y1(), ceiling.z0(), ceiling.z1()))
        .map(o -> new Solid(Frame.WORLD, o))
        .toList();
  }

  private static Box around(Box b) {
    return new Box(
        b.x0() - OFF, b.x1() + OFF, b.y0() - OFF, b.y1() + OFF, b.z0() - OFF, b.z1() + OFF);
  }

  /** Each side of the outline, the room on its left, as thick as a clipped cable stands off. */
  private static List<Solid> walls(PlacedRoom room, long top) {
    List<Solid> out = new ArrayList<>();
    List<Point2> c = room.outline().counterClockwise().corners();
    long high = Math.max(top, room.ceilingZ()) - room.floorZ();
    for (int i = 0; i < c.size(); i++) {
      Point2 p = c.get(i);
      Point2 q = c.get((i + 1) % c.size());
      long length = p.at(0).distanceTo(q.at(0));
      double dx = (q.x() - p.x()) / (double) length;
      double dy = (q.y() - p.y()) / (double) length;
      Frame frame = Frame.level(p.at(room.floorZ()), dx, dy);
      out.add(new Solid(frame, new Box(-OFF, length + OFF, -SLACK, OFF, -SLACK, high + SLACK)));
      out.add(new Solid(frame, new Box(-OFF, length + OFF, -SLACK, FLOOR_EDGE, -SLACK, OFF)));
    }
    return out;
  }

  /** Doorways and windows of the walls round a room, without their jambs and casings. */
  private static List<Solid> openings(Placed placed, PlacedRoom room) {
    List<Solid> out = new ArrayList<>();
    for (Wall w : placed.walls()) {
      for (Wall.WallFace f : w.faces()) {
        for (Wall.WallOpening o : w.openings()) {
          long s0 = Math.max(f.s().lo(), o.s().lo() + JAMB);
          long s1 = Math.min(f.s().hi(), o.s().hi() - JAMB);
          long z0 = o.opening().sill().value().nm() > 0 ? o.z().lo() + JAMB : o.z().lo() - OFF;
          long z1 = o.z().hi() - JAMB;
          if (f.room().equals(room.name()) && s1 > s0 && z1 > z0) {
            out.add(new Solid(w.frame(), new Box(s0, s1, -OFF, w.thickness() + OFF, z0, z1)));
          }
        }
      }
    }
    return out;
  }
}
