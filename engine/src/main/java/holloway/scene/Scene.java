package holloway.scene;

import holloway.framing.MemberKind;
import holloway.hollow.HollowKind;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything there is to see: what pictures, the window and model files show. Members and hollows
 * are sorted by id; runs and holes stand in the order of the plan.
 *
 * @param ends the cabinet and the outlets that runs lead to
 */
public record Scene(
    String house,
    List<Level> levels,
    List<Room> rooms,
    List<Solid> solids,
    List<Space> spaces,
    List<End> ends,
    List<Tube> tubes,
    List<Pin> pins,
    List<Flag> flags) {
  public Scene {
    levels = List.copyOf(levels);
    rooms = List.copyOf(rooms);
    solids = List.copyOf(solids);
    spaces = List.copyOf(spaces);
    ends = List.copyOf(ends);
    tubes = List.copyOf(tubes);
    pins = List.copyOf(pins);
    flags = List.copyOf(flags);
  }

  /**
   * A level's share of the height, millimetres: from below its floor to below the floor of the next
   * over it.
   *
   * @param part of a split-level house; parts stand beside each other
   * @param floor the finished floor, {@code ceiling} the underside of the ceiling
   */
  public record Level(
      String name, int order, int part, double floor, double ceiling, double low, double high) {}

  /** A room's outline on its floor; {@code middle} is well inside. */
  public record Room(String name, int level, List<Vec> outline, Vec middle) {
    public Room {
      outline = List.copyOf(outline);
    }
  }

  /**
   * A member.
   *
   * @param level order of the level it belongs to; a roof belongs to the highest one under it
   * @param flat part of a floor, ceiling or roof
   * @param owner wall, deck, room or roof it belongs to
   */
  public record Solid(
      String id,
      MemberKind kind,
      Layer layer,
      int level,
      boolean flat,
      String owner,
      Brick brick,
      boolean assumed) {
    /** What it is, for a person. */
    public String words() {
      return kind.word();
    }
  }

  /**
   * A hollow with the runs that lie in it, none where none do.
   *
   * @param open room or outside air, a whole attic, or a way that nobody knows: not a box to be lit
   * @param owner wall, deck, roof, room or chase it belongs to
   * @param fill what it is filled with, for a person
   */
  public record Space(
      String id,
      HollowKind kind,
      Brick brick,
      List<String> runs,
      boolean open,
      String owner,
      String fill) {
    public Space {
      runs = List.copyOf(runs);
    }

    public String words() {
      return kind.word();
    }

    /** Whether it is a box that a run lies in. */
    public boolean isLit() {
      return !runs.isEmpty() && !open;
    }
  }

  /** The cabinet, or an outlet. */
  public record End(String name, Vec at, boolean cabinet) {}

  /**
   * A run.
   *
   * @param number its place among the plan's runs; colour and dash pattern follow from it
   * @param path its true way; {@code steps} for each point of it the step it ends, from 0
   * @param guessed steps in an old cable's or a tube's way, of which only the ends and the length
   *     are known
   * @param laid the way beside its neighbours, as lanes and as it is packed
   */
  public record Tube(
      String id,
      int number,
      String words,
      List<Vec> path,
      List<Integer> steps,
      Set<Integer> guessed,
      Lanes.Laid laid,
      double diameterMm,
      double metres) {
    public Tube {
      path = List.copyOf(path);
      steps = List.copyOf(steps);
      guessed = Set.copyOf(guessed);
    }
  }

  /** A hole of the plan: the axis of its bore from where it is made, and which runs pass. */
  public record Pin(
      String id,
      String label,
      String words,
      Vec from,
      Vec to,
      double diameterMm,
      List<String> runs,
      boolean breaksLaw) {
    public Pin {
      runs = List.copyOf(runs);
    }
  }

  /** A finding that has a place. */
  public record Flag(String rule, String severity, String words, Vec at) {}

  public Optional<Tube> findTube(String id) {
    return tubes.stream().filter(t -> t.id().equals(id)).findFirst();
  }
}
