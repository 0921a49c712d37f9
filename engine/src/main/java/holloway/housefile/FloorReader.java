package holloway.housefile;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.FloorSpec;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Timber;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a floor's make-up and the crawlspace under it. */
final class FloorReader {
  /** C3-18: a way in is at least 16 in by 24 in through a wall. */
  private static final Length DOOR_WIDTH = Length.inches(24);

  private static final Length DOOR_HEIGHT = Length.inches(16);

  /** A slab has none; the survey asks all the same. */
  private static final Fact<Length> NO_JOISTS = Fact.assumed(Length.inches(16));

  private FloorReader() {}

  /** The value of {@code floor}; empty if absent or reported. */
  static Optional<FloorSpec> read(Entry e, Defaults defaults, String of) {
    if (e.text("floor").filter("slab"::equals).isPresent()) {
      return Optional.of(
          new FloorSpec(
              FloorSpec.Kind.SLAB,
              Optional.empty(),
              NO_JOISTS,
              Direction.EAST_WEST,
              Optional.empty(),
              Optional.empty(),
              false,
              Fill.EMPTY,
              e.where("floor")));
    }
    return e.map("floor", HouseTables.FLOOR).flatMap(f -> joists(f, defaults, of));
  }

  private static Optional<FloorSpec> joists(Entry f, Defaults defaults, String of) {
    Optional<Direction> run = f.choice("run", Direction.class);
    if (run.isEmpty()) {
      return Optional.empty();
    }
    Timber.Kind kind = f.choice("kind", Timber.Kind.class).orElse(Timber.Kind.SOLID);
    Fact<Timber> joists =
        f.timber("joists").map(t -> ofKind(t, kind)).orElseGet(() -> defaults.joists(kind, of));
    Optional<FloorSpec.Crawlspace> crawlspace = crawlspace(f, defaults, of);
    return Optional.of(
        new FloorSpec(
            FloorSpec.Kind.JOISTS,
            Optional.of(joists),
            f.length("every").orElseGet(() -> defaults.joistSpacing(of)),
            run.get(),
            origin(f, run.get()),
            crawlspace,
            f.yesNo("boards").orElseGet(() -> defaults.liftingBoards(of)),
            f.choice("fill", Fill.class)
                .orElseGet(() -> defaults.floorFill(crawlspace.isPresent(), of)),
            blocks(f, run.get()),
            f.yesNo("blocks-over-walls").filter(yes -> !yes).isPresent(),
            f.where()));
  }

  private static List<Fact<Length>> blocks(Entry f, Direction run) {
    List<Fact<Length>> out = new ArrayList<>();
    for (Marked.Scalar s : f.texts("blocks-at")) {
      row(f, run, s).ifPresent(out::add);
    }
    return out;
  }

  /** Rows lie across the joists, so they are counted along them; back is from north or east. */
  private static Optional<Fact<Length>> row(Entry f, Direction run, Marked.Scalar s) {
    if (!Forms.isFromSide(s.text())) {
      return Entry.quietly(() -> Forms.length(s.text(), s.where()));
    }
    Optional<Along> said = Entry.quietly(() -> Forms.along(s.text(), s.where()));
    Side far = run == Direction.EAST_WEST ? Side.EAST : Side.NORTH;
    if (said.filter(a -> a.from() == far).isPresent()) {
      return said.map(Along::distance).map(FloorReader::back);
    }
    if (said.filter(a -> a.from() != far.opposite()).isPresent()) {
      f.problem(
          "blocks-at",
          far.word() + " 7 ft",
          "",
          "rows of blocks between joists that run %s are counted from the %s or %s edge of the floor"
              .formatted(Shape.word(run), far.opposite().word(), far.word()));
    }
    return said.map(Along::distance);
  }

  private static Fact<Timber> ofKind(Fact<Timber> t, Timber.Kind kind) {
    Timber v = t.value();
    return Fact.stated(new Timber(v.name(), v.thickness(), v.depth(), kind), t.where());
  }

  /** Joists that run east-west follow one another from south to north, or are counted back. */
  private static Optional<Fact<Length>> origin(Entry f, Direction run) {
    Optional<Along> from = f.along("from");
    String start = run == Direction.EAST_WEST ? "south" : "west";
    String end = run == Direction.EAST_WEST ? "north" : "east";
    if (from.isPresent() && from.get().from().word().equals(end)) {
      return from.map(Along::distance).map(FloorReader::back);
    }
    if (from.isPresent() && !from.get().from().word().equals(start)) {
      f.problem(
          "from",
          start + " 7 in",
          "",
          "joists that run %s are counted from the %s or %s edge of the floor"
              .formatted(Shape.word(run), start, end));
    }
    return from.map(Along::distance);
  }

  private static Fact<Length> back(Fact<Length> f) {
    return new Fact<>(new Length(-f.value().nm()), f.spread(), f.origin(), f.where());
  }

  private static Optional<FloorSpec.Crawlspace> crawlspace(Entry f, Defaults defaults, String of) {
    if (f.text("over").filter("crawlspace"::equals).isPresent()) {
      return Optional.of(
          new FloorSpec.Crawlspace(defaults.crawlClearance(of), Optional.empty(), f.where("over")));
    }
    return f.map("over", HouseTables.UNDER)
        .flatMap(u -> u.map("crawlspace", HouseTables.CRAWLSPACE))
        .map(
            c ->
                new FloorSpec.Crawlspace(
                    c.length("clearance").orElseGet(() -> defaults.crawlClearance(of)),
                    c.map("access", HouseTables.ACCESS).flatMap(FloorReader::wayIn),
                    c.where()));
  }

  private static Optional<FloorSpec.WayIn> wayIn(Entry a) {
    if (a.has("floor-hatch") == a.has("outside-door")) {
      a.problem(
          "floor-hatch",
          "floor-hatch: { in: closet, at: [west 2 ft, south 3 ft] }, or outside-door: { ... }",
          "",
          "the way into a crawlspace is one of floor-hatch and outside-door");
      return Optional.empty();
    }
    return a.map("floor-hatch", HouseTables.HATCH)
        .flatMap(FloorReader::hatch)
        .or(() -> a.map("outside-door", HouseTables.OUTSIDE_DOOR).flatMap(FloorReader::door));
  }

  private static Optional<FloorSpec.WayIn> hatch(Entry h) {
    Optional<CeilingSpot> at = h.text("in").flatMap(room -> Spots.onCeiling(h, "at", room));
    Room.Size size = hatchSize(h);
    return at.map(
        spot ->
            new FloorSpec.WayIn(
                Optional.of(spot),
                Optional.empty(),
                size.eastWest().value(),
                size.northSouth().value(),
                h.where()));
  }

  /** C3-16: 22 in by 30 in unless said. */
  static Room.Size hatchSize(Entry h) {
    return h.size("size")
        .orElse(
            new Room.Size(
                Fact.assumed(Length.inches(22), Length.mm(25)),
                Fact.assumed(Length.inches(30), Length.mm(25))));
  }

  private static Optional<FloorSpec.WayIn> door(Entry d) {
    if (d.face("side").isEmpty() || d.along("from").isEmpty()) {
      return Optional.empty();
    }
    Spots.fits(d, "from", d.face("side").get(), d.along("from").get());
    WallSpot at =
        new WallSpot(d.face("side").get(), d.along("from").get(), Fact.assumed(Length.ZERO));
    return Optional.of(
        new FloorSpec.WayIn(
            Optional.empty(),
            Optional.of(at),
            d.length("width").map(Fact::value).orElse(DOOR_WIDTH),
            d.length("height").map(Fact::value).orElse(DOOR_HEIGHT),
            d.where()));
  }
}
