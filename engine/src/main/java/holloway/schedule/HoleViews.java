package holloway.schedule;

import holloway.framing.Member;
import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The views of every hole from both sides: the face that is bored and a section. */
public final class HoleViews {
  /** Round the hole and its tape lines, millimetres. */
  private static final double MARGIN = 250;

  /** How far before or behind a surface a face view is cut. */
  private static final long HOVER = 12_000_000;

  private final HollowHouse house;
  private final Sight sight;
  private final DrillSide drill;
  private final Map<String, String> rooms = new TreeMap<>();

  private HoleViews(Plan plan, HollowHouse house, Map<String, String> outlets) {
    this.house = house;
    this.drill = new DrillSide(plan, house);
    this.sight = new Sight(house);
    house.accesses().forEach(a -> rooms.put(a.id(), a.room()));
    rooms.putAll(outlets);
  }

  /**
   * Of holes by id face and section from the drill's side, then from where the bit comes out; of
   * floors a section at each place where cable passes.
   *
   * @param outlets as for {@link HoleCards}
   */
  public static Views of(Plan plan, HollowHouse house, Map<String, String> outlets) {
    HoleViews views = new HoleViews(plan, house, outlets);
    Map<String, List<HoleView>> out = new TreeMap<>();
    for (Plan.PlannedHole h : plan.holes()) {
      house
          .findSite(h.id())
          .filter(s -> !s.a().equals(s.b()))
          .ifPresent(s -> out.put(h.id(), views.views(h, s)));
    }
    return new Views(out, FloorCrossings.of(plan, house));
  }

  private List<HoleView> views(Plan.PlannedHole hole, Site site) {
    boolean fromA = drill.isA(hole, site);
    List<HoleView> out = new ArrayList<>();
    for (boolean drillSide : new boolean[] {true, false}) {
      boolean atA = drillSide == fromA;
      Optional<String> stands = Optional.ofNullable(rooms.get(hole.stand()));
      Optional<String> room = drillSide ? stands : sight.farRoom(site, atA, stands);
      List<Dimension> tapes = sight.from(site, atA, room);
      out.add(face(hole, site, atA, drillSide, tapes));
      out.add(section(hole, site, atA, drillSide, tapes));
    }
    return out;
  }

  private HoleView face(
      Plan.PlannedHole hole, Site site, boolean atA, boolean drillSide, List<Dimension> tapes) {
    Point3 end = atA ? site.a() : site.b();
    Axis in = atA ? Lines.between(site.a(), site.b()) : Lines.between(site.b(), site.a());
    Axis up = faceUp(in, tapes);
    Axis right = product(in, up);
    Cut behind = new Cut(Lines.walk(end, in, HOVER), right, up);
    Cut before = new Cut(Lines.walk(end, in, -HOVER), right, up);
    double[] window = window(behind, tapes, 0);
    List<HoleView.Shape> solids = new ArrayList<>(shapes(behind, window, site, true));
    solids.addAll(shapes(before, window, site, false));
    return new HoleView(
        "face",
        drillSide,
        Lines.word(right),
        Lines.word(up),
        solids,
        tapes(behind, tapes),
        List.of(new double[] {0, 0}),
        hole.diameterMm());
  }

  private HoleView section(
      Plan.PlannedHole hole, Site site, boolean atA, boolean drillSide, List<Dimension> tapes) {
    Point3 end = atA ? site.a() : site.b();
    Point3 far = atA ? site.b() : site.a();
    Axis in = Lines.between(end, far);
    boolean upright = Math.abs(in.z()) > 0.7;
    Axis up = upright ? Axis.UP : in;
    Axis faceUp = faceUp(in, tapes);
    Axis side = product(in, faceUp);
    Axis right = !upright && Math.abs(side.z()) > 0.7 ? faceUp : side;
    Cut cut = new Cut(end, right, up);
    List<Dimension> here =
        tapes.stream().filter(d -> Math.abs(Lines.dot(d.towards(), right)) > 0.9).toList();
    double[] window = window(cut, here, end.distanceTo(far) / 1e6);
    return new HoleView(
        "section",
        drillSide,
        Lines.word(right),
        Lines.word(up),
        shapes(cut, window, site, true),
        tapes(cut, here),
        List.of(cut.flat(end), cut.flat(far)),
        hole.diameterMm());
  }

  /** Upwards on a wall; on a floor or ceiling along one of the tape lines, else north. */
  private static Axis faceUp(Axis in, List<Dimension> tapes) {
    if (Math.abs(in.z()) < 0.7) {
      return Axis.UP;
    }
    Axis north = Axis.NORTH;
    for (Dimension d : tapes) {
      Axis a = d.towards();
      if (Math.abs(a.y()) > 0.7) {
        north = a.y() > 0 ? a : Lines.turned(a);
      }
    }
    return north;
  }

  /** Right of somebody who looks along {@code in} with {@code up} upwards. */
  private static Axis product(Axis in, Axis up) {
    return new Axis(
        in.y() * up.z() - in.z() * up.y(),
        in.z() * up.x() - in.x() * up.z(),
        in.x() * up.y() - in.y() * up.x());
  }

  private static double[] window(Cut cut, List<Dimension> tapes, double depth) {
    double[] w = {-MARGIN, -MARGIN - depth, MARGIN, MARGIN + depth};
    for (Dimension d : tapes) {
      double[] p = cut.flat(d.at());
      w[0] = Math.min(w[0], p[0] - MARGIN);
      w[1] = Math.min(w[1], p[1] - MARGIN);
      w[2] = Math.max(w[2], p[0] + MARGIN);
      w[3] = Math.max(w[3], p[1] + MARGIN);
    }
    return w;
  }

  private List<HoleView.Shape> shapes(Cut cut, double[] window, Site site, boolean all) {
    List<HoleView.Shape> out = new ArrayList<>();
    for (Member m : house.framed().members()) {
      boolean bored = site.pierces().contains(m.id());
      boolean shown = Landmarks.isThere(m) && (all || !bored);
      List<double[]> outline = shown ? cut.through(m, window) : List.of();
      if (!outline.isEmpty()) {
        out.add(new HoleView.Shape(m.kind().word(), bored, !all, outline));
      }
    }
    return out;
  }

  private static List<HoleView.Tape> tapes(Cut cut, List<Dimension> tapes) {
    return tapes.stream()
        .map(d -> new HoleView.Tape(d.landmark(), d.nm(), cut.flat(d.at()), cut.flat(d.end())))
        .toList();
  }
}
