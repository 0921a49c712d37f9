package holloway.survey;

import holloway.house.Fact;
import java.util.List;

/** Copies of walls with one thing changed. */
final class Walls {
  private Walls() {}

  static long topPlates(Wall w) {
    return w.isFramed() ? (w.singleTopPlate() ? 1 : 2) * Makeup.PLATE : 0;
  }

  static Wall withStudOrigin(Wall w, Fact<Long> origin) {
    return copy(w, origin, w.openings());
  }

  static Wall withOpenings(Wall w, List<Wall.WallOpening> openings) {
    return copy(w, w.studOrigin(), List.copyOf(openings));
  }

  private static Wall copy(Wall w, Fact<Long> origin, List<Wall.WallOpening> openings) {
    return copy(w, origin, openings, w.height(), w.outside(), w.faces());
  }

  /** Lower, and with nothing but the eaves behind it. */
  static Wall asKnee(Wall w, long height) {
    List<Wall.WallFace> faces =
        w.faces().stream()
            .map(
                f ->
                    new Wall.WallFace(
                        f.room(),
                        f.roomSide(),
                        f.ordinal(),
                        f.side(),
                        f.s(),
                        f.floorZ(),
                        Math.min(f.ceilingZ(), height)))
            .toList();
    return copy(w, w.studOrigin(), w.openings(), height, -1, faces);
  }

  private static Wall copy(
      Wall w,
      Fact<Long> origin,
      List<Wall.WallOpening> openings,
      long height,
      int outside,
      List<Wall.WallFace> faces) {
    return new Wall(
        w.id(),
        w.level(),
        w.kind(),
        w.frame(),
        w.length(),
        w.thickness(),
        w.core(),
        height,
        outside,
        w.studs(),
        w.every(),
        origin,
        w.bearing(),
        w.fill(),
        w.lining0(),
        w.lining1(),
        w.garageSeparation(),
        w.balloon(),
        w.singleTopPlate(),
        w.blocksAt(),
        faces,
        openings,
        w.junctions(),
        w.spread(),
        w.traits());
  }
}
