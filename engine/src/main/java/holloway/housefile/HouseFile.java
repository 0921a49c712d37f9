package holloway.housefile;

import holloway.catalog.PriceList;
import holloway.house.Fact;
import holloway.house.Found;
import holloway.house.House;
import holloway.house.House.InputFile;
import holloway.house.LayoutCorner;
import holloway.house.Porch;
import holloway.house.Room;
import holloway.house.RulePlace;
import holloway.limits.LocalRules;
import holloway.request.Effort;
import holloway.request.Request;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The doorway: reads a house file and its companions. Found beats the wishes file, which beats the
 * house file. Nothing is thrown for bad input; all problems of all files come back together.
 */
public final class HouseFile {
  private final Path path;
  private final Problems problems = new Problems();
  private final List<InputFile> inputs = new ArrayList<>();

  private HouseFile(Path path) {
    this.path = path;
  }

  public static Reading read(Path path) {
    HouseFile file = new HouseFile(path);
    Optional<Reading.Sound> sound = file.readAll();
    return sound.isPresent() && file.problems.isEmpty()
        ? sound.get()
        : new Reading.Faulty(file.problems.sorted());
  }

  private Optional<Reading.Sound> readAll() {
    Optional<InputText> text = InputText.read(path, problems);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    inputs.add(text.get().file());
    Marked root = text.get().root();
    Desk desk = new Desk(problems, Names.of(root), Era.of(root));
    new ShapeCheck(desk).check(root, new Shape.MapOf(WantedTables.HOUSE), "");
    Optional<Entry> house = Entry.of(root, WantedTables.HOUSE, desk);
    Optional<Entry> wishes = companion("wishes", WantedTables.WISHES_FILE, desk);
    Optional<Entry> found = companion("found", WantedTables.FOUND_FILE, desk);
    return house.flatMap(h -> build(h, wishes, found, desk));
  }

  private Optional<Entry> companion(String kind, Table table, Desk desk) {
    String name = path.getFileName().toString();
    int dot = name.lastIndexOf('.');
    Path beside =
        path.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + "." + kind + ".yaml");
    if (!Files.exists(beside)) {
      return Optional.empty();
    }
    Optional<InputText> text = InputText.read(beside, problems);
    text.ifPresent(t -> inputs.add(t.file()));
    text.ifPresent(t -> new ShapeCheck(desk).check(t.root(), new Shape.MapOf(table), ""));
    return text.flatMap(t -> Entry.of(t.root(), table, desk));
  }

  private Optional<Reading.Sound> build(
      Entry house, Optional<Entry> wishesFile, Optional<Entry> foundFile, Desk desk) {
    Defaults defaults = new Defaults(desk.era(), new Usual(house));
    Effort effort = effort(house);
    List<Found> found = foundFile.map(f -> new FoundReader(f).read()).orElse(List.of());
    WishesReader wishes = new WishesReader(house, wishesFile);
    List<Porch> porches = new PorchReader(defaults).read(house);
    RequestReader wanted = new RequestReader(house, defaults, porches, wishes.through());
    WishedSpots spots = new WishedSpots(wishesFile, desk);
    Optional<Request> request = wanted.read(wishes.read(), effort, prices(house)).map(spots::over);
    House built = house(house, defaults, found, rules(house), porches);
    wanted.checkThrough(problems, wishes.throughWhere());
    request.ifPresent(r -> ReachCheck.check(built, r, problems));
    request.ifPresent(r -> SizeCheck.check(house, built, r));
    request.ifPresent(r -> VaultCheck.check(built, r, problems));
    KneeCheck.check(built, problems);
    FlatCheck.check(built, problems);
    PierCheck.check(built, problems);
    PartitionCheck.check(built, problems);
    SkylightCheck.check(built, problems);
    DormerCheck.check(built, problems);
    BattensReader.check(built, problems);
    return request.map(r -> new Reading.Sound(built, r));
  }

  private PriceList prices(Entry house) {
    return house
        .parsed("prices", s -> Forms.name(s.text()))
        .flatMap(f -> PriceFile.read(path.resolveSibling(f), problems, inputs))
        .orElse(PriceList.NONE);
  }

  private LocalRules rules(Entry house) {
    return house
        .parsed("rules", s -> Forms.name(s.text()))
        .flatMap(f -> RulesFile.read(path.resolveSibling(f), problems, inputs))
        .orElse(LocalRules.NONE);
  }

  private Effort effort(Entry house) {
    Effort defaults = EffortFile.defaults();
    return house
        .parsed("effort", s -> Forms.name(s.text()))
        .map(f -> EffortFile.over(defaults, path.resolveSibling(f), problems, inputs))
        .orElse(defaults);
  }

  private House house(
      Entry e, Defaults defaults, List<Found> found, LocalRules rules, List<Porch> porches) {
    WallReader walls = new WallReader(defaults);
    HollowReader hollows = new HollowReader(e);
    CheapWayReader cheap = new CheapWayReader(e);
    SeenReader seen = new SeenReader(defaults);
    Era era = e.desk().era();
    OwnFrame own = ownFrame(e, new RoomReader(defaults).read(e));
    return new House(
        e.text("house").orElse("?"),
        e.choice("place", RulePlace.class).orElse(RulePlace.NONE),
        era.stated() ? Fact.stated(era.built(), e.where("built")) : Fact.assumed(era.built()),
        e.text("framing").map("balloon"::equals).orElseGet(defaults::balloon),
        walls.usual(e, "outer-walls", true),
        walls.usual(e, "inner-walls", false),
        LevelReader.read(e, defaults),
        own.rooms(),
        walls.walls(e),
        walls.openings(e),
        new RoofReader(defaults).read(e),
        hollows.chases(),
        seen.obstacles(e),
        hollows.conduits(),
        cheap.soffits(),
        cheap.skirtings(),
        seen.things(e),
        seen.tapes(e),
        found,
        inputs,
        StairReader.read(e),
        defaults.assumed(),
        BeamReader.read(e),
        porches,
        e.choice("layout-from", LayoutCorner.class).orElse(LayoutCorner.SOUTH_WEST),
        rules,
        own.turned());
  }

  private static OwnFrame ownFrame(Entry e, List<Room> rooms) {
    return OwnFrame.of(rooms, e.parsed("turned", s -> Forms.turn(s.text())), e);
  }
}
