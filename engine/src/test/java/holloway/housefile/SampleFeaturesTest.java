package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Beam;
import holloway.house.Chase;
import holloway.house.Conduit;
import holloway.house.FloorSpec;
import holloway.house.Found;
import holloway.house.Lining;
import holloway.house.Obstacle;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Soffit;
import holloway.house.Stair;
import holloway.house.Standing;
import holloway.house.Thing;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.survey.Placed;
import holloway.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a house file can say, some sample says: looked up in the house as read and placed. */
class SampleFeaturesTest {
  private static final List<String> NAMES =
      List.of("alder-lane", "plumb-corner", "quince-ranch", "tin-street", "wren-hollow");

  private static final Map<String, Predicate<Placed>> FEATURES = new TreeMap<>();
  private static final Map<String, Placed> SAMPLES = new TreeMap<>();

  @BeforeAll
  static void read() {
    for (String name : NAMES) {
      var s = (Reading.Sound) HouseFile.read(HouseSchemaTest.SAMPLES.resolve(name + ".yaml"));
      SAMPLES.put(name, Survey.of(s.house()).value());
    }
    rooms();
    walls();
    floors();
    roofs();
    waysThatAreThere();
  }

  private static void rooms() {
    FEATURES.put(
        "L-shaped room",
        any(p -> p.rooms(), r -> SampleShapes.corners(r) == 6 && SampleShapes.square(r)));
    FEATURES.put(
        "T-shaped room", any(p -> p.rooms(), r -> SampleShapes.square(r) && SampleShapes.isT(r)));
    FEATURES.put(
        "alcove",
        any(
            p -> p.rooms(),
            r -> SampleShapes.corners(r) == 8 && SampleShapes.square(r) && !SampleShapes.isT(r)));
    FEATURES.put("storey that overhangs", SampleShapes::overhangs);
    FEATURES.put("storey that sets back", SampleShapes::setsBack);
    FEATURES.put("room over part of a garage", SampleShapes::isOverPartOfAGarage);
    FEATURES.put("space that nothing accounts for", p -> !p.spaces().isEmpty());
    FEATURES.put("angled walls", any(p -> p.rooms(), r -> !SampleShapes.square(r)));
    FEATURES.put("closet in a room", SampleShapes::hasCloset);
    FEATURES.put("vaulted ceiling", room(Room::vaulted));
    FEATURES.put("strapped ceiling", room(r -> r.overhead().straps().isPresent()));
    FEATURES.put("open ceiling", room(r -> r.ceiling() == Lining.OPEN));
    FEATURES.put("lath and plaster", room(r -> r.ceiling() == Lining.LATH_AND_PLASTER));
    FEATURES.put("garage", room(Room::garage));
    FEATURES.put("somebody else's room", room(r -> r.standing() == Standing.SOMEBODY_ELSES));
    FEATURES.put("room not surveyed", room(r -> r.standing() == Standing.NOT_SURVEYED));
    FEATURES.put("building apart", room(r -> r.placing() instanceof Room.Placing.Apart));
    FEATURES.put("split level", p -> p.levels().stream().anyMatch(l -> l.part() > 0));
    FEATURES.put("stairs, closed below", stair(Stair.Under.CLOSED));
    FEATURES.put("stairs, cupboard below", stair(Stair.Under.CUPBOARD));
    FEATURES.put("tape that checks", p -> !p.house().tapes().isEmpty());
  }

  private static void walls() {
    for (WallSpec.Kind k : WallSpec.Kind.values()) {
      FEATURES.put("wall, " + word(k), any(p -> p.walls(), w -> w.kind() == k));
    }
    FEATURES.put("half-height wall", wall(w -> high(w) < 1_500));
    FEATURES.put("partition that stops short", wall(w -> high(w) > 1_500 && high(w) < 3_000));
    FEATURES.put("thick masonry", wall(w -> thick(w) > 300));
    FEATURES.put("service layer", wall(w -> !w.traits().battens().isEmpty()));
    FEATURES.put("header over an open side", wall(w -> w.traits().header().isPresent()));
    FEATURES.put("party wall", wall(w -> w.traits().isParty()));
    FEATURES.put("double wall", wall(w -> w.traits().isDouble()));
    FEATURES.put("lining of several layers", wall(w -> !w.traits().layers().isEmpty()));
    FEATURES.put("steel studs", wall(w -> kind(w.studs().map(f -> f.value()), Timber.Kind.STEEL)));
    FEATURES.put("cavity wall", wall(w -> w.traits().cavity().filter(c -> c.there()).isPresent()));
    FEATURES.put("stud found", wall(w -> w.studsFrom().isPresent()));
    FEATURES.put("balloon framing", p -> p.house().balloon());
    FEATURES.put("fire block", obstacle(Obstacle.Kind.FIRE_BLOCK));
  }

  private static void floors() {
    FEATURES.put("crawlspace", floor(f -> f.crawlspace().isPresent()));
    FEATURES.put(
        "crawlspace under 18 in",
        floor(f -> f.crawlspace().filter(c -> c.clearance().value().toMm() < 457).isPresent()));
    FEATURES.put("solid floor over a room", SampleShapes::hasSolidFloorOverARoom);
    FEATURES.put(
        "notch that was found",
        p -> p.house().found().stream().anyMatch(Found.Notch.class::isInstance));
    FEATURES.put("piers", obstacle(Obstacle.Kind.PIER));
    FEATURES.put("floorboards", floor(FloorSpec::boards));
    FEATURES.put("row of blocks", floor(f -> !f.blocksAt().isEmpty()));
    FEATURES.put("I-joists", floor(f -> made(f, Timber.Kind.I_JOIST)));
    FEATURES.put("open-web joists", floor(f -> made(f, Timber.Kind.OPEN_WEB)));
    FEATURES.put(
        "joists that change direction",
        p -> p.house().rooms().stream().anyMatch(r -> SampleShapes.turned(p.house(), r)));
    FEATURES.put("hanging beam", beam(b -> b.drop().value().nm() > 0));
    FEATURES.put("steel within the joists", beam(b -> b.drop().value().nm() == 0));
  }

  private static void roofs() {
    for (Roof.Shape s : Roof.Shape.values()) {
      FEATURES.put("roof, " + word(s), roof(r -> r.shape() == s));
    }
    FEATURES.put("joists of a flat roof", roof(r -> r.run().isPresent()));
    FEATURES.put("several roofs", p -> p.house().roofs().size() > 1);
    FEATURES.put("attics joined", roof(r -> r.joins().stream().anyMatch(j -> !j.shut())));
    FEATURES.put("attics shut", roof(r -> r.joins().stream().anyMatch(Roof.Join::shut)));
    FEATURES.put("valley", roof(r -> r.joins().stream().anyMatch(j -> j.valley().isPresent())));
    FEATURES.put("porch", p -> !p.house().porches().isEmpty());
    FEATURES.put("skylight", roof(r -> !r.skylights().isEmpty()));
    FEATURES.put("dormer", roof(r -> !r.dormers().isEmpty()));
    FEATURES.put("knee wall, bare", roof(r -> r.knees().stream().anyMatch(Roof.Knee::bare)));
    FEATURES.put("trusses", roof(r -> r.frame() == Roof.Frame.TRUSSES));
    FEATURES.put("rafters", roof(r -> r.frame() == Roof.Frame.RAFTERS));
  }

  private static void waysThatAreThere() {
    for (Conduit.Kind k :
        List.of(Conduit.Kind.TUBE, Conduit.Kind.LOOSE_CABLE, Conduit.Kind.FAST_CABLE)) {
      FEATURES.put("there already: " + word(k), any(p -> p.house().conduits(), c -> c.kind() == k));
    }
    FEATURES.put(
        "buried link",
        any(
            p -> p.house().conduits(),
            c -> c.outdoor().isPresent() && c.kind() != Conduit.Kind.SPAN));
    FEATURES.put(
        "overhead link", any(p -> p.house().conduits(), c -> c.kind() == Conduit.Kind.SPAN));
    FEATURES.put("skirting", p -> !p.house().skirtings().isEmpty());
    for (Soffit.Cover c : Soffit.Cover.values()) {
      FEATURES.put(
          "lowered ceiling, " + word(c), any(p -> p.house().soffits(), s -> s.cover() == c));
    }
    FEATURES.put("partition that cuts the void over a ceiling", SampleShapes::cutsAVoid);
    for (Thing.Kind k :
        List.of(Thing.Kind.DATA_BOX, Thing.Kind.REGISTER, Thing.Kind.RETURN_GRILLE)) {
      FEATURES.put(word(k), any(p -> p.house().things(), t -> t.kind() == k));
    }
    FEATURES.put("flue", chase(c -> c.contents().contains(Chase.Contents.FLUE)));
    FEATURES.put("shaft", chase(c -> !c.contents().contains(Chase.Contents.FLUE)));
    FEATURES.put("tank", obstacle(Obstacle.Kind.TANK));
  }

  @Test
  void eachFeatureIsInASample() {
    TreeSet<String> missing = new TreeSet<>();
    FEATURES.forEach(
        (name, has) -> {
          if (SAMPLES.values().stream().noneMatch(has)) {
            missing.add(name);
          }
        });
    assertEquals(new TreeSet<>(), missing);
  }

  /** Whoever adds a feature or changes a sample writes the table anew: the message has it. */
  @Test
  void theTableOfTheGuideIsTrue() throws IOException {
    StringBuilder table = new StringBuilder();
    FEATURES.forEach(
        (name, has) -> {
          String in =
              NAMES.stream()
                  .filter(n -> has.test(SAMPLES.get(n)))
                  .map(n -> SAMPLES.get(n).house().name())
                  .collect(Collectors.joining(", "));
          table.append("| %s | %s |\n".formatted(name, in));
        });
    String page = Files.readString(Path.of("../DEVELOPERS.md"));
    String head = "| feature | samples |\n|---|---|\n";
    int from = page.indexOf(head);
    assertTrue(from >= 0, "no table of samples:\n" + head + table);
    assertEquals(head + table, page.substring(from, page.indexOf("\n\n", from) + 1));
  }

  /** So that one sample does not carry all: each has some that no other has. */
  @Test
  void eachSampleHasSomeOfItsOwn() {
    Map<String, List<String>> own = new TreeMap<>();
    FEATURES.forEach(
        (name, has) -> {
          List<String> in = NAMES.stream().filter(n -> has.test(SAMPLES.get(n))).toList();
          if (in.size() == 1) {
            own.computeIfAbsent(in.get(0), k -> new ArrayList<>()).add(name);
          }
        });
    assertEquals(new TreeSet<>(NAMES), own.keySet(), own::toString);
  }

  /** As its first lines say. */
  @Test
  void wrenHollowIsLarge() {
    var s = (Reading.Sound) HouseFile.read(HouseSchemaTest.SAMPLES.resolve("wren-hollow.yaml"));
    Placed placed = SAMPLES.get("wren-hollow");
    double m2 =
        placed.rooms().stream().mapToDouble(r -> Math.abs(r.outline().signedAreaMm2()) / 1e6).sum();
    assertTrue(m2 >= 550, m2 + " m2");
    assertEquals(613, m2, 0.5);
    assertEquals(26, placed.rooms().size());
    assertEquals(5, placed.levels().size());
    assertEquals(5, s.house().roofs().size());
    assertEquals(46, s.request().runs().size());
    assertEquals(2, placed.levels().stream().map(l -> l.part()).distinct().count());
  }

  private static String word(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static <T> Predicate<Placed> any(
      java.util.function.Function<Placed, List<T>> of, Predicate<T> is) {
    return p -> of.apply(p).stream().anyMatch(is);
  }

  private static Predicate<Placed> room(Predicate<Room> is) {
    return any(p -> p.house().rooms(), is);
  }

  private static Predicate<Placed> wall(Predicate<WallSpec> is) {
    return any(p -> p.house().walls(), is);
  }

  /** Millimetres; nothing is said of most. */
  private static double high(WallSpec w) {
    return w.traits().height().map(h -> h.value().toMm()).orElse(Double.NaN);
  }

  private static double thick(WallSpec w) {
    return w.kind().filter(k -> k == WallSpec.Kind.MASONRY).isPresent()
        ? w.thickness().map(t -> t.value().toMm()).orElse(0.0)
        : 0;
  }

  private static Predicate<Placed> roof(Predicate<Roof> is) {
    return any(p -> p.house().roofs(), is);
  }

  private static Predicate<Placed> beam(Predicate<Beam> is) {
    return any(p -> p.house().beams(), is);
  }

  private static Predicate<Placed> chase(Predicate<Chase> is) {
    return any(p -> p.house().chases(), is);
  }

  private static Predicate<Placed> stair(Stair.Under under) {
    return any(p -> p.house().stairs(), s -> s.under() == under);
  }

  private static Predicate<Placed> obstacle(Obstacle.Kind kind) {
    return any(p -> p.house().obstacles(), o -> o.kind() == kind);
  }

  private static Predicate<Placed> floor(Predicate<FloorSpec> is) {
    return p ->
        Stream.concat(
                p.house().levels().stream().map(l -> l.floor()),
                p.house().rooms().stream().flatMap(r -> r.floor().stream()))
            .anyMatch(is);
  }

  private static boolean made(FloorSpec f, Timber.Kind kind) {
    return kind(f.joists().map(j -> j.value()), kind);
  }

  private static boolean kind(java.util.Optional<Timber> t, Timber.Kind kind) {
    return t.filter(s -> s.kind() == kind).isPresent();
  }
}
