package holloway.importing;

import holloway.house.Direction;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** What the larger faces of a roof tell: its shape, its pitch, and which way it falls. */
final class Slopes {
  /** Flatter than this is flat; a fall to a drain is no pitch. */
  private static final double FLAT = 3;

  /** Steeper than this is an edge or a wall. */
  private static final double STEEPEST = 70;

  /** A slope may lie this much off the walls' directions, degrees. */
  private static final double ASKEW = 3;

  /** A face smaller than this part of the largest is trim. */
  private static final double TRIM = 0.1;

  private final Map<Side, Double> area = new EnumMap<>(Side.class);
  private final Map<Side, Double> degrees = new EnumMap<>(Side.class);
  private boolean askew;
  private boolean any;

  Slopes(List<List<Vec>> faces) {
    double largest = faces.stream().mapToDouble(f -> Shape.normal(f).length()).max().orElse(0);
    for (List<Vec> f : faces) {
      Vec n = Shape.normal(f);
      if (n.length() > TRIM * largest && n.length() > 0) {
        add(n.z() < 0 ? n.times(-1) : n);
      }
    }
  }

  private void add(Vec n) {
    double pitch = Math.toDegrees(Math.acos(Math.min(1, n.z() / n.length())));
    if (pitch > STEEPEST) {
      return;
    }
    any = true;
    if (pitch < FLAT) {
      return;
    }
    double azimuth = Math.toDegrees(Math.atan2(n.y(), n.x()));
    askew |= Math.abs(Math.IEEEremainder(azimuth, 90)) > ASKEW;
    Side down =
        Math.abs(n.x()) > Math.abs(n.y())
            ? n.x() > 0 ? Side.EAST : Side.WEST
            : n.y() > 0 ? Side.NORTH : Side.SOUTH;
    area.merge(down, n.length(), Double::sum);
    degrees.merge(down, pitch * n.length(), Double::sum);
  }

  /** What a roof is like. */
  record Told(Roof.Shape shape, Direction ridge, Optional<Side> lowSide, double degrees) {}

  /**
   * @throws Unreadable when the faces are those of no roof that a house file can hold
   */
  Told tell() {
    if (!any) {
      throw new Unreadable("its slope cannot be told from its shape");
    }
    if (area.isEmpty()) {
      return new Told(Roof.Shape.FLAT, Direction.EAST_WEST, Optional.empty(), 0);
    }
    if (askew) {
      throw new Unreadable("it falls at an angle to the walls");
    }
    double pitch = pitch();
    TreeSet<Side> falls = new TreeSet<>(area.keySet());
    Side main = falls.first();
    for (Side s : falls) {
      main = area.get(s) > area.get(main) + 1e-6 ? s : main;
    }
    Direction ridge = main.runsEastWest() ? Direction.EAST_WEST : Direction.NORTH_SOUTH;
    if (falls.size() == 1) {
      return new Told(Roof.Shape.SHED, ridge, Optional.of(main), pitch);
    }
    if (falls.size() == 4) {
      return new Told(Roof.Shape.HIP, ridge, Optional.empty(), pitch);
    }
    if (falls.size() == 2 && falls.contains(main.opposite())) {
      return new Told(Roof.Shape.GABLE, ridge, Optional.empty(), pitch);
    }
    throw new Unreadable("it falls to " + words(falls) + ", which is no gable, hip or shed");
  }

  private double pitch() {
    double least = 90;
    double most = 0;
    double sum = 0;
    double whole = 0;
    for (Side s : area.keySet()) {
      double own = degrees.get(s) / area.get(s);
      least = Math.min(least, own);
      most = Math.max(most, own);
      sum += degrees.get(s);
      whole += area.get(s);
    }
    if (most - least > 2) {
      throw new Unreadable(
          "its slopes have different pitches, %.0f to %.0f degrees".formatted(least, most));
    }
    return sum / whole;
  }

  private static String words(TreeSet<Side> falls) {
    return String.join(", ", falls.stream().map(Side::word).toList());
  }
}
