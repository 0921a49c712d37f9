package holloway.housefile;

import holloway.house.Battens;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.LayoutCorner;
import holloway.house.Level;
import holloway.house.Lining;
import holloway.house.Origin;
import holloway.house.Room;
import holloway.house.Room.Placing;
import holloway.house.Standing;
import holloway.house.Straps;
import holloway.house.Timber;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.request.Request;
import holloway.units.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes a house and what is wanted of it as a house file that reads as the same house: the same
 * values, spreads and origins, on other lines. Wishes of a wishes file become part of it; what was
 * found and an effort table of one's own are files of their own.
 */
public final class HouseWriter {
  private final House house;
  private final Taken taken;

  private HouseWriter(House house) {
    this.house = house;
    this.taken = new Taken(house.assumed());
  }

  /**
   * @param effortFile the name that the effort table will have beside this file, if one is written
   */
  public static String house(House house, Request request, Optional<String> effortFile) {
    HouseWriter w = new HouseWriter(house);
    Words file = new Words();
    w.head(file);
    Map<String, Object> levels = new LinkedHashMap<>();
    house.levels().forEach(l -> levels.put(l.name(), w.level(l)));
    Map<String, Object> rooms = new LinkedHashMap<>();
    house.rooms().forEach(r -> rooms.put(r.name(), w.room(r)));
    file.put("levels", levels).put("rooms", rooms);
    file.put("walls", house.walls().stream().map(HouseWriter::wall).toList());
    new OuterWriter(house).into(file);
    new WantedWriter(request).into(file);
    file.maybe("effort", effortFile, n -> n);
    return TreePrinter.print(file.map());
  }

  /** The companion file of what the work uncovered; empty if nothing was. */
  public static Optional<String> found(House house) {
    return house.found().isEmpty()
        ? Optional.empty()
        : Optional.of(TreePrinter.print(FoundWriter.write(house.found())));
  }

  /** The effort table if the person has one of their own. */
  public static Optional<String> effort(Request request) {
    return request.effort().overridden()
        ? Optional.of(TreePrinter.print(WantedWriter.effort(request.effort())))
        : Optional.empty();
  }

  private void head(Words file) {
    file.put("house", house.name()).word("place", house.place());
    if (house.ownRules().present()) {
      file.put("rules", house.ownRules().file());
    }
    file.fact("built", Optional.of(house.built()), String::valueOf);
    if (!taken.has("framing", "all outer walls")) {
      file.put("framing", house.balloon() ? "balloon" : "platform");
    }
    if (house.layout() != LayoutCorner.SOUTH_WEST) {
      file.put("layout-from", house.layout().word());
    }
    if (!house.turned().isNone()) {
      file.put("turned", house.turned().words());
    }
    file.put("outer-walls", usual(house.outerWalls(), "outer"));
    file.put("inner-walls", usual(house.innerWalls(), "inner"));
  }

  /** What was taken by place and era is left out, so that it is taken again. */
  private Map<String, Object> usual(WallSpec s, String side) {
    Map<String, Object> m = make(new Words(), s).map();
    if (taken.has(side + "-kind", side + " walls")) {
      m.remove("kind");
    }
    if (taken.has(side + "-top-plate", side + " walls")) {
      m.remove("top-plate");
    }
    return m;
  }

  private Map<String, Object> level(Level l) {
    return new Words()
        .maybe("above", l.above(), n -> n)
        .put("floor", floor(l.floor(), "level " + l.name()))
        .length("ceiling-height", l.ceilingHeight())
        .length("rise", l.rise())
        .maybe("beside", l.beside(), b -> b.level())
        .length("step", l.beside().map(Level.Beside::step))
        .maybe("outer-walls", l.outerWalls(), s -> make(new Words(), s).map())
        .maybe("inner-walls", l.innerWalls(), s -> make(new Words(), s).map())
        .maybe("usual", slopes(l), c -> Map.of("ceiling", Shape.word(c)))
        .map();
  }

  /** {@code ceiling: vaulted} leaves no word for what lines the slopes: the level has to say it. */
  private Optional<Lining> slopes(Level level) {
    return house.rooms().stream()
        .filter(r -> r.vaulted() && r.level().equals(level.name()))
        .filter(r -> !taken.has("ceiling", r.name()))
        .map(Room::ceiling)
        .findFirst();
  }

  private Object floor(FloorSpec f, String of) {
    if (f.kind() == FloorSpec.Kind.SLAB) {
      return "slab";
    }
    boolean eastWest = f.run() == holloway.house.Direction.EAST_WEST;
    Words w = new Words();
    if (!f.blocksAt().isEmpty()) {
      w.put("blocks-at", f.blocksAt().stream().map(b -> row(b, eastWest)).toList());
    }
    if (f.clearOverWalls()) {
      w.put("blocks-over-walls", "no");
    }
    w.timber("joists", f.joists())
        .maybe("kind", f.joists().map(Fact::value).map(Timber::kind), Shape::word)
        .length("every", f.every())
        .word("run", f.run())
        .maybe("from", f.origin(), o -> joistsFrom(o, eastWest))
        .maybe("over", f.crawlspace(), HouseWriter::crawlspace)
        .yesNo("boards", f.boards())
        .word("fill", f.fill());
    if (taken.has("boards", of)) {
      w.map().remove("boards");
    }
    if (taken.has("floor-fill", of) || taken.has("crawlspace-fill", of)) {
      w.map().remove("fill");
    }
    return w.map();
  }

  private static String row(Fact<Length> at, boolean eastWest) {
    long nm = at.value().nm();
    Fact<Length> plain = new Fact<>(new Length(Math.abs(nm)), at.spread(), at.origin(), at.where());
    return (nm < 0 ? (eastWest ? "east " : "north ") : "") + text(plain);
  }

  private static String joistsFrom(Fact<Length> origin, boolean eastWest) {
    boolean back = origin.value().nm() < 0;
    Length d = new Length(Math.abs(origin.value().nm()));
    String side = eastWest ? (back ? "north " : "south ") : back ? "east " : "west ";
    return side + Words.of(new Fact<>(d, origin.spread(), origin.origin(), origin.where()));
  }

  private static Object crawlspace(FloorSpec.Crawlspace c) {
    Words w = new Words().length("clearance", c.clearance());
    w.maybe("access", c.access(), HouseWriter::wayIn);
    return w.map().isEmpty() ? "crawlspace" : Map.of("crawlspace", w.map());
  }

  private static Object wayIn(FloorSpec.WayIn a) {
    if (a.floorHatch().isPresent()) {
      return Map.of("floor-hatch", OuterWriter.hatch(a.floorHatch().get(), a.width(), a.height()));
    }
    Words door = new Words();
    a.outsideDoor()
        .ifPresent(d -> door.put("side", Words.of(d.face())).put("from", Words.of(d.along())));
    return Map.of(
        "outside-door",
        door.put("width", Words.of(a.width())).put("height", Words.of(a.height())).map());
  }

  private Map<String, Object> room(Room r) {
    Words w = new Words().put("level", r.level());
    w.maybe("size", r.size(), s -> Words.size(s.eastWest(), s.northSouth()));
    if (!r.outline().isEmpty()) {
      w.put(
          "outline",
          r.outline().stream().map(c -> List.of(Words.of(c.x()), Words.of(c.y()))).toList());
    }
    placing(r.placing(), w);
    if (r.vaulted()) {
      w.put("ceiling", "vaulted");
    } else if (!r.overhead().layers().isEmpty()) {
      w.put("ceiling", r.overhead().layers().stream().map(l -> layer(l)).toList());
    } else if (!taken.has("ceiling", r.name())) {
      w.word("ceiling", r.ceiling());
    }
    r.overhead().straps().ifPresent(s -> w.put("straps", straps(s)));
    if (!taken.has("finish", r.name())) {
      w.word("finish", r.walls());
    }
    return w.maybe("floor", r.floor(), f -> floor(f, "floor of " + r.name()))
        .length("elevation", r.elevation())
        .length("ceiling-height", r.ceilingHeight())
        .yesNo("plain", r.plain())
        .yesNo("garage", r.garage())
        .yesNo("ours", r.standing() != Standing.SOMEBODY_ELSES)
        .yesNo("surveyed", r.standing() != Standing.NOT_SURVEYED)
        .map();
  }

  private static void placing(Placing placing, Words w) {
    if (placing instanceof Placing.At at) {
      w.put("at", List.of(Words.of(at.x()), Words.of(at.y())));
    } else if (placing instanceof Placing.Apart) {
      w.put("apart", "yes");
    } else if (placing instanceof Placing.Beside b) {
      w.put(b.side().word() + "-of", b.neighbour()).word("align", b.align());
      w.put("shift", Words.of(b.shift()));
    } else if (placing instanceof Placing.Stacked s) {
      boolean taped = s.shiftEast().origin() == Origin.MEASURED;
      w.put(s.above() ? "above" : "below", s.neighbour());
      w.put("align", s.alignNorthSouth().word() + "-" + s.alignEastWest().word());
      w.put("shift-east", Words.of(s.shiftEast())).put("shift-north", Words.of(s.shiftNorth()));
      w.put("tied", taped ? "measured" : "assumed");
    }
  }

  private static Words make(Words w, WallSpec s) {
    CavityReader.write(w, s);
    w.timber("studs", s.studs()).length("every", s.every());
    w.length("thickness", s.thickness());
    w.fact("bearing", s.bearing(), b -> b ? "yes" : "no").fact("fill", s.fill(), HouseWriter::word);
    w.maybe("framing", s.balloon(), b -> b ? "balloon" : "platform");
    w.maybe("top-plate", s.singleTopPlate(), b -> b ? "single" : "double");
    w.maybe("party", s.traits().party(), p -> p ? "yes" : "no");
    w.maybe("rows", s.traits().rows(), String::valueOf);
    w.length("void", s.traits().hollow());
    if (!s.traits().knockouts().isEmpty()) {
      w.put("knockouts", s.traits().knockouts().stream().map(HouseWriter::text).toList());
    }
    for (WallTraits.Layers l : s.traits().layers()) {
      w.put("lining", l.layers().stream().map(HouseWriter::layer).toList());
    }
    s.traits().battens().forEach(b -> w.put("battens", battens(b)));
    if (!s.blocksAt().isEmpty()) {
      w.put("blocks-at", s.blocksAt().stream().map(HouseWriter::text).toList());
    }
    return w;
  }

  private static String word(Fill fill) {
    return Shape.word(fill);
  }

  private static Map<String, Object> straps(Straps s) {
    Words w = new Words().put("depth", Words.of(s.depth()));
    if (!s.every().isAssumed()) {
      w.put("every", Words.of(s.every()));
    }
    return w.map();
  }

  private static Map<String, Object> battens(Battens b) {
    Words w = new Words().put("depth", Words.of(b.depth())).length("every", b.every());
    w.put("run", b.level() ? "level" : "upright").length("first", b.first());
    if (!b.over().thickness().isAssumed()) {
      w.put("over", layer(b.over()));
    }
    return w.map();
  }

  private static String layer(WallTraits.Layer l) {
    return Shape.word(l.what()) + " " + Words.of(l.thickness());
  }

  private static String text(Fact<Length> f) {
    return Words.of(f);
  }

  private static Map<String, Object> wall(WallSpec s) {
    Words w = new Words();
    s.ref().ifPresent(r -> ref(r, w));
    w.maybe("name", s.name(), n -> n);
    w.maybe("studs-from", s.studsFrom(), a -> Words.of(a));
    w.length("height", s.traits().height()).length("header", s.traits().header());
    w.maybe("separation", s.garageSeparation(), g -> g ? "garage" : "none");
    return make(w, s).map();
  }

  static void ref(WallRef ref, Words w) {
    ref.between()
        .ifPresent(
            b -> w.put("between", List.of(b.one(), b.other())).put("number", b.ordinal() + ""));
    ref.face().ifPresent(f -> w.put("side", Words.of(f)));
  }
}
