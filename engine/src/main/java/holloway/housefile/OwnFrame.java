package holloway.housefile;

import holloway.geometry.MainDirection;
import holloway.geometry.Point2;
import holloway.geometry.Turn;
import holloway.house.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The frame that a house is worked out in: the one along which its walls run. Outlines whose walls
 * all run at one angle off the axes were measured on a site's grid; they are turned back.
 *
 * @param rooms in the house's own frame
 * @param turned how far that stands off the grid
 */
record OwnFrame(List<Room> rooms, Turn turned) {
  /** Most walls of the outlines, by length: from experience, bays and canted corners are less. */
  private static final double MOST = 0.6;

  /** Walls along the axes beyond that share: the outlines may well be in the house's own frame. */
  private static final double FEW = 0.1;

  /** Nearer to 45 degrees nobody can say which walls are the north ones; it has to be stated. */
  private static final double CLEAR_OF_DIAGONAL = Math.toRadians(0.5);

  /** What is stated by a compass is not read more finely than that. */
  private static final double COMPASS = Math.toRadians(0.5);

  private static final double QUARTER = Math.PI / 2;

  static OwnFrame of(List<Room> rooms, Optional<Turn> stated, Entry house) {
    List<Room> outlined = rooms.stream().filter(r -> !r.outline().isEmpty()).toList();
    List<MainDirection.Edge> edges = new ArrayList<>();
    outlined.forEach(r -> edges.addAll(edges(r)));
    MainDirection main = MainDirection.of(edges);
    boolean along = main.share() < MOST || Math.abs(main.radians()) <= MainDirection.SAME;
    if (along || !placed(rooms)) {
      return new OwnFrame(rooms, stated.orElse(Turn.NONE));
    }
    boolean all = outlined.size() == rooms.size();
    if (stated.isPresent()) {
      double said = Math.toRadians(stated.get().degrees());
      double off = Math.IEEEremainder(main.radians() - said, QUARTER);
      if (Math.abs(off) <= COMPASS) {
        Turn drawn = Turn.degrees(Math.toDegrees(said + off));
        return new OwnFrame(SiteOutlines.back(rooms, drawn), stated.get());
      }
      if (all) {
        refuse(house, main, stated.get());
      }
      return new OwnFrame(rooms, stated.get());
    }
    boolean found =
        all
            && MainDirection.shareOf(edges, 0) <= FEW
            && Math.abs(main.radians()) < QUARTER / 2 - CLEAR_OF_DIAGONAL;
    Turn turn = found ? Turn.degrees(Math.toDegrees(main.radians())) : Turn.NONE;
    return new OwnFrame(found ? SiteOutlines.back(rooms, turn) : rooms, turn);
  }

  /** Something is wrong with the rooms already where one lies at a place and the first has none. */
  private static boolean placed(List<Room> rooms) {
    return rooms.stream().noneMatch(r -> r.placing() instanceof Room.Placing.At)
        || SiteOutlines.first(rooms).filter(r -> !r.outline().isEmpty()).isPresent();
  }

  private static void refuse(Entry house, MainDirection main, Turn stated) {
    String run = Turn.degrees(Math.round(Math.toDegrees(main.radians()) * 100) / 100.0).words();
    house.problem(
        "turned",
        "turned: " + run + ", or outlines along the house's own walls",
        "",
        "the walls of the outlines run %s off the axes, but the house is said to stand turned by %s"
            .formatted(run, stated.words()));
  }

  private static List<MainDirection.Edge> edges(Room r) {
    List<MainDirection.Edge> out = new ArrayList<>();
    List<Point2> c = SiteOutlines.corners(r);
    for (int i = 0; i < c.size(); i++) {
      Point2 a = c.get(i);
      Point2 b = c.get((i + 1) % c.size());
      out.add(new MainDirection.Edge((b.x() - a.x()) / 1e6, (b.y() - a.y()) / 1e6));
    }
    return out;
  }
}
