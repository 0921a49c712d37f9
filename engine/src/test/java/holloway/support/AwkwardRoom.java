package holloway.support;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** A room of an awkward house: a rectangle that may lack one or two of its northern corners. */
final class AwkwardRoom {
  /** What is missing of the rectangle. */
  enum Shape {
    WHOLE,
    L,
    T,
    ANGLED
  }

  final String name;
  final String level;
  final int west;
  final int south;
  final int width;
  final int depth;

  /** How the file places it, after the level. */
  String placed = "";

  Shape shape = Shape.WHOLE;

  /** How far the missing corner reaches along each side, mm. */
  int notch;

  /** More of its keys, each with the comma before it. */
  final StringBuilder keys = new StringBuilder();

  /** Sides on which the house ends here. */
  final List<String> outer = new ArrayList<>();

  /** Nobody's cable ends in it: a neighbour's room, one that was not seen, a closet. */
  boolean bare;

  boolean plainCeiling = true;
  boolean vaulted;
  private final Map<String, List<int[]>> taken = new LinkedHashMap<>();

  AwkwardRoom(String level, String name, int west, int south, int width, int depth) {
    this.level = level;
    this.name = name;
    this.west = west;
    this.south = south;
    this.width = width;
    this.depth = depth;
  }

  /** The sides that are one whole face. */
  List<String> wholeSides() {
    return switch (shape) {
      case WHOLE -> List.of("south", "west", "east", "north");
      case L, ANGLED -> List.of("south", "west");
      case T -> List.of("south");
    };
  }

  /** From the south end of its east side, how far the first face reaches. */
  int eastFace() {
    return shape == Shape.WHOLE ? depth : depth - notch;
  }

  /** The same of its west side. */
  int westFace() {
    return shape == Shape.T ? depth - notch : depth;
  }

  int length(String side) {
    return side.equals("south") || side.equals("north") ? width : depth;
  }

  static String begin(String side) {
    return side.equals("south") || side.equals("north") ? "west" : "south";
  }

  static String end(String side) {
    return side.equals("south") || side.equals("north") ? "east" : "north";
  }

  /** Takes so long a stretch of a side; -1 where none is free, else where its near end lies. */
  int take(Random r, String side, int length, int clear) {
    int room = length(side) - length - 2 * clear;
    for (int tries = 0; room > 0 && tries < 12; tries++) {
      int at = clear + r.nextInt(room);
      if (isFree(side, at - 100, at + length + 100)) {
        takeAt(side, at, at + length);
        return at;
      }
    }
    return -1;
  }

  void takeAt(String side, int from, int to) {
    taken.computeIfAbsent(side, s -> new ArrayList<>()).add(new int[] {from, to});
  }

  private boolean isFree(String side, int from, int to) {
    return taken.getOrDefault(side, List.of()).stream().noneMatch(t -> t[0] < to && t[1] > from);
  }

  String line() {
    return "  %s: { level: %s, %s%s%s }".formatted(name, level, extent(), placed, keys);
  }

  private String extent() {
    int n = notch;
    return switch (shape) {
      case WHOLE -> "size: %d mm x %d mm".formatted(width, depth);
      case L ->
          outline(
              0, 0, width, 0, width, depth - n, width - n, depth - n, width - n, depth, 0, depth);
      case T ->
          outline(
              0, 0, width, 0, width, depth - n, width - n, depth - n, width - n, depth, n, depth, n,
              depth - n, 0, depth - n);
      case ANGLED -> outline(0, 0, width, 0, width, depth - n, width - n - n / 4, depth, 0, depth);
    };
  }

  private static String outline(int... xy) {
    StringBuilder out = new StringBuilder("outline: [");
    for (int i = 0; i < xy.length; i += 2) {
      out.append(i == 0 ? "" : ", ").append("[%d mm, %d mm]".formatted(xy[i], xy[i + 1]));
    }
    return out.append(']').toString();
  }
}
