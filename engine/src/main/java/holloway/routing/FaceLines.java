package holloway.routing;

import holloway.geometry.Point2;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The lines of one house on which cable is clipped, with the openings in them, each found once:
 * they hang on its rooms and walls alone. May be used on several threads.
 */
final class FaceLines {
  /**
   * @param corners of a closed line
   * @param panes openings that no leg goes over
   */
  record Line(List<Point2> corners, List<RingNet.Gap> gaps, List<Pane> panes) {}

  private record Round(String room, long top) {}

  private final Placed placed;
  private final String ground;
  private final Map<Round, Line> rooms = new ConcurrentHashMap<>();
  private volatile List<Line> buildings;

  /**
   * @param ground the level at whose height cable goes round a building
   */
  FaceLines(Placed placed, String ground) {
    this.placed = placed;
    this.ground = ground;
  }

  /** Round the walls of a room whose surface ends at that height. */
  Line room(PlacedRoom r, long top) {
    return rooms.computeIfAbsent(new Round(r.name(), top), k -> round(r, top));
  }

  private Line round(PlacedRoom r, long top) {
    List<Point2> line = SurfaceLines.inRoom(r);
    List<RingNet.Gap> gaps =
        SurfaceLines.gaps(placed, r.room().level(), line, r.floorZ(), top, Optional.of(r.name()));
    return new Line(line, gaps, Pane.of(placed, r.name()));
  }

  /** Round each building, outside. */
  List<Line> buildings() {
    List<Line> known = buildings;
    if (known == null) {
      known = outside();
      buildings = known;
    }
    return known;
  }

  private List<Line> outside() {
    long floor = placed.getLevel(ground).floorZ();
    long ceiling = placed.getLevel(ground).ceilingZ();
    List<Line> out = new ArrayList<>();
    for (List<Point2> line : SurfaceLines.outside(placed, ground)) {
      List<RingNet.Gap> gaps =
          SurfaceLines.gaps(placed, ground, line, floor, ceiling, Optional.empty());
      out.add(new Line(line, gaps, List.of()));
    }
    return List.copyOf(out);
  }
}
