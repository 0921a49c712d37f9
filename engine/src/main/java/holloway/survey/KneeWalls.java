package holloway.survey;

import holloway.geometry.Interval;
import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Roof;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Walls with the eaves of a roof behind them. They are found as outer walls, since no room lies
 * there, but what lies there is not out of doors.
 */
public final class KneeWalls {
  private KneeWalls() {}

  /** What is stated of a wall that shows to a face with a knee wall. */
  public static Optional<Roof.Knee> find(House house, Wall w) {
    return house.roofs().stream()
        .flatMap(r -> r.knees().stream())
        .filter(k -> w.faces().stream().anyMatch(f -> is(k.face(), f)))
        .findFirst();
  }

  /** True when the backs of all rooms' stretches that a stretch of the wall touches are bare. */
  public static boolean isBare(House house, Wall w, Interval s) {
    List<Wall.WallFace> touched = w.faces().stream().filter(f -> f.s().overlaps(s)).toList();
    return !touched.isEmpty()
        && touched.stream()
            .allMatch(
                f ->
                    house.roofs().stream()
                        .flatMap(r -> r.knees().stream())
                        .anyMatch(k -> is(k.face(), f) && k.bare()));
  }

  /** True when every room that the wall shows to states it as a knee wall of this roof. */
  public static boolean isWhole(Roof roof, Wall w) {
    return !w.faces().isEmpty()
        && w.faces().stream().allMatch(f -> roof.knees().stream().anyMatch(k -> is(k.face(), f)));
  }

  private static boolean is(FaceRef ref, Wall.WallFace f) {
    return Specs.is(ref, f.room(), f.roomSide(), f.ordinal());
  }

  /**
   * The walls, those with a knee wall in them no longer outer ones. One that is a knee wall from
   * end to end is as high as its far edge lets it be under the slope.
   */
  static List<Wall> lowered(House house, List<Wall> walls) {
    List<Wall> out = new ArrayList<>();
    for (Wall w : walls) {
      Optional<Roof> roof =
          house.roofs().stream()
              .filter(r -> w.isOuter())
              .filter(
                  r ->
                      r.knees().stream()
                          .anyMatch(k -> w.faces().stream().anyMatch(f -> is(k.face(), f))))
              .findFirst();
      out.add(roof.map(r -> Walls.asKnee(w, height(r, w))).orElse(w));
    }
    return out;
  }

  private static long height(Roof roof, Wall w) {
    if (!isWhole(roof, w)) {
      return w.height();
    }
    long depth = w.outside() == 0 ? w.thickness() - w.core().lo() : w.core().hi();
    long stated =
        roof.knees().stream()
            .filter(k -> w.faces().stream().anyMatch(f -> is(k.face(), f)))
            .mapToLong(k -> k.height().value().nm())
            .min()
            .orElseThrow();
    long fall = depth * roof.pitchRise() / roof.pitchRun();
    return Math.min(w.height(), Math.max(stated / 2, stated - fall));
  }
}
