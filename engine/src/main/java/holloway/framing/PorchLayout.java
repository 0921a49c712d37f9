package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.House;
import holloway.house.Porch;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import java.util.ArrayList;
import java.util.List;

/**
 * The joists over a porch and the bays between them. One joist lies at each end of the rows, a
 * ledger on the wall, a beam at the outer edge; nobody measured where the others are.
 *
 * @param frame u along the joists, v across them, z as in the porch's own frame
 * @param joists between ledger and beam, or between the ends where they run along the wall
 * @param bays between each two of them
 */
public record PorchLayout(PlacedPorch porch, Frame frame, List<Box> joists, List<Box> bays) {
  public static List<PorchLayout> of(Placed placed) {
    return PlacedPorch.of(placed).stream().map(p -> of(placed.house(), p)).toList();
  }

  public static PorchLayout of(House house, PlacedPorch p) {
    boolean outward = p.porch().run().value() == Porch.Run.OUT;
    Frame own = p.frame();
    Frame frame = own;
    if (outward) {
      Point3 origin = own.toWorld(p.length(), 0, 0);
      frame = Frame.level(origin, own.v().x(), own.v().y());
    }
    long span = outward ? p.out() : p.length();
    long across = outward ? p.length() : p.out();
    // v leads against u of the porch where the joists run out, and away from the wall where along
    boolean fromLow = !outward || !p.leadsAway(house);
    Interval u = new Interval(p.thick(), Math.max(p.thick(), span - p.thick()));
    List<Interval> rows = rows(p, across, fromLow);
    List<Box> joists = new ArrayList<>();
    List<Box> bays = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      joists.add(box(u, rows.get(i), p.joists()));
      if (i > 0 && rows.get(i).lo() > rows.get(i - 1).hi()) {
        bays.add(box(u, new Interval(rows.get(i - 1).hi(), rows.get(i).lo()), p.joists()));
      }
    }
    return new PorchLayout(p, frame, joists, bays);
  }

  /** One at each end, the others counted on centres from the end that layouts begin at. */
  private static List<Interval> rows(PlacedPorch p, long across, boolean fromLow) {
    long thick = p.thick();
    long every = p.porch().every().value().nm();
    List<Interval> out = new ArrayList<>();
    out.add(new Interval(0, thick));
    List<Interval> between = new ArrayList<>();
    for (long at = every; at + thick / 2 < across - thick; at += every) {
      long mid = fromLow ? at : across - at;
      between.add(new Interval(mid - thick / 2, mid - thick / 2 + thick));
    }
    if (!fromLow) {
      java.util.Collections.reverse(between);
    }
    between.stream().filter(i -> i.lo() >= thick && i.hi() <= across - thick).forEach(out::add);
    out.add(new Interval(Math.max(thick, across - thick), Math.max(thick, across - thick) + thick));
    return out;
  }

  private static Box box(Interval u, Interval v, Interval z) {
    return new Box(u.lo(), u.hi(), v.lo(), v.hi(), z.lo(), z.hi());
  }

  public String bay(Box bay) {
    return porch.space() + "/bay-" + WallFramer.tag(bay.y0());
  }
}
