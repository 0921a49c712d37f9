package holloway.survey;

import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Lining;
import holloway.house.Room;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Heights: floors and ceilings of levels and rooms from one adjusted network. */
final class Storeys {
  private final House house;
  private final Columns columns;
  private final Texts texts;
  private final Network network = new Network(Axis.Z);
  private final TreeMap<String, Integer> floor = new TreeMap<>();
  private final TreeMap<String, Integer> ceiling = new TreeMap<>();
  private final TreeMap<String, Long> floorZ = new TreeMap<>();
  private final TreeMap<String, Long> plane = new TreeMap<>();
  private final List<String> assumed = new ArrayList<>();

  Storeys(House house, Columns columns, Texts texts) {
    this.house = house;
    this.columns = columns;
    this.texts = texts;
  }

  List<String> assumed() {
    return assumed;
  }

  /** Adjusts, then shifts everything so that the lowest finished floor is at zero. */
  Closures adjust() {
    columns.order().forEach(this::observe);
    Adjustment z = Adjustment.of(network, 0);
    for (Level l : columns.order()) {
      floorZ.put(l.name(), z.position()[floor.get(l.name())]);
      long top = z.position()[ceiling.get(l.name())] + lining(l);
      Optional<Level> over = columns.over(l);
      if (over.isPresent()) {
        top = z.position()[floor.get(over.get().name())] - Makeup.deck(over.get().floor());
      }
      plane.put(l.name(), top);
    }
    long lowest = house.rooms().stream().mapToLong(this::floorZ).min().orElse(0);
    floorZ.replaceAll((k, v) -> v - lowest);
    plane.replaceAll((k, v) -> v - lowest);
    return Loops.of(network, 0, texts);
  }

  private void observe(Level l) {
    int own = network.addUnknown(l.name() + " floor");
    int top = network.addUnknown(l.name() + " ceiling");
    floor.put(l.name(), own);
    ceiling.put(l.name(), top);
    Optional<Level> under = columns.under(l);
    List<Level> stepped = columns.columns().get(columns.of(l.name()));
    if (under.isPresent()) {
      start(own, ceiling.get(under.get().name()), lining(under.get()) + Makeup.deck(l.floor()));
      observeRise(l, under.get());
    } else {
      stepped.forEach(s -> s.beside().ifPresent(b -> startBeside(own, b, stepped, s)));
    }
    l.beside().filter(b -> floor.containsKey(b.level())).ifPresent(b -> observeStep(l, b));
    start(top, own, l.ceilingHeight().value().nm());
    network.observe(
        own,
        top,
        l.ceilingHeight().value().nm(),
        spread(l.ceilingHeight()),
        Label.taped(
            texts.measured(l.name() + " ceiling height", l.ceilingHeight()),
            l.ceilingHeight().where()));
  }

  private void start(int unknown, int from, long more) {
    network.start(unknown, network.start(from) + more);
  }

  /**
   * Where the lowest floor of a part is looked for first, from a step that is stated further up.
   */
  private void startBeside(int lowest, Level.Beside b, List<Level> part, Level stepped) {
    long up = b.step().value().nm();
    for (Level l : part) {
      if (l.equals(stepped)) {
        break;
      }
      Level over = columns.over(l).orElseThrow();
      up -= l.ceilingHeight().value().nm() + lining(l) + Makeup.deck(over.floor());
    }
    if (floor.containsKey(b.level())) {
      start(lowest, floor.get(b.level()), up);
    }
  }

  private void observeStep(Level l, Level.Beside b) {
    network.observe(
        floor.get(b.level()),
        floor.get(l.name()),
        b.step().value().nm(),
        spread(b.step()),
        Label.taped(
            texts.measured(l.name() + " step from the floor of " + b.level(), b.step()),
            b.step().where()));
  }

  private void observeRise(Level l, Level under) {
    FloorSpec deck = l.floor();
    boolean stated = deck.joists().filter(j -> !j.isAssumed()).isPresent();
    long thickness = lining(under) + Makeup.deck(deck);
    if (!stated) {
      assumed.add(
          "floor of %s: nobody stated its make-up, taken as %s over all"
              .formatted(l.name(), texts.length(thickness)));
    }
    network.observe(
        ceiling.get(under.name()),
        floor.get(l.name()),
        thickness,
        stated ? Makeup.DECK_SPREAD : Makeup.DECK_SPREAD_ASSUMED,
        Label.thickness(
            "%s floor with ceiling board below %s%s"
                .formatted(l.name(), texts.length(thickness), stated ? "" : " (assumed)"),
            l.where()));
    l.rise()
        .ifPresent(
            r ->
                network.observe(
                    floor.get(under.name()),
                    floor.get(l.name()),
                    r.value().nm(),
                    spread(r),
                    Label.taped(
                        texts.measured(l.name() + " rise from floor to floor", r), r.where())));
  }

  private static long spread(Fact<Length> fact) {
    return fact.spread().nm() > 0 ? fact.spread().nm() : Fact.TAPE.nm();
  }

  private boolean isTop(Level l) {
    return columns.over(l).isEmpty();
  }

  /** What most rooms of the level have overhead; the first in the list of equals. */
  private long lining(Level l) {
    Map<Lined, Integer> count = new TreeMap<>();
    house.rooms().stream()
        .filter(r -> r.level().equals(l.name()) && !r.garage())
        .forEach(
            r ->
                count.merge(
                    new Lined(r.ceiling(), Makeup.ceilingLining(r, false)), 1, Integer::sum));
    long most = Makeup.lining(Lining.BOARD);
    int best = 0;
    for (Map.Entry<Lined, Integer> e : count.entrySet()) {
      if (e.getValue() > best) {
        best = e.getValue();
        most = e.getKey().nm();
      }
    }
    return most;
  }

  /** What a ceiling shows and how thick it is, in the order of linings. */
  private record Lined(Lining shows, long nm) implements Comparable<Lined> {
    @Override
    public int compareTo(Lined o) {
      int first = shows.compareTo(o.shows);
      return first == 0 ? Long.compare(nm, o.nm) : first;
    }
  }

  /** From what one room shows overhead up to the joists. */
  long lining(Room room) {
    return Makeup.ceilingLining(room, room.garage() && !isTop(house.getLevel(room.level())));
  }

  long levelFloorZ(Level l) {
    return floorZ.get(l.name());
  }

  long levelCeilingZ(Level l) {
    return plane.get(l.name()) - lining(l);
  }

  long floorZ(Room room) {
    return floorZ.get(room.level()) + room.elevation().map(e -> e.value().nm()).orElse(0L);
  }

  /**
   * Underside of the room's ceiling: below the joists of the level, unless its own taped height
   * says otherwise by more than three spreads (a dropped or a higher ceiling).
   */
  long ceilingZ(Room room) {
    long under = plane.get(room.level()) - lining(room);
    if (room.ceilingHeight().isEmpty()) {
      return under;
    }
    long own = floorZ(room) + room.ceilingHeight().get().value().nm();
    double taped = room.ceilingHeight().get().spread().toMm();
    double elevation = room.elevation().map(e -> e.spread().toMm()).orElse(0.0);
    double level = Fact.TAPE.toMm();
    double limit = 3 * Math.sqrt(taped * taped + elevation * elevation + level * level);
    return Math.abs(own - under) / 1e6 <= limit ? under : own;
  }
}
