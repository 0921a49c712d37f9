package holloway.survey;

import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Level;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Makes the walls and the footprint of every level. */
final class LevelWalls {
  private final House house;
  private final Specs specs;
  private final Storeys storeys;
  private final Spreads spreads;
  private final Gaps gaps;
  private final Texts texts;
  private final Notes notes;
  private final Problems problems;
  private final List<Wall> walls = new ArrayList<>();

  LevelWalls(
      House house,
      Specs specs,
      Storeys storeys,
      Spreads spreads,
      Gaps gaps,
      Texts texts,
      Notes notes,
      Problems problems) {
    this.house = house;
    this.specs = specs;
    this.storeys = storeys;
    this.spreads = spreads;
    this.gaps = gaps;
    this.texts = texts;
    this.notes = notes;
    this.problems = problems;
  }

  List<Wall> walls() {
    return walls;
  }

  /** What is taken of the walls between the parts of a split-level house. */
  List<String> assumed() {
    return walls.stream()
        .filter(w -> w.traits().isSplit())
        .map(
            w ->
                "%s stands between parts of the house with floors at different heights: taken as shut, no cable is led into or through it. Maybe have it opened and sleeved, and state the sleeve, or a tube that is there, under hollows as a conduit"
                    .formatted(w.id()))
        .toList();
  }

  List<PlacedLevel> build(Columns columns, List<PlacedRoom> rooms, Spaces spaces) {
    List<PlacedLevel> out = new ArrayList<>();
    List<Level> order = columns.order();
    for (int i = 0; i < order.size(); i++) {
      Level l = order.get(i);
      List<PlacedRoom> own = on(rooms, l);
      int part = columns.of(l.name());
      List<PlacedRoom> others =
          rooms.stream().filter(r -> columns.of(r.room().level()) != part).toList();
      Optional<Level> above = columns.over(l);
      Optional<Direction> carried = Carried.over(house, l, above, own);
      List<Framed> framed = own.isEmpty() ? List.of() : frame(own, others, carried);
      walls.addAll(
          new WallBuilder(l.name(), storeys, spreads, bearing(l, above, rooms), house.layout())
              .build(framed));
      PlacedLevel placed =
          new PlacedLevel(
              l,
              i,
              part,
              columns.storey(l.name()),
              storeys.levelFloorZ(l),
              storeys.levelCeilingZ(l),
              footprint(own, framed));
      spaces.look(placed, framed.stream().map(Framed::wholePlan).toList());
      out.add(placed);
    }
    return out;
  }

  private static List<PlacedRoom> on(List<PlacedRoom> rooms, Level l) {
    return rooms.stream().filter(r -> r.room().level().equals(l.name())).toList();
  }

  private Bearing bearing(Level l, Optional<Level> above, List<PlacedRoom> rooms) {
    List<PlacedRoom> over = above.map(a -> on(rooms, a)).orElse(List.of());
    Optional<FloorSpec> floor = above.map(Level::floor);
    List<PlacedRoom> deck = over.isEmpty() ? on(rooms, l) : over;
    Geometry plan =
        deck.isEmpty() ? Polygon2.rectangle(0, 0, 1, 1).toJts() : new Outdoors(deck).inside();
    return new Bearing(house, l.name(), over, floor, plan);
  }

  private List<Framed> frame(
      List<PlacedRoom> rooms, List<PlacedRoom> others, Optional<Direction> carried) {
    Outdoors outdoors = new Outdoors(rooms);
    List<PlacedRoom> all = new ArrayList<>(rooms);
    all.addAll(others);
    Outdoors whole = new Outdoors(all);
    StripMakes makes = new StripMakes(specs, notes);
    List<StripFinder> finders =
        Heading.of(rooms).stream()
            .map(h -> new StripFinder(h, outdoors, whole, makes, gaps, problems, texts))
            .toList();
    List<Strip> raw = new ArrayList<>();
    finders.forEach(f -> raw.addAll(f.look()));
    makes.number(raw);
    List<Strip> merged = new ArrayList<>();
    finders.forEach(f -> merged.addAll(StripMerger.merge(f.find())));
    return problems.isEmpty() ? Ends.of(merged, carried) : List.of();
  }

  /** To the outer face of the outer framing; gaps and narrow recesses closed. */
  private static List<Polygon2> footprint(List<PlacedRoom> rooms, List<Framed> framed) {
    if (rooms.isEmpty()) {
      return List.of();
    }
    List<Geometry> parts = new ArrayList<>();
    rooms.forEach(r -> parts.add(r.outline().toJts()));
    for (Framed f : framed) {
      parts.add(f.corePlan());
      parts.add(f.liningPlan());
    }
    Geometry closed = Outdoors.closed(parts);
    List<Polygon2> out = new ArrayList<>();
    for (int i = 0; i < closed.getNumGeometries(); i++) {
      if (closed.getGeometryN(i) instanceof Polygon p && p.getArea() > 1e4) {
        out.add(Outline.clean(Polygon2.ofJts(p)));
      }
    }
    out.sort(
        Comparator.comparing(
            p -> p.corners().stream().min(Comparator.naturalOrder()).orElseThrow()));
    return out;
  }
}
