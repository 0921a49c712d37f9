package holloway.housefile.draft;

import holloway.geometry.Point2;
import holloway.geometry.Turn;
import holloway.house.Direction;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a house before anybody has looked behind its boards. Every {@code toFinish} is
 * written as a comment that begins so, beside the thing it is about.
 *
 * @param title of the house as the description has it
 * @param about where it is from and what was done with it; plain comments at the top
 * @param metric lengths are written in metres, else in feet and inches
 * @param turned how far the house stands off the grid that it is from
 */
public record Draft(
    String title,
    List<String> about,
    List<String> toFinish,
    boolean metric,
    Turn turned,
    WallDefault outerWalls,
    WallDefault innerWalls,
    List<Level> levels,
    List<Room> rooms,
    List<Wall> walls,
    List<Hole> openings,
    List<Cover> roofs,
    Spot cabinet,
    Spot outlet) {
  public Draft {
    about = List.copyOf(about);
    toFinish = List.copyOf(toFinish);
    levels = List.copyOf(levels);
    rooms = List.copyOf(rooms);
    walls = List.copyOf(walls);
    openings = List.copyOf(openings);
    roofs = List.copyOf(roofs);
    if (levels.isEmpty() || rooms.isEmpty()) {
      throw new IllegalArgumentException("a house needs a level and a room");
    }
  }

  /** One side of a room; {@code ordinal} from 1 where it shows several faces there. */
  public record Face(String room, Side side, int ordinal) {}

  /** What most outer or inner walls are like. */
  public record WallDefault(Optional<Length> thickness, boolean masonry, List<String> toFinish) {
    public WallDefault {
      toFinish = List.copyOf(toFinish);
    }
  }

  /**
   * @param rise floor to floor from the level below
   * @param concrete its floor is known to be concrete, or it lies on the ground
   * @param joists the way a floor's joists may run; not looked at when it is concrete
   */
  public record Level(
      String name,
      Optional<String> above,
      Length ceilingHeight,
      Optional<Length> rise,
      boolean concrete,
      Direction joists,
      List<String> toFinish) {
    public Level {
      toFinish = List.copyOf(toFinish);
    }
  }

  /**
   * @param outline corners from the south-west corner of its box
   * @param at that corner from the first room's; empty for the first room
   */
  public record Room(
      String name,
      String level,
      List<Point2> outline,
      Optional<Point2> at,
      Optional<Length> elevation,
      Optional<Length> ceilingHeight,
      boolean garage,
      List<String> toFinish) {
    public Room {
      outline = List.copyOf(outline);
      toFinish = List.copyOf(toFinish);
    }
  }

  /** A wall that is not like most: between two rooms, or behind a face. */
  public record Wall(List<String> between, Optional<Face> face, Length thickness) {
    public Wall {
      between = List.copyOf(between);
      if (between.size() != (face.isPresent() ? 0 : 2)) {
        throw new IllegalArgumentException("a wall lies between two rooms or behind a face");
      }
    }
  }

  /**
   * A door, window or plain opening.
   *
   * @param remark where it leads, or what is odd about it
   */
  public record Hole(
      Opening.Kind kind,
      Face face,
      Side from,
      Length along,
      Length width,
      Length sill,
      Length head,
      String remark) {}

  /**
   * A roof.
   *
   * @param level that it covers whole; else {@code rooms}
   * @param lowSide of a shed roof
   * @param degrees its pitch, 0 when flat
   */
  public record Cover(
      Optional<String> level,
      List<String> rooms,
      Roof.Shape shape,
      Direction ridge,
      Optional<Side> lowSide,
      double degrees,
      List<String> toFinish) {
    public Cover {
      rooms = List.copyOf(rooms);
      toFinish = List.copyOf(toFinish);
    }
  }

  /** A stand-in place on a face, {@code along} from its end on the side {@code from}. */
  public record Spot(Face face, Side from, Length along, Length height) {}
}
