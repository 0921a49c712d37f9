package holloway.importing;

import holloway.house.Side;
import holloway.housefile.draft.Draft;
import holloway.units.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Stand-in places for the cabinet and a first outlet: on plain wall, clear of openings. */
final class Spots {
  /** Clear of a jamb and its studs, millimetres. */
  private static final double CLEAR = 200;

  private static final double NM = Length.NM_PER_MM;
  private static final double[] PARTS = {0.5, 0.3, 0.7, 0.15, 0.85};

  private final Floors floors;
  private final List<PlanHole> holes;
  private final Grid grid;

  Spots(Floors floors, List<PlanHole> holes, Grid grid) {
    this.floors = floors;
    this.holes = holes;
    this.grid = grid;
  }

  static boolean isGarage(PlanRoom r) {
    String name = r.name().toLowerCase(Locale.ROOT);
    return name.contains("garage") || name.contains("carport");
  }

  /** In the garage, else in the largest room. */
  Draft.Spot cabinet() {
    Comparator<PlanRoom> by = Comparator.comparing(r -> !isGarage(r));
    return spot(largest(by), grid.metric() ? 1_500 : 1_524, 0);
  }

  /** In the largest other room, else on another wall of the only one. */
  Draft.Spot outlet(Draft.Spot cabinet) {
    Comparator<PlanRoom> by = Comparator.comparing(r -> r.name().equals(cabinet.face().room()));
    PlanRoom room = largest(by);
    boolean same = room.name().equals(cabinet.face().room());
    return spot(room, grid.metric() ? 450 : 406.4, same ? 1 : 0);
  }

  private PlanRoom largest(Comparator<PlanRoom> first) {
    return floors.rooms().stream()
        .min(first.thenComparingDouble(r -> -Math.rint(r.areaMm2())).thenComparing(PlanRoom::name))
        .orElseThrow();
  }

  private Draft.Spot spot(PlanRoom room, double height, int skip) {
    List<Face> faces =
        room.faces().stream()
            .filter(f -> f.isSquare() && f.ordinal() <= Face.MOST)
            .sorted(Comparator.comparingDouble(f -> -Math.rint(f.length() / NM)))
            .skip(skip)
            .toList();
    for (Face f : faces) {
      for (double part : PARTS) {
        if (isClear(f, part * f.length())) {
          return at(f, part, room, height);
        }
      }
    }
    return at(faces.get(0), 0.5, room, height);
  }

  private boolean isClear(Face f, double s) {
    return holes.stream()
        .noneMatch(
            h -> {
              double[] at = f.locate(h.centre().x() * NM, h.centre().y() * NM);
              return Math.abs(at[1]) < 500 * NM
                  && Math.abs(at[0] - s) < (h.width() / 2 + CLEAR) * NM
                  && h.bottom() < f.room().ceiling()
                  && h.top() > f.room().floor();
            });
  }

  private Draft.Spot at(Face f, double part, PlanRoom room, double height) {
    double most = (room.ceiling() - room.floor()) * 0.7;
    return new Draft.Spot(
        WallThickness.face(f),
        f.side().runsEastWest() ? Side.WEST : Side.SOUTH,
        new Length(grid.round(Math.round(part * f.length()))),
        grid.length(Math.min(height, most)));
  }
}
