package holloway.schedule;

import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.geometry.Frame;
import holloway.geometry.Frame.Axis;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Two tape dimensions of a hole from one side, square to each other and to the bore, so that each
 * side alone says where the axis lies. In a hollow where a person works they are taken there;
 * behind a wall they are taken on the face of the room before it, with the depth behind that face;
 * between joists on the ceiling below or the floor above.
 */
final class Sight {
  private static final long HOVER = 12_000_000;

  /** A bore so near to the middle of a wall's framing is called its middle. */
  private static final long MIDDLE = 6_000_000;

  private static final long IN_ROOM = 60_000_000;

  /** A ceiling or floor is the one of this joist bay when it lies so near. */
  private static final long STOREY = 700_000_000;

  private final HollowHouse house;
  private final Framed framed;
  private final Landmarks landmarks;

  Sight(HollowHouse house) {
    this.house = house;
    this.framed = house.framed();
    this.landmarks = new Landmarks(framed);
  }

  /** One side of a bore: the end of the axis there and the direction out of it. */
  private record End(Point3 at, Axis out, Hollow hollow, Optional<Member> bored) {}

  /** Both dimensions, or none when the side shows nothing to measure from. */
  List<Dimension> from(Site site, boolean sideA) {
    return from(site, sideA, Optional.empty());
  }

  /**
   * As {@link #from(Site, boolean)} for a person in a room: where a wall shows to that room the
   * tape is laid there, and on its floor where they reach down between the joists.
   */
  List<Dimension> from(Site site, boolean sideA, Optional<String> room) {
    String id = sideA ? site.hollowA() : site.hollowB();
    Optional<Hollow> hollow = house.findHollow(id);
    if (hollow.isEmpty()) {
      return List.of();
    }
    Point3 at = sideA ? site.a() : site.b();
    Axis out = Lines.between(sideA ? site.b() : site.a(), at);
    End end = new End(at, out, hollow.get(), bored(site, sideA));
    List<Dimension> found =
        switch (hollow.get().kind()) {
          case STUD_BAY, RETURN_AIR, CHANNEL, FURRED_BAY, DAB_VOID, SERVICE_VOID ->
              behindWall(end, room);
          case JOIST_BAY, BATTEN_VOID -> betweenJoists(end, room);
          case CHASE, CONDUIT, OLD_CABLE, SOFFIT, TRENCH, SPAN -> List.of();
          // Where the skin ends is in no survey: it laps round corners and down over rim and
          // footing, by a wall's thickness and more. A hole outside is found from inside.
          case OUTSIDE_FACE ->
              site.kind() == SiteKind.CEILING
                  ? PorchSight.of(site, at, framed.placed())
                  : List.of();
          case PORCH_VOID -> PorchSight.of(site, at, framed.placed());
          default -> inTheOpen(end);
        };
    return found.size() == 2 ? found : List.of();
  }

  /**
   * From where a bore's far side is seen: through lifted boards both of its ends, else from no room
   * in particular.
   */
  Optional<String> farRoom(Site site, boolean sideA, Optional<String> room) {
    String id = sideA ? site.hollowA() : site.hollowB();
    return room.filter(
        r -> house.findHollow(id).map(h -> h.kind() == HollowKind.JOIST_BAY).orElse(false));
  }

  private Optional<Member> bored(Site site, boolean sideA) {
    if (site.pierces().isEmpty()) {
      return Optional.empty();
    }
    String id = site.pierces().get(sideA ? 0 : site.pierces().size() - 1);
    return framed.members().stream().filter(m -> m.id().equals(id)).findFirst();
  }

  private List<Dimension> inTheOpen(End end) {
    Frame frame = end.bored().map(Member::frame).orElse(Frame.WORLD);
    Point3 eye = Lines.walk(end.at(), end.out(), HOVER);
    List<Dimension> out = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Axis e = Lines.axis(frame, i);
      if (Math.abs(Lines.dot(e, end.out())) < 0.5) {
        landmarks.nearest(eye, e, end.bored()).or(() -> onItsWall(end, e)).ifPresent(out::add);
      }
    }
    return out;
  }

  /** Along the face that a room shows where it is bored; none where no wall is. */
  private Optional<Dimension> onItsWall(End end, Axis along) {
    for (Wall w : framed.placed().walls()) {
      boolean bored = end.bored().filter(m -> m.owner().equals(w.id())).isPresent();
      if (bored && Math.abs(Lines.dot(w.frame().u(), along)) > 0.5) {
        Point3 p = w.frame().toLocal(end.at());
        int side = Lines.dot(w.frame().v(), end.out()) < 0 ? 0 : 1;
        Point3 eye = Lines.walk(end.at(), end.out(), HOVER);
        return w.findFace(side, p.x()).flatMap(f -> along(eye, w, f, p.x(), p.z()));
      }
    }
    return Optional.empty();
  }

  /** The wall's faces, the one with the nearer landmarks first. */
  private List<Dimension> behindWall(End end, Optional<String> room) {
    Optional<Wall> wall =
        framed.placed().walls().stream()
            .filter(w -> w.id().equals(end.hollow().owner()))
            .findFirst();
    if (wall.isEmpty()) {
      return List.of();
    }
    List<List<Dimension>> found = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      Point3 p = wall.get().frame().toLocal(end.at());
      Optional<Wall.WallFace> face = wall.get().findFace(side, p.x());
      List<Dimension> here = face.map(f -> onFace(end, wall.get(), f, p)).orElse(List.of());
      if (here.size() == 2 && face.map(Wall.WallFace::room).equals(room)) {
        return here;
      }
      found.add(here);
    }
    return found.stream()
        .filter(d -> d.size() == 2)
        .min(Comparator.comparingLong(d -> d.get(0).nm()))
        .orElse(List.of());
  }

  private List<Dimension> onFace(End end, Wall w, Wall.WallFace f, Point3 p) {
    long low = f.floorZ() + IN_ROOM;
    boolean upright = Math.abs(end.out().z()) > 0.5;
    long z = upright ? Math.max(low, Math.min(f.ceilingZ() - IN_ROOM, p.z())) : p.z();
    if (z < f.floorZ() || z > f.ceilingZ()) {
      return List.of();
    }
    long face = f.side() == 0 ? 0 : w.thickness();
    Axis in = f.side() == 0 ? w.frame().v() : Lines.turned(w.frame().v());
    Point3 eye = w.world(p.x(), f.side() == 0 ? -HOVER : w.thickness() + HOVER, z);
    List<Dimension> out = new ArrayList<>();
    if (Math.abs(Lines.dot(end.out(), w.frame().u())) < 0.5) {
      along(eye, w, f, p.x(), z).ifPresent(out::add);
    }
    if (Math.abs(end.out().z()) < 0.5) {
      landmarks.nearest(eye, w.frame().w(), Optional.empty()).ifPresent(out::add);
    }
    if (Math.abs(Lines.dot(end.out(), w.frame().v())) < 0.5) {
      boolean middle = upright && Math.abs(p.y() - w.core().mid()) < MIDDLE;
      String words =
          "the face of the wall in the "
              + f.room()
              + ", straight into it"
              + (middle ? " (the middle of the wall's thickness)" : "");
      out.add(new Dimension(words, w.world(p.x(), face, z), in, Math.abs(p.y() - face)));
    }
    return out;
  }

  /** Along a wall: the nearest of what is met, the corner it ends at, and its openings' jambs. */
  private Optional<Dimension> along(Point3 eye, Wall w, Wall.WallFace f, long s, long z) {
    List<Dimension> found = new ArrayList<>();
    landmarks.nearest(eye, w.frame().u(), Optional.empty()).ifPresent(found::add);
    for (Wall.WallOpening o : w.openings()) {
      if (!o.z().contains(z)) {
        continue;
      }
      long half = o.opening().width().value().nm() / 2;
      boolean before = s < o.s().mid();
      long jamb = before ? o.s().mid() - half : o.s().mid() + half;
      Point3 at = Lines.walk(eye, w.frame().u(), jamb - s);
      String kind = o.opening().kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      String words =
          "the %s jamb of the %s (where the hand meets it)"
              .formatted(Lines.word(Lines.between(at, eye)), kind);
      landmarks.onFace(eye, at, words).ifPresent(found::add);
    }
    corners(eye, w, f, s, found);
    return found.stream().min(Comparator.comparingLong(Dimension::nm));
  }

  private void corners(Point3 eye, Wall w, Wall.WallFace f, long s, List<Dimension> found) {
    List<Placed.Segment> faces = framed.placed().listFaces(f.room(), f.roomSide());
    if (f.ordinal() > faces.size()) {
      return;
    }
    Placed.Segment whole = faces.get(f.ordinal() - 1);
    for (Point2 end : List.of(whole.start(), whole.end())) {
      long along = w.frame().toLocal(end.at(0)).x();
      Point3 at = Lines.walk(eye, w.frame().u(), along - s);
      String words =
          "the corner at the %s end of the wall".formatted(Lines.word(Lines.between(eye, at)));
      landmarks.onFace(eye, at, words).ifPresent(found::add);
    }
  }

  /** On the ceiling below; on the floor above where the person is, or where no room is below. */
  private List<Dimension> betweenJoists(End end, Optional<String> room) {
    Optional<PlacedRoom> above = near(end.at(), true);
    Optional<PlacedRoom> below = near(end.at(), false);
    boolean fromAbove = above.isPresent() && above.map(PlacedRoom::name).equals(room);
    if (below.isPresent() && !fromAbove) {
      PlacedRoom r = below.get();
      return onSheet(end, r.ceilingZ(), -HOVER, "the ceiling of the " + r.name(), Axis.UP);
    }
    return above
        .map(
            r ->
                onSheet(
                    end, r.floorZ(), HOVER, "the floor of the " + r.name(), Lines.turned(Axis.UP)))
        .orElse(List.of());
  }

  /** The room whose floor or ceiling is that of the joist bay at a point. */
  private Optional<PlacedRoom> near(Point3 p, boolean above) {
    return framed.placed().rooms().stream()
        .filter(r -> r.outline().contains(p.plan()))
        .filter(
            r -> {
              long off = above ? r.floorZ() - p.z() : p.z() - r.ceilingZ();
              return off >= 0 && off < STOREY;
            })
        .findFirst();
  }

  private List<Dimension> onSheet(End end, long z, long hover, String sheet, Axis in) {
    Frame frame = end.hollow().frame();
    Point3 eye = end.at().withZ(z + hover);
    List<Dimension> out = new ArrayList<>();
    for (Axis e : List.of(frame.u(), frame.v())) {
      if (Math.abs(Lines.dot(e, end.out())) < 0.5) {
        landmarks.nearest(eye, e, Optional.empty()).ifPresent(out::add);
      }
    }
    if (Math.abs(end.out().z()) < 0.5) {
      long depth = Math.abs(end.at().z() - z);
      out.add(new Dimension(sheet + ", straight into it", end.at().withZ(z), in, depth));
    }
    return out;
  }
}
