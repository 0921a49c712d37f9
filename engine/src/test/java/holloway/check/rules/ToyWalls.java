package holloway.check.rules;

import holloway.check.ToyHouse;
import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.house.Fact;
import holloway.house.Lining;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.Where;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The toy's walls with steel in them, and a room called den behind the east one. */
final class ToyWalls {
  private static final long MM = ToyHouse.MM;

  private ToyWalls() {}

  static Wall steel(Wall w) {
    Timber t = w.studs().value();
    Timber steel = new Timber("steel", t.thickness(), t.depth(), Timber.Kind.STEEL);
    return with(w, Fact.stated(steel, Where.NOWHERE), w.faces());
  }

  /** The east wall shows to the den with its other side. */
  static Wall shared(Wall w) {
    if (!w.id().equals("east")) {
      return w;
    }
    List<Wall.WallFace> faces = new ArrayList<>(w.faces());
    int other = 1 - faces.get(0).side();
    faces.add(
        new Wall.WallFace("den", Side.WEST, 1, other, new Interval(0, 3000 * MM), 0, 2387 * MM));
    return with(w, w.studs(), faces);
  }

  private static Wall with(Wall w, Fact<Timber> studs, List<Wall.WallFace> faces) {
    return new Wall(
        w.id(),
        w.level(),
        w.kind(),
        w.frame(),
        w.length(),
        w.thickness(),
        w.core(),
        w.height(),
        w.outside(),
        studs,
        w.every(),
        w.studOrigin(),
        w.bearing(),
        w.fill(),
        w.lining0(),
        w.lining1(),
        w.garageSeparation(),
        w.balloon(),
        w.singleTopPlate(),
        w.blocksAt(),
        faces,
        w.openings(),
        w.junctions(),
        w.spread());
  }

  static PlacedRoom den() {
    return room("den", Polygon2.rectangle(4114 * MM, 0, 8114 * MM, 3000 * MM), 0);
  }

  static PlacedRoom room(String name, Polygon2 outline, long floorZ) {
    Room room =
        new Room(
            name,
            "ground",
            Optional.empty(),
            List.of(),
            new Room.Placing.Free(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Lining.BOARD,
            Lining.BOARD,
            false,
            false,
            Where.NOWHERE);
    return new PlacedRoom(room, outline, floorZ, floorZ + 2387 * MM);
  }
}
