package holloway.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** One storey's rectangle cut by walls into rooms; all figures in tenths of a millimetre. */
final class RoomGrid {
  private static final long LEAST = 16_000;

  /** A stretch along a wall, in the storey's coordinates. */
  record Stretch(long from, long to) {
    boolean near(long at, long clear) {
      return at > from - clear && at < to + clear;
    }
  }

  /** A room by its clear rectangle; {@code taken}: what its four sides already show. */
  record Cell(String name, long west, long south, long east, long north, List<Taken> taken) {
    long width() {
      return east - west;
    }

    long depth() {
      return north - south;
    }

    /** Where a side begins: its west or south end. */
    long begin(String side) {
      return eastWest(side) ? west : south;
    }

    long end(String side) {
      return eastWest(side) ? east : north;
    }

    boolean isFree(String side, long at, long clear) {
      return taken.stream().noneMatch(t -> t.side.equals(side) && t.at.near(at, clear));
    }
  }

  record Taken(String side, Stretch at) {}

  /** Two rooms with a wall between them; {@code side} is the first room's. */
  record Neighbours(Cell one, Cell other, String side, Stretch shared) {}

  final long width;
  final long depth;
  final long wall;
  final List<Cell> cells = new ArrayList<>();

  RoomGrid(String prefix, long width, long depth, long wall, int rooms, Random r) {
    this.width = width;
    this.depth = depth;
    this.wall = wall;
    cut(new long[] {0, 0, width, depth}, rooms, prefix, r);
  }

  static boolean eastWest(String side) {
    return side.equals("north") || side.equals("south");
  }

  private void cut(long[] c, int rooms, String prefix, Random r) {
    long wide = c[2] - c[0];
    long deep = c[3] - c[1];
    boolean across = wide >= deep;
    long room = Math.max(wide, deep) - wall - 2 * LEAST;
    if (rooms <= 1 || room <= 0) {
      String name = prefix + (cells.size() + 1);
      cells.add(new Cell(name, c[0], c[1], c[2], c[3], new ArrayList<>()));
      return;
    }
    int first = 1 + r.nextInt(rooms - 1);
    long at = (across ? c[0] : c[1]) + LEAST + 10 * r.nextInt((int) (room / 10) + 1);
    long[] low = across ? new long[] {c[0], c[1], at, c[3]} : new long[] {c[0], c[1], c[2], at};
    long[] high =
        across
            ? new long[] {at + wall, c[1], c[2], c[3]}
            : new long[] {c[0], at + wall, c[2], c[3]};
    cut(low, first, prefix, r);
    cut(high, rooms - first, prefix, r);
  }

  /** Every pair, the earlier cell first or second as it lies west or south. */
  List<Neighbours> neighbours() {
    List<Neighbours> found = new ArrayList<>();
    for (Cell a : cells) {
      for (Cell b : cells) {
        if (b.west - a.east == wall) {
          add(
              found,
              a,
              b,
              "east",
              new Stretch(Math.max(a.south, b.south), Math.min(a.north, b.north)));
        }
        if (b.south - a.north == wall) {
          add(
              found,
              a,
              b,
              "north",
              new Stretch(Math.max(a.west, b.west), Math.min(a.east, b.east)));
        }
      }
    }
    return found;
  }

  private static void add(List<Neighbours> to, Cell a, Cell b, String side, Stretch shared) {
    if (shared.to > shared.from) {
      to.add(new Neighbours(a, b, side, shared));
    }
  }

  boolean isOuter(Cell c, String side) {
    return switch (side) {
      case "west" -> c.west == 0;
      case "south" -> c.south == 0;
      case "east" -> c.east == width;
      default -> c.north == depth;
    };
  }

  static String opposite(String side) {
    return switch (side) {
      case "west" -> "east";
      case "east" -> "west";
      case "south" -> "north";
      default -> "south";
    };
  }
}
