package holloway.view;

import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.look.Theme;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Makes models out of what the engine knows: members, hollows, a plan. */
public final class Models {
  private static final float NM = 1e-9f;

  private final HollowHouse house;
  private final DoubleFunction<String> length;
  private final Plan plan;
  private final Placed placed;
  private final List<Storey> storeys;
  private final Map<String, Integer> levels = new HashMap<>();

  private Models(HollowHouse house, Plan plan, DoubleFunction<String> length) {
    this.length = length;
    this.house = house;
    this.plan = plan;
    this.placed = house.framed().placed();
    placed.levels().forEach(l -> levels.put(l.name(), l.order()));
    this.storeys = storeys();
  }

  /**
   * @param length puts metres of cable into words
   */
  public static Model of(HollowHouse house, Plan plan, DoubleFunction<String> length) {
    return new Models(house, plan, length).model();
  }

  private Model model() {
    List<Piece> pieces = pieces();
    Vector3f low = new Vector3f(Float.MAX_VALUE);
    Vector3f high = new Vector3f(-Float.MAX_VALUE);
    for (Piece p : pieces) {
      low.min(new Vector3f(p.centre()).sub(p.reach()));
      high.max(new Vector3f(p.centre()).add(p.reach()));
    }
    return new Model(
        placed.house().name(),
        pieces,
        spaces(),
        storeys,
        rooms(),
        ends(),
        cables(),
        pins(),
        low,
        high);
  }

  /** A point of the plan in metres. */
  public static Vector3f place(Point3 p) {
    return metres(p);
  }

  static Vector3f metres(Point3 p) {
    return new Vector3f((float) (p.x() / 1e9), (float) (p.y() / 1e9), (float) (p.z() / 1e9));
  }

  private List<Storey> storeys() {
    List<Storey> out = new ArrayList<>();
    List<PlacedLevel> all = placed.levels();
    for (int i = 0; i < all.size(); i++) {
      PlacedLevel l = all.get(i);
      // A floor's joists belong to the level that walks on them.
      float low = i == 0 ? -1000 : out.get(i - 1).high();
      float high = i + 1 < all.size() ? all.get(i + 1).floorZ() * NM - 0.02f : 1000;
      out.add(new Storey(l.name(), l.order(), l.floorZ() * NM, l.ceilingZ() * NM, low, high));
    }
    return out;
  }

  /** One box of a frame as centre and half axes. */
  private record Placement(Vector3f centre, Vector3f u, Vector3f v, Vector3f w) {
    static Placement of(Frame f, Box b) {
      Vector3f u = axis(f.u());
      Vector3f v = axis(f.v());
      Vector3f w = axis(f.w());
      Vector3f c =
          metres(f.origin())
              .fma((float) ((b.x0() + b.x1()) / 2e9), u)
              .fma((float) ((b.y0() + b.y1()) / 2e9), v)
              .fma((float) ((b.z0() + b.z1()) / 2e9), w);
      return new Placement(
          c,
          u.mul((float) ((b.x1() - b.x0()) / 2e9)),
          v.mul((float) ((b.y1() - b.y0()) / 2e9)),
          w.mul((float) ((b.z1() - b.z0()) / 2e9)));
    }

    private static Vector3f axis(Frame.Axis a) {
      return new Vector3f((float) a.x(), (float) a.y(), (float) a.z());
    }
  }

  private List<Piece> pieces() {
    Framed framed = house.framed();
    Map<String, Integer> owners = new HashMap<>();
    placed.walls().forEach(w -> owners.put(w.id(), levels.getOrDefault(w.level(), 0)));
    placed.rooms().forEach(r -> owners.put(r.name(), levels.getOrDefault(r.room().level(), 0)));
    TreeSet<String> walls = new TreeSet<>();
    placed.walls().forEach(w -> walls.add(w.id()));
    List<Piece> out = new ArrayList<>();
    for (Member m : framed.members()) {
      Placement p = Placement.of(m.frame(), m.box());
      boolean flat = !walls.contains(m.owner());
      Integer level = flat ? null : owners.get(m.owner());
      out.add(
          new Piece(
              m.id(),
              m.kind(),
              p.centre,
              p.u,
              p.v,
              p.w,
              level == null ? levelAt(p.centre.z) : level,
              flat));
    }
    return out;
  }

  private int levelAt(float z) {
    return storeys.stream()
        .filter(s -> z >= s.low() && z < s.high())
        .findFirst()
        .map(Storey::order)
        .orElse(0);
  }

  private List<Space> spaces() {
    Map<String, List<String>> used = new LinkedHashMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      for (Plan.PlanStep s : r.steps()) {
        if (s.hollow().isPresent()) {
          List<String> runs = used.computeIfAbsent(s.id(), k -> new ArrayList<>());
          if (!runs.contains(r.id())) {
            runs.add(r.id());
          }
        }
      }
    }
    List<Space> out = new ArrayList<>();
    used.forEach((id, runs) -> house.findHollow(id).ifPresent(h -> out.add(space(h, runs))));
    return out;
  }

  private static Space space(Hollow h, List<String> runs) {
    Placement p = Placement.of(h.frame(), h.clear());
    boolean open =
        h.kind() == HollowKind.ROOM_SURFACE
            || h.kind() == HollowKind.OUTSIDE_FACE
            || h.kind() == HollowKind.ATTIC
            || h.kind() == HollowKind.CRAWLSPACE
            || h.kind().isDrawn();
    return new Space(h.id(), h.kind(), p.centre, p.u, p.v, p.w, runs, open);
  }

  private List<RoomMark> rooms() {
    List<RoomMark> out = new ArrayList<>();
    for (PlacedRoom r : placed.rooms()) {
      List<Vector3fc> outline = new ArrayList<>();
      for (Point2 p : r.outline().corners()) {
        outline.add(metres(new Point3(p.x(), p.y(), r.floorZ())));
      }
      out.add(new RoomMark(r.name(), levels.getOrDefault(r.room().level(), 0), outline, middle(r)));
    }
    return out;
  }

  /** The centre of a room's floor, or a point well inside where the centre is not in it. */
  private static Vector3f middle(PlacedRoom r) {
    Polygon floor = r.outline().toJts();
    Point at = floor.getCentroid();
    if (!floor.contains(at)) {
      at = floor.getInteriorPoint();
    }
    return new Vector3f((float) (at.getX() / 1e3), (float) (at.getY() / 1e3), r.floorZ() * NM);
  }

  private List<EndMark> ends() {
    Map<String, EndMark> out = new LinkedHashMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      if (r.steps().isEmpty()) {
        continue;
      }
      List<Point3> first = r.steps().get(0).path();
      List<Point3> last = r.steps().get(r.steps().size() - 1).path();
      end(out, r.from(), first.get(0));
      end(out, r.to(), last.get(last.size() - 1));
    }
    return List.copyOf(out.values());
  }

  private static void end(Map<String, EndMark> to, String name, Point3 at) {
    to.putIfAbsent(name, new EndMark(name, metres(at), name.equals("cabinet")));
  }

  private List<Cable> cables() {
    List<Cable> out = new ArrayList<>();
    for (int n = 0; n < plan.runs().size(); n++) {
      Plan.PlannedRun r = plan.runs().get(n);
      List<Vector3fc> points = new ArrayList<>();
      List<Integer> steps = new ArrayList<>();
      for (int s = 0; s < r.steps().size(); s++) {
        for (Point3 p : r.steps().get(s).path()) {
          Vector3f m = metres(p);
          if (points.isEmpty() || points.get(points.size() - 1).distance(m) > 1e-4f) {
            points.add(m);
            steps.add(s);
          }
        }
      }
      if (points.size() > 1) {
        float radius = holloway.catalog.Cable.get(r.cable()).outside().nm() * NM / 2;
        out.add(
            new Cable(r.id(), n, Theme.dash(n), points, steps, radius, length.apply(r.routeM())));
      }
    }
    return out;
  }

  private List<Pin> pins() {
    TreeSet<String> unlawful = new TreeSet<>();
    plan.findings().stream()
        .filter(Plan.FindingLine::breaksLaw)
        .forEach(f -> unlawful.add(f.place()));
    List<Pin> out = new ArrayList<>();
    for (Plan.PlannedHole h : plan.holes()) {
      Vector3f a = metres(h.axis().isEmpty() ? h.at() : h.axis().get(0));
      Vector3f b = metres(h.axis().isEmpty() ? h.at() : h.axis().get(h.axis().size() - 1));
      out.add(new Pin(h.id(), h.label(), a, b, h.runs(), unlawful.contains(h.id())));
    }
    return out;
  }
}
