package holloway.house;

import java.util.List;

/**
 * The whole house as stated. Rooms, levels, roofs and chases are sorted by name, so that the order
 * of keys in a file means nothing; lists that a person writes as lists keep their order.
 */
public record House(
    String name,
    RulePlace place,
    Fact<Integer> built,
    boolean balloon,
    WallSpec outerWalls,
    WallSpec innerWalls,
    List<Level> levels,
    List<Room> rooms,
    List<WallSpec> walls,
    List<Opening> openings,
    List<Roof> roofs,
    List<Chase> chases,
    List<Obstacle> obstacles,
    List<Conduit> conduits,
    List<Soffit> soffits,
    List<Skirting> skirtings,
    List<Thing> things,
    List<Tape> tapes,
    List<Found> found,
    List<InputFile> inputs,
    List<Stair> stairs,
    List<Assumption> assumed,
    List<Beam> beams,
    LayoutCorner layout) {
  /** Laid out from the south and west, as a house is taken to be. */
  public House(
      String name,
      RulePlace place,
      Fact<Integer> built,
      boolean balloon,
      WallSpec outerWalls,
      WallSpec innerWalls,
      List<Level> levels,
      List<Room> rooms,
      List<WallSpec> walls,
      List<Opening> openings,
      List<Roof> roofs,
      List<Chase> chases,
      List<Obstacle> obstacles,
      List<Conduit> conduits,
      List<Soffit> soffits,
      List<Skirting> skirtings,
      List<Thing> things,
      List<Tape> tapes,
      List<Found> found,
      List<InputFile> inputs,
      List<Stair> stairs,
      List<Assumption> assumed,
      List<Beam> beams) {
    this(
        name,
        place,
        built,
        balloon,
        outerWalls,
        innerWalls,
        levels,
        rooms,
        walls,
        openings,
        roofs,
        chases,
        obstacles,
        conduits,
        soffits,
        skirtings,
        things,
        tapes,
        found,
        inputs,
        stairs,
        assumed,
        beams,
        LayoutCorner.SOUTH_WEST);
  }

  /** Of a house without beams in which nothing is listed as assumed. */
  public House(
      String name,
      RulePlace place,
      Fact<Integer> built,
      boolean balloon,
      WallSpec outerWalls,
      WallSpec innerWalls,
      List<Level> levels,
      List<Room> rooms,
      List<WallSpec> walls,
      List<Opening> openings,
      List<Roof> roofs,
      List<Chase> chases,
      List<Obstacle> obstacles,
      List<Conduit> conduits,
      List<Soffit> soffits,
      List<Skirting> skirtings,
      List<Thing> things,
      List<Tape> tapes,
      List<Found> found,
      List<InputFile> inputs,
      List<Stair> stairs) {
    this(
        name,
        place,
        built,
        balloon,
        outerWalls,
        innerWalls,
        levels,
        rooms,
        walls,
        openings,
        roofs,
        chases,
        obstacles,
        conduits,
        soffits,
        skirtings,
        things,
        tapes,
        found,
        inputs,
        stairs,
        List.of(),
        List.of());
  }

  /** Of a house without stairs. */
  public House(
      String name,
      RulePlace place,
      Fact<Integer> built,
      boolean balloon,
      WallSpec outerWalls,
      WallSpec innerWalls,
      List<Level> levels,
      List<Room> rooms,
      List<WallSpec> walls,
      List<Opening> openings,
      List<Roof> roofs,
      List<Chase> chases,
      List<Obstacle> obstacles,
      List<Conduit> conduits,
      List<Soffit> soffits,
      List<Skirting> skirtings,
      List<Thing> things,
      List<Tape> tapes,
      List<Found> found,
      List<InputFile> inputs) {
    this(
        name,
        place,
        built,
        balloon,
        outerWalls,
        innerWalls,
        levels,
        rooms,
        walls,
        openings,
        roofs,
        chases,
        obstacles,
        conduits,
        soffits,
        skirtings,
        things,
        tapes,
        found,
        inputs,
        List.of());
  }

  /** A file that was read, with the SHA-256 of its bytes in hex. */
  public record InputFile(String file, String sha256) {}

  public House {
    levels = List.copyOf(levels);
    rooms = List.copyOf(rooms);
    walls = List.copyOf(walls);
    openings = List.copyOf(openings);
    roofs = List.copyOf(roofs);
    chases = List.copyOf(chases);
    obstacles = List.copyOf(obstacles);
    conduits = List.copyOf(conduits);
    soffits = List.copyOf(soffits);
    skirtings = List.copyOf(skirtings);
    things = List.copyOf(things);
    tapes = List.copyOf(tapes);
    found = List.copyOf(found);
    inputs = List.copyOf(inputs);
    stairs = List.copyOf(stairs);
    assumed = List.copyOf(assumed);
    beams = List.copyOf(beams);
  }

  /** A house of which no lowered ceiling and no loose skirting is stated. */
  public House(
      String name,
      RulePlace place,
      Fact<Integer> built,
      boolean balloon,
      WallSpec outerWalls,
      WallSpec innerWalls,
      List<Level> levels,
      List<Room> rooms,
      List<WallSpec> walls,
      List<Opening> openings,
      List<Roof> roofs,
      List<Chase> chases,
      List<Obstacle> obstacles,
      List<Conduit> conduits,
      List<Thing> things,
      List<Tape> tapes,
      List<Found> found,
      List<InputFile> inputs) {
    this(
        name,
        place,
        built,
        balloon,
        outerWalls,
        innerWalls,
        levels,
        rooms,
        walls,
        openings,
        roofs,
        chases,
        obstacles,
        conduits,
        List.of(),
        List.of(),
        things,
        tapes,
        found,
        inputs);
  }

  /** The same house with other chases stated. */
  public House withChases(List<Chase> other) {
    return new House(
        name,
        place,
        built,
        balloon,
        outerWalls,
        innerWalls,
        levels,
        rooms,
        walls,
        openings,
        roofs,
        other,
        obstacles,
        conduits,
        soffits,
        skirtings,
        things,
        tapes,
        found,
        inputs,
        stairs,
        assumed,
        beams,
        layout);
  }

  public Level getLevel(String name) {
    return levels.stream()
        .filter(l -> l.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no level " + name));
  }

  public Room getRoom(String name) {
    return rooms.stream()
        .filter(r -> r.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no room " + name));
  }
}
