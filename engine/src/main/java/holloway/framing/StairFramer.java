package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.survey.Placed;
import holloway.survey.PlacedStair;
import java.util.List;

/** Stringers and steps of each flight, and the panels that close the space under it. */
final class StairFramer {
  private StairFramer() {}

  static void frame(Placed placed, List<Member> members) {
    for (PlacedStair s : placed.stairs()) {
      Flight flight = new Flight(s);
      sloped(flight, members);
      int n = 0;
      for (Box b : flight.panels()) {
        n++;
        members.add(
            new Member(owner(s) + "/panel-" + n, MemberKind.LINING, s.frame(), b, owner(s), false));
      }
    }
  }

  static String owner(PlacedStair s) {
    return "stairs/" + s.stair().name();
  }

  /** One tilted frame at the foot of the underside; u climbs, w stands square on the slope. */
  private static void sloped(Flight flight, List<Member> members) {
    PlacedStair s = flight.placed();
    int sign = s.onward() ? 1 : -1;
    double cos = flight.cos();
    double sin = flight.slope() * cos;
    long u = flight.along(flight.foot(), flight.foot()).lo();
    Point3 origin = s.frame().toWorld(u, s.width() / 2, 0);
    boolean ns = s.northSouth();
    Frame.Axis up = ns ? new Frame.Axis(0, sign * cos, sin) : new Frame.Axis(sign * cos, 0, sin);
    Frame.Axis out = ns ? new Frame.Axis(0, -sign * sin, cos) : new Frame.Axis(-sign * sin, 0, cos);
    Frame.Axis aside = ns ? new Frame.Axis(-sign, 0, 0) : new Frame.Axis(0, sign, 0);
    Frame frame = new Frame(origin, up, aside, out);
    long length = Math.round((s.length() - flight.foot()) / cos);
    long half = s.width() / 2;
    long in = half - Flight.STRINGER;
    add(s, "stringer-a", frame, new Box(0, length, -half, -in, 0, Flight.DEPTH), members);
    add(s, "stringer-b", frame, new Box(0, length, in, half, 0, Flight.DEPTH), members);
    add(s, "steps", frame, new Box(0, length, -in, in, 0, Flight.DEPTH), members);
  }

  private static void add(PlacedStair s, String name, Frame f, Box box, List<Member> members) {
    members.add(new Member(owner(s) + "/" + name, MemberKind.STAIR, f, box, owner(s), true));
  }
}
