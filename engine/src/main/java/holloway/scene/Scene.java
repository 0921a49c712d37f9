package holloway.scene;

import java.util.List;
import java.util.Optional;

/**
 * Everything there is to see; lists sorted by id.
 *
 * @param glows the hollows that runs use
 */
public record Scene(
    String house,
    List<Solid> solids,
    List<Glow> glows,
    List<Tube> tubes,
    List<Pin> pins,
    List<Flag> flags) {
  public Scene {
    solids = List.copyOf(solids);
    glows = List.copyOf(glows);
    tubes = List.copyOf(tubes);
    pins = List.copyOf(pins);
    flags = List.copyOf(flags);
  }

  /**
   * A member.
   *
   * @param level the level it stands on, by its height
   * @param words what it is, for a person
   */
  public record Solid(
      String id, Layer layer, String level, String words, Brick brick, boolean assumed) {}

  /** A hollow with the runs that lie in it. */
  public record Glow(String id, String words, Brick brick, List<String> runs) {}

  /**
   * A run.
   *
   * @param path its true way
   * @param aside by how much it is drawn beside its true way, so that runs of one way are not drawn
   *     on each other
   * @param colour index into {@link Palette#RUNS}; {@code dash} index of the dash pattern
   */
  public record Tube(
      String id, String words, List<Vec> path, Vec aside, double diameterMm, int colour, int dash) {
    public Tube {
      path = List.copyOf(path);
    }

    /** Millimetres along the true way. */
    public double length() {
      double sum = 0;
      for (int i = 1; i < path.size(); i++) {
        sum += path.get(i).minus(path.get(i - 1)).length();
      }
      return sum;
    }

    /** The point so many millimetres from the cabinet's end; ends are as far as it goes. */
    public Vec pointAt(double mm) {
      double left = Math.max(0, mm);
      for (int i = 1; i < path.size(); i++) {
        Vec step = path.get(i).minus(path.get(i - 1));
        double long1 = step.length();
        if (left <= long1 && long1 > 0) {
          return path.get(i - 1).plus(step.times(left / long1));
        }
        left -= long1;
      }
      return path.get(path.size() - 1);
    }
  }

  /** A hole of the plan: the axis of its bore, and which runs pass. */
  public record Pin(
      String id,
      String label,
      String words,
      Vec from,
      Vec to,
      double diameterMm,
      List<String> runs) {}

  /** A finding that has a place. */
  public record Flag(String rule, String severity, String words, Vec at) {}

  public Optional<Tube> findTube(String id) {
    return tubes.stream().filter(t -> t.id().equals(id)).findFirst();
  }
}
