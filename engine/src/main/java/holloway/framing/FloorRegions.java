package holloway.framing;

import holloway.geometry.Interval;
import holloway.house.FloorSpec;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;

/**
 * The joisted floor of a level, part by part as it is made: rooms that state a floor of their own
 * change section, spacing or direction in the middle of the walls round them.
 */
final class FloorRegions {
  /** One make-up and where it lies. */
  record Region(FloorSpec spec, Geometry outline) {}

  private final Placed placed;
  private final PlacedLevel level;
  private final Map<String, String> regionOf = new TreeMap<>();

  private FloorRegions(Placed placed, PlacedLevel level) {
    this.placed = placed;
    this.level = level;
  }

  /** The level's own make-up first, then others in the order of their rooms' names. */
  static List<Region> of(Placed placed, PlacedLevel level) {
    return new FloorRegions(placed, level).list();
  }

  private List<Region> list() {
    FloorSpec usual = level.level().floor();
    Map<String, FloorSpec> specs = new java.util.LinkedHashMap<>();
    specs.put(key(usual), usual);
    for (PlacedRoom r : placed.rooms()) {
      FloorSpec spec = r.room().floor().orElse(usual);
      if (r.room().level().equals(level.name()) && spec.kind() == FloorSpec.Kind.JOISTS) {
        regionOf.put(r.name(), key(spec));
        specs.putIfAbsent(key(spec), spec);
      }
    }
    List<Region> out = new ArrayList<>();
    boolean single = regionOf.values().stream().distinct().count() <= 1;
    specs.forEach(
        (key, spec) -> {
          if (regionOf.containsValue(key)) {
            out.add(new Region(spec, single ? whole() : outline(key)));
          }
        });
    return out;
  }

  private Geometry whole() {
    return Outlines.of(placed, level.name(), r -> regionOf.containsKey(r.name()), false);
  }

  /** What tells one floor from another where they meet. */
  private static String key(FloorSpec s) {
    return s.run()
        + "|"
        + s.joists().map(f -> f.value().toString()).orElse("")
        + "|"
        + s.every().value().nm()
        + "|"
        + s.origin().map(f -> String.valueOf(f.value().nm())).orElse("")
        + "|"
        + s.clearOverWalls()
        + s.boards()
        + s.fill()
        + s.crawlspace().map(c -> "over " + c.clearance().value().nm()).orElse("")
        + s.blocksAt().stream().map(f -> f.value().nm()).toList();
  }

  private Geometry outline(String key) {
    List<Geometry> parts = new ArrayList<>();
    for (PlacedRoom r : placed.rooms()) {
      if (key.equals(regionOf.get(r.name()))) {
        parts.add(r.outline().toJts());
      }
    }
    for (Wall w : placed.walls()) {
      boolean shows =
          w.isFramed()
              && w.level().equals(level.name())
              && w.faces().stream().anyMatch(f -> key.equals(regionOf.get(f.room())));
      if (shows) {
        share(w, key).forEach(p -> parts.add(Outlines.outOfMasonry(placed, w, p)));
      }
    }
    return Outlines.joined(parts);
  }

  private List<String> names(String key) {
    return regionOf.entrySet().stream()
        .filter(e -> e.getValue().equals(key))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** All of a wall along its rooms, or this region's share of one that other regions show too. */
  private List<Geometry> share(Wall w, String key) {
    boolean shared =
        w.faces().stream()
            .map(f -> Optional.ofNullable(regionOf.get(f.room())))
            .anyMatch(r -> r.isPresent() && !r.get().equals(key));
    if (!shared) {
      return List.of(Outlines.strip(w, names(key)).toJts());
    }
    List<Geometry> out = new ArrayList<>();
    boolean both = w.faces().stream().map(Wall.WallFace::side).distinct().count() == 2;
    for (int side = 0; side < 2; side++) {
      int at = side;
      List<Wall.WallFace> faces =
          w.faces().stream()
              .filter(f -> f.side() == at)
              .sorted(Comparator.comparingLong(f -> f.s().lo()))
              .toList();
      long mid = w.core().mid();
      long t0 = both && side == 1 ? mid : w.outside() == 0 ? w.core().lo() : 0;
      long t1 = both && side == 0 ? mid : w.outside() == 1 ? w.core().hi() : w.thickness();
      for (int i = 0; i < faces.size(); i++) {
        if (key.equals(regionOf.get(faces.get(i).room()))) {
          Interval s = owned(w, faces, i);
          out.add(Outlines.band(w, s, t0, t1).toJts());
        }
      }
    }
    return out;
  }

  /** From half-way to the face before up to half-way to the face after. */
  private static Interval owned(Wall w, List<Wall.WallFace> faces, int i) {
    long lo = i == 0 ? 0 : (faces.get(i - 1).s().hi() + faces.get(i).s().lo()) / 2;
    long hi =
        i + 1 == faces.size()
            ? w.length()
            : (faces.get(i).s().hi() + faces.get(i + 1).s().lo()) / 2;
    return new Interval(Math.min(lo, hi), Math.max(lo, hi));
  }
}
