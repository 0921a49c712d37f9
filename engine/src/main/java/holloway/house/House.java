package holloway.house;

import holloway.geometry.Turn;
import holloway.limits.LocalRules;
import holloway.limits.RulePack;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The whole house as stated. Rooms, levels, roofs and chases are sorted by name, so that the order
 * of keys in a file means nothing; lists that a person writes as lists keep their order.
 *
 * @param turned how far it stands turned from the compass or its site's grid: all else, words such
 *     as north and outlines alike, is in the house's own frame, along which its walls run
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
    List<Porch> porches,
    LayoutCorner layout,
    LocalRules ownRules,
    Turn turned) {
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
    porches = List.copyOf(porches);
  }

  /** A house of which nothing else is stated, by the rules of its place. */
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
        inputs,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        LayoutCorner.SOUTH_WEST,
        LocalRules.NONE,
        Turn.NONE);
  }

  /** The same house with other chases stated. */
  public House withChases(List<Chase> other) {
    return with(other, inputs, ownRules);
  }

  /** The same house by a rule file, which counts among the inputs. */
  public House with(LocalRules rules, List<InputFile> files) {
    List<InputFile> all = new ArrayList<>(inputs);
    all.addAll(files);
    return with(chases, all, rules);
  }

  private House with(List<Chase> otherChases, List<InputFile> otherInputs, LocalRules rules) {
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
        otherChases,
        obstacles,
        conduits,
        soffits,
        skirtings,
        things,
        tapes,
        found,
        otherInputs,
        stairs,
        assumed,
        beams,
        porches,
        layout,
        rules,
        turned);
  }

  /** Whose rules are looked up: its place's, or the ones that a rule file is based on. */
  public RulePlace rulePlace() {
    return ownRules.present()
        ? RulePlace.valueOf(ownRules.basedOn().toUpperCase(Locale.ROOT))
        : place;
  }

  /** The rules in force, with the figures of a rule file over them. */
  public RulePack rulePack() {
    return RulePack.of(rulePlace().name().toLowerCase(Locale.ROOT), ownRules);
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
