package holloway.drawing;

import holloway.geometry.Point2;
import holloway.house.CeilingSpot;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.house.WallSpot;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.survey.OnWall;
import holloway.survey.PlacedPorch;
import holloway.survey.PlacedRoom;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Things seen, the cabinet and the outlets, where they stand on the walls. */
final class Marks {
  /** Letters of the things seen; the legend tells them. */
  private static final Map<Thing.Kind, String> LETTERS =
      Map.ofEntries(
          Map.entry(Thing.Kind.SOCKET, "s"),
          Map.entry(Thing.Kind.SWITCH, "sw"),
          Map.entry(Thing.Kind.LIGHT, "li"),
          Map.entry(Thing.Kind.FLUORESCENT_LIGHT, "fl"),
          Map.entry(Thing.Kind.MOTOR, "mo"),
          Map.entry(Thing.Kind.TAP, "ta"),
          Map.entry(Thing.Kind.TOILET, "to"),
          Map.entry(Thing.Kind.RADIATOR, "ra"),
          Map.entry(Thing.Kind.REGISTER, "re"),
          Map.entry(Thing.Kind.RETURN_GRILLE, "rg"),
          Map.entry(Thing.Kind.PANEL, "pa"),
          Map.entry(Thing.Kind.FURNITURE, "fu"),
          Map.entry(Thing.Kind.DATA_BOX, "da"));

  private static final double DEEP = 90;

  /** Sizes that a name is written in rather than leave its room. */
  private static final double[] SMALLER = {Sheet.SMALL, 100, 85};

  private final Sheet sheet;

  /** What the letters that were drawn mean. */
  final Map<String, String> legend = new TreeMap<>();

  Marks(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Shapes first, so that every label knows what it must not cover. */
  void shapes() {
    sheet.svg().open("marks");
    sheet.placed().house().things().forEach(this::thing);
    WallSpot cabinet = sheet.request().cabinet().at();
    find(cabinet).ifPresent(s -> box("cabinet", "cabinet", s, 400, 160));
    for (Outlet o : sheet.request().outlets()) {
      for (int i = 0; i < o.spots().size(); i++) {
        outlet(o, o.spots().get(i), i == 0 ? "outlet" : "outlet other");
      }
    }
    sheet.svg().close();
  }

  void labels() {
    sheet.svg().open("labels");
    WallSpot cabinet = sheet.request().cabinet().at();
    find(cabinet).ifPresent(s -> label("cabinet", Sheet.face(s, 160), cabinet.face().room()));
    for (Outlet o : sheet.request().outlets()) {
      if (!o.spots().isEmpty()) {
        at(o.spots().get(0)).ifPresent(p -> label(o.name(), p, room(o.spots().get(0))));
      }
    }
    sheet.svg().close();
  }

  /** The letters of things come last: the legend and the file can spare one, a name not. */
  void letters() {
    for (Thing t : sheet.placed().house().things()) {
      find(t.at())
          .ifPresent(
              s -> letter(LETTERS.get(t.kind()), Sheet.face(s, DEEP + 20), t.at().face().room()));
    }
  }

  /** The room a spot is seen from; none for the outside. */
  private static String room(Spot spot) {
    if (spot instanceof Spot.OnWall w) {
      return w.at().face().room();
    }
    return spot instanceof Spot.OnCeiling c ? c.at().room() : "";
  }

  private void label(String text, double[] p, String room) {
    double large = Sheet.SMALL * sheet.type();
    List<Rect> free =
        Labels.around(text, p, large, 70, 70).stream().filter(r -> lies(room, r)).toList();
    if (sheet.label("wanted", text, large, free)) {
      return;
    }
    for (double size : SMALLER) {
      List<Rect> own =
          Labels.around(text, p, size, 70, 70).stream().filter(r -> lies(room, r)).toList();
      if (sheet.label("wanted", text, size, own)
          || sheet.label("wanted", text, size, upright(text, p, size, room), true)) {
        return;
      }
    }
    sheet.label("wanted", text, Sheet.SMALL, Labels.around(text, p, Sheet.SMALL, 70, 70));
  }

  /** Places beside a point for a text that runs upward, in a narrow room. */
  private List<Rect> upright(String text, double[] p, double size, String room) {
    Rect b = Labels.box(text, 0, 0, size, true);
    double dx = b.wide() / 2 + 110;
    return Stream.of(0.0, 0.35, -0.35)
        .flatMap(
            up ->
                Stream.of(dx, -dx)
                    .map(x -> Rect.around(p[0] + x, p[1] + up * b.high(), b.wide(), b.high())))
        .filter(r -> !room.isEmpty() && lies(room, r))
        .toList();
  }

  private void letter(String text, double[] p, String room) {
    within("seen", text, 100, room, Labels.around(text, p, 100, 15, 50));
  }

  /** In the room if there is a free place, else wherever there is one. */
  private void within(String kind, String text, double size, String room, List<Rect> places) {
    List<Rect> own = places.stream().filter(r -> lies(room, r)).toList();
    if (!sheet.label(kind, text, size, own)) {
      sheet.label(kind, text, size, places);
    }
  }

  private boolean lies(String room, Rect r) {
    if (room.isEmpty()) {
      return sheet.rooms().stream().noneMatch(p -> RoomNames.touches(p, r));
    }
    return RoomNames.lies(sheet.placed().getRoom(room), r);
  }

  private Optional<OnWall> find(WallSpot at) {
    return sheet.isHere(at.face().room())
        ? sheet.placed().findSpot(at.face(), at.along(), at.height().value().nm())
        : Optional.empty();
  }

  private void thing(Thing t) {
    Optional<OnWall> s = find(t.at());
    String word = t.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    s.ifPresent(
        on -> {
          legend.put(LETTERS.get(t.kind()), word);
          double wide = Math.max(90, t.width().nm() / 1e6);
          box("thing", word, on, wide, t.kind() == Thing.Kind.FURNITURE ? 2.5 * DEEP : DEEP);
        });
  }

  /** A rectangle against the face, in the room. */
  private void box(String kind, String about, OnWall s, double wide, double deep) {
    long half = Math.round(wide * 5e5);
    long d = Math.round(deep * 1e6);
    long t = s.wall().thickness();
    List<double[]> ring =
        s.side() == 0
            ? Sheet.strip(s.wall(), s.s() - half, s.s() + half, -d, 0)
            : Sheet.strip(s.wall(), s.s() - half, s.s() + half, t, t + d);
    sheet.svg().polygon(kind, about, ring);
    sheet.labels().mark(Rect.of(ring));
  }

  private void outlet(Outlet o, Spot spot, String kind) {
    if (isOverhead(spot)) {
      at(spot)
          .ifPresent(
              p -> {
                sheet.svg().circle(kind, o.name(), p, 90);
                sheet.svg().circle("dot", "", p, 25);
                sheet.labels().mark(Rect.around(p[0], p[1], 180, 180));
              });
      return;
    }
    onWall(spot).ifPresent(s -> triangle(kind, o.name(), s));
  }

  /** Drawn as a ring: it hangs where a person looks up to it. */
  private static boolean isOverhead(Spot spot) {
    return spot instanceof Spot.OnCeiling
        || spot instanceof Spot.Outside o && o.under().isPresent();
  }

  /** Its base on the face, its tip to where the person stands. */
  private void triangle(String kind, String name, OnWall s) {
    long half = 85_000_000;
    long t = s.side() == 0 ? 0 : s.wall().thickness();
    long out = s.side() == 0 ? -1 : 1;
    List<double[]> ring =
        List.of(
            Sheet.of(s.wall(), s.s() - half, t),
            Sheet.of(s.wall(), s.s() + half, t),
            Sheet.of(s.wall(), s.s(), t + out * 150_000_000));
    sheet.svg().polygon(kind, name, ring);
    sheet.labels().mark(Rect.of(ring));
  }

  private Optional<OnWall> onWall(Spot spot) {
    if (spot instanceof Spot.OnWall w) {
      return find(w.at());
    }
    if (spot instanceof Spot.Outside o) {
      return find(o.at())
          .filter(s -> s.wall().isOuter())
          .map(s -> new OnWall(s.wall(), s.wall().outside(), s.s(), s.z()));
    }
    return Optional.empty();
  }

  private Optional<double[]> at(Spot spot) {
    if (spot instanceof Spot.OnCeiling c) {
      return sheet.isHere(c.at().room())
          ? Optional.of(Svg.at(plan(sheet, c.at())))
          : Optional.empty();
    }
    if (spot instanceof Spot.Outside o && o.under().isPresent()) {
      Spot.Under u = o.under().get();
      return PlacedPorch.find(sheet.placed(), u.porch())
          .filter(p -> sheet.isHere(p.porch().face().room()))
          .map(p -> p.at(u.from().from(), u.from().distance().value().nm(), u.out().value().nm()))
          .map(Svg::at);
    }
    return onWall(spot).map(s -> Sheet.face(s, 90));
  }

  static Point2 plan(Sheet sheet, CeilingSpot at) {
    PlacedRoom r = sheet.placed().getRoom(at.room());
    long dx = at.eastWest().distance().value().nm();
    long dy = at.northSouth().distance().value().nm();
    return new Point2(
        at.eastWest().from() == Side.WEST
            ? r.outline().xRange().lo() + dx
            : r.outline().xRange().hi() - dx,
        at.northSouth().from() == Side.SOUTH
            ? r.outline().yRange().lo() + dy
            : r.outline().yRange().hi() - dy);
  }
}
