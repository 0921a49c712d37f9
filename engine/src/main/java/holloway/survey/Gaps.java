package holloway.survey;

import holloway.house.Room;
import holloway.house.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Which measurements a gap between two rooms comes from, in words that can be added again. */
final class Gaps {
  private final TreeMap<String, RoomShape> shapes;
  private final Network ew;
  private final Network ns;
  private final Texts texts;

  Gaps(TreeMap<String, RoomShape> shapes, Network ew, Network ns, Texts texts) {
    this.shapes = shapes;
    this.ew = ew;
    this.ns = ns;
    this.texts = texts;
  }

  /** Of the gap between two faces of placed rooms. */
  String between(Edge low, Edge high) {
    boolean eastward = low.side() == Side.EAST || low.side() == Side.NORTH;
    return eastward ? between(face(low), face(high)) : between(face(high), face(low));
  }

  private RoomShape.Face face(Edge e) {
    return shapes.get(e.room().name()).faces(e.side()).get(e.ordinal() - 1);
  }

  /**
   * Of two rooms that run into each other, along the axis where they do so the least.
   *
   * @param eastWest the overlap is narrower east-west than north-south
   */
  String between(PlacedRoom a, PlacedRoom b, boolean eastWest) {
    Side far = eastWest ? Side.EAST : Side.NORTH;
    boolean aFirst =
        eastWest
            ? a.outline().xRange().mid() <= b.outline().xRange().mid()
            : a.outline().yRange().mid() <= b.outline().yRange().mid();
    Optional<RoomShape.Face> low = shapes.get((aFirst ? a : b).name()).outermost(far);
    Optional<RoomShape.Face> high = shapes.get((aFirst ? b : a).name()).outermost(far.opposite());
    return low.isPresent() && high.isPresent()
        ? between(low.get(), high.get())
        : measured(a.room(), eastWest) + " and " + measured(b.room(), eastWest);
  }

  private String between(RoomShape.Face low, RoomShape.Face high) {
    boolean eastWest = Axis.across(low.side()) == Axis.X;
    String both =
        "Measured: %s and %s."
            .formatted(
                measured(low.shape().room(), eastWest), measured(high.shape().room(), eastWest));
    if (!low.isSquare() || !high.isSquare()) {
      return both;
    }
    return both + walk(low, high, eastWest ? ew : ns);
  }

  private String walk(RoomShape.Face low, RoomShape.Face high, Network network) {
    Paths paths = new Paths(network);
    List<Observation> all = paths.observations();
    List<Integer> way =
        paths.tightest(
            low.unknown(), high.unknown(), e -> !joins(all.get(e), low.unknown(), high.unknown()));
    if (way.isEmpty()) {
      return " Nothing but the wall's own thickness says how far apart they are.";
    }
    List<String> steps = new ArrayList<>();
    for (Step s : paths.steps(low.unknown(), way)) {
      steps.add("%s, makes %s".formatted(s.what(), texts.length(s.sum().nm())));
    }
    return steps.stream()
        .collect(Collectors.joining("; ", " From %s to %s: ".formatted(low, high), "."));
  }

  /** Does it only say how thick the wall is thought to be? */
  private static boolean joins(Observation o, int a, int b) {
    return o.label().sort() == Label.Sort.THICKNESS && joinsAtAll(o, a, b);
  }

  private static boolean joinsAtAll(Observation o, int a, int b) {
    return o.from() == a && o.to() == b || o.from() == b && o.to() == a;
  }

  private String measured(Room room, boolean eastWest) {
    return room.size()
        .map(
            s ->
                texts.measured(
                    room.name() + (eastWest ? " east-west" : " north-south"),
                    eastWest ? s.eastWest() : s.northSouth()))
        .orElse("the outline of " + room.name() + texts.at(room.where()));
  }
}
