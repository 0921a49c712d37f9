package holloway.support;

import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.Lining;
import holloway.house.Room;
import holloway.house.Where;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/** A room on its way into a test house. */
public record RoomDraft(
    String name,
    String level,
    Optional<Room.Size> size,
    List<Room.Corner> outline,
    Room.Placing placing,
    Optional<FloorSpec> floor,
    Optional<Fact<Length>> elevation,
    Optional<Fact<Length>> ceilingHeight,
    Lining walls,
    Lining ceiling,
    boolean garage,
    Where where) {

  static RoomDraft sized(
      String name,
      String level,
      Fact<Length> eastWest,
      Fact<Length> northSouth,
      Room.Placing placing,
      Where where) {
    return of(
        name, level, Optional.of(new Room.Size(eastWest, northSouth)), List.of(), placing, where);
  }

  static RoomDraft outlined(
      String name, String level, List<Room.Corner> outline, Room.Placing placing, Where where) {
    return of(name, level, Optional.empty(), outline, placing, where);
  }

  private static RoomDraft of(
      String name,
      String level,
      Optional<Room.Size> size,
      List<Room.Corner> outline,
      Room.Placing placing,
      Where where) {
    return new RoomDraft(
        name,
        level,
        size,
        outline,
        placing,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Lining.BOARD,
        Lining.BOARD,
        false,
        where);
  }

  public RoomDraft asGarage() {
    return new RoomDraft(
        name,
        level,
        size,
        outline,
        placing,
        floor,
        elevation,
        ceilingHeight,
        walls,
        ceiling,
        true,
        where);
  }

  /** Finished floor against the level's, negative when lower. */
  public RoomDraft atElevation(Length by) {
    return new RoomDraft(
        name,
        level,
        size,
        outline,
        placing,
        floor,
        Optional.of(Fact.measured(by, where)),
        ceilingHeight,
        walls,
        ceiling,
        garage,
        where);
  }

  public RoomDraft withCeiling(Length height) {
    return new RoomDraft(
        name,
        level,
        size,
        outline,
        placing,
        floor,
        elevation,
        Optional.of(Fact.measured(height, where)),
        walls,
        ceiling,
        garage,
        where);
  }

  public RoomDraft withFloor(FloorSpec own) {
    return new RoomDraft(
        name,
        level,
        size,
        outline,
        placing,
        Optional.of(own),
        elevation,
        ceilingHeight,
        walls,
        ceiling,
        garage,
        where);
  }

  public RoomDraft lined(Lining wallLining, Lining ceilingLining) {
    return new RoomDraft(
        name,
        level,
        size,
        outline,
        placing,
        floor,
        elevation,
        ceilingHeight,
        wallLining,
        ceilingLining,
        garage,
        where);
  }

  public RoomDraft placed(Room.Placing other) {
    return new RoomDraft(
        name,
        level,
        size,
        outline,
        other,
        floor,
        elevation,
        ceilingHeight,
        walls,
        ceiling,
        garage,
        where);
  }

  Room build() {
    return new Room(
        name,
        level,
        size,
        outline,
        placing,
        floor,
        elevation,
        ceilingHeight,
        walls,
        ceiling,
        garage,
        garage,
        where);
  }
}
