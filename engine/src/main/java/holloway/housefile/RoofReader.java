package holloway.housefile;

import holloway.house.CeilingSpot;
import holloway.house.Direction;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Roof;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the roofs, sorted by name. */
final class RoofReader {
  private final Defaults defaults;
  private final Map<String, Where> names = new TreeMap<>();

  RoofReader(Defaults defaults) {
    this.defaults = defaults;
  }

  List<Roof> read(Entry house) {
    List<Roof> roofs = new ArrayList<>();
    for (Entry e : house.maps("roof", OuterTables.ROOF)) {
      roof(e).ifPresent(roofs::add);
    }
    joined(house, roofs);
    roofs.sort(Comparator.comparing(Roof::name));
    return roofs;
  }

  private Optional<Roof> roof(Entry e) {
    Optional<Roof.Shape> shape = e.choice("shape", Roof.Shape.class);
    Optional<Roof.Frame> frame = e.choice("frame", Roof.Frame.class);
    List<String> rooms = e.texts("over").stream().map(Marked.Scalar::text).toList();
    Optional<String> level = e.text("over");
    if (shape.isEmpty() || frame.isEmpty() || (rooms.isEmpty() && level.isEmpty())) {
      if (e.has("over")
          && e.raw("over").get() instanceof Marked.Sequence s
          && s.items().isEmpty()) {
        e.problem("over", "a level, or rooms", "", "this roof lies over nothing");
      }
      return Optional.empty();
    }
    String over = level.orElseGet(() -> String.join(", ", rooms));
    String name = e.text("name").orElse("roof over " + over);
    Unique.claim(e, e.has("name") ? "name" : "over", name, names, "roof");
    checkShape(e, shape.get());
    return Optional.of(build(e, name, level, rooms, shape.get(), frame.get()));
  }

  private Roof build(
      Entry e,
      String name,
      Optional<String> level,
      List<String> rooms,
      Roof.Shape shape,
      Roof.Frame frame) {
    boolean trusses = frame == Roof.Frame.TRUSSES;
    Optional<Side> low = e.choice("low-side", Side.class);
    Forms.Pitch pitch =
        e.parsed("pitch", s -> Forms.pitch(s.text())).orElse(new Forms.Pitch(0, 12));
    Forms.Insulation insulation = insulation(e, name);
    return new Roof(
        name,
        level,
        rooms,
        shape,
        e.choice("ridge", Direction.class).orElse(alongLowSide(low)),
        low,
        pitch.rise(),
        pitch.run(),
        e.length("eaves").orElseGet(() -> defaults.eaves(name)),
        frame,
        e.timber("chord").orElseGet(() -> defaults.chord(trusses, name)),
        e.length("every").orElseGet(() -> defaults.chordSpacing(trusses, name)),
        e.length("heel"),
        insulation.depth(),
        insulation.fill().orElse(Fill.UNKNOWN),
        e.yesNo("boarded").orElse(false),
        hatches(e),
        joins(e),
        knees(e),
        e.choice("run", Direction.class),
        skylights(e),
        DormerReader.read(e),
        e.length("rise"),
        e.where());
  }

  private Forms.Insulation insulation(Entry e, String name) {
    return e.parsed("insulation", s -> Forms.insulation(s.text(), s.where()))
        .orElseGet(() -> new Forms.Insulation(defaults.atticInsulation(name), Optional.empty()));
  }

  private static Direction alongLowSide(Optional<Side> low) {
    return low.isPresent() && !low.get().runsEastWest()
        ? Direction.NORTH_SOUTH
        : Direction.EAST_WEST;
  }

  private static void checkShape(Entry e, Roof.Shape shape) {
    boolean arched = shape == Roof.Shape.ARCHED;
    boolean ridged = shape == Roof.Shape.GABLE || shape == Roof.Shape.HIP || arched;
    String word = Shape.word(shape);
    if (ridged && !e.has("ridge")) {
      e.problem(
          "ridge",
          "ridge: east-west, or ridge: north-south",
          "",
          "a " + word + " roof needs a ridge");
    }
    if (shape == Roof.Shape.SHED && !e.has("low-side")) {
      e.problem("low-side", "low-side: north", "", "a shed roof needs its low side");
    }
    if (shape != Roof.Shape.SHED && e.has("low-side")) {
      e.problem("low-side", "", "", "only a shed roof has a low side");
    }
    if (shape == Roof.Shape.SHED && e.has("ridge")) {
      e.problem("ridge", "low-side: north", "", "a shed roof has no ridge; keep 'low-side'");
    }
    arch(e, arched);
    if (shape != Roof.Shape.FLAT && !arched && !e.has("pitch")) {
      e.problem("pitch", "pitch: 6/12, or pitch: 35 deg", "", "a " + word + " roof needs a pitch");
    }
  }

  /** A curve has no pitch: one height in its middle says how it bends. */
  private static void arch(Entry e, boolean arched) {
    if (arched && !e.has("rise")) {
      e.problem(
          "rise",
          "rise: 5 ft",
          "",
          "an arched roof needs its rise: in the middle of the attic, from the tops of the ceiling"
              + " joists up to the underside of its ribs");
    }
    if (arched && e.has("pitch")) {
      e.problem(
          "pitch", "rise: 5 ft", "", "an arched roof has no one pitch: tape its 'rise' instead");
    }
    if (!arched && e.has("rise")) {
      e.problem("rise", "pitch: 6/12", "", "only an arched roof has a rise; others have a pitch");
    }
    e.maps("joins", OuterTables.JOIN).stream()
        .filter(j -> arched && j.has("valley"))
        .forEach(
            j -> j.problem("valley", "shut: yes", "", "a valley of an arched roof is not known"));
  }

  private static List<Roof.Join> joins(Entry e) {
    List<Roof.Join> out = new ArrayList<>();
    for (Entry j : e.maps("joins", OuterTables.JOIN)) {
      Optional<Roof.Valley> valley = j.choice("valley", Roof.Valley.class);
      Optional<Room.Size> size = j.size("size");
      boolean cut = valley.filter(v -> v == Roof.Valley.CUT_THROUGH).isPresent();
      boolean shut = j.yesNo("shut").orElse(false) || valley.isPresent() && !cut && size.isEmpty();
      Optional<String> to = j.text("to");
      boolean sized = !shut && !cut;
      if (valley.isPresent()) {
        valley(j, cut);
      } else if (!j.has("valley")) {
        opened(j, shut);
      }
      if (to.isPresent() && (!sized || size.isPresent())) {
        out.add(
            new Roof.Join(
                to.get(),
                sized ? j.along("from") : Optional.empty(),
                sized ? size.get().eastWest().value() : new Length(0),
                sized ? size.get().northSouth().value() : new Length(0),
                shut,
                valley,
                j.where("to")));
      }
    }
    return out;
  }

  /** How wide the way through a valley is follows from the slopes, unless only a hole was cut. */
  private static void valley(Entry j, boolean cut) {
    if (j.has("shut")) {
      j.problem("shut", "", "", "the valley says it: laid-over is shut, cut-through is open");
    }
    if (cut && (j.has("size") || j.has("from"))) {
      j.problem(
          j.has("size") ? "size" : "from",
          "valley: cut-through, or valley: laid-over with the 'size' of a hole cut in it",
          "",
          "a valley that was cut through has no size: it follows from the two roofs");
    } else if (!cut && j.has("from") && !j.has("size")) {
      j.problem("from", "size: 2 ft x 2 ft", "", "where is known, but not how large the hole is");
    }
  }

  /** An opening has a size; what is shut has none. */
  private static void opened(Entry j, boolean shut) {
    if (!shut && !j.has("size")) {
      j.problem(
          "size",
          "size: 24 in x 30 in, or shut: yes",
          "",
          "the join lacks 'size:': how large is the way through, along the wall x high");
    } else if (shut && (j.has("size") || j.has("from"))) {
      j.problem("shut", "", "", "either 'shut: yes', or an opening with its 'size'");
    }
  }

  private static List<Roof.Knee> knees(Entry e) {
    List<Roof.Knee> out = new ArrayList<>();
    for (Entry k : e.maps("knee-walls", OuterTables.KNEE)) {
      Optional<FaceRef> face = k.face("side");
      Optional<Fact<Length>> height = k.length("height");
      if (face.isPresent() && height.isPresent()) {
        boolean bare = k.text("behind").filter("bare"::equals).isPresent();
        out.add(new Roof.Knee(face.get(), height.get(), bare, k.where("side")));
      }
    }
    return out;
  }

  private static List<Roof.Skylight> skylights(Entry e) {
    List<Roof.Skylight> out = new ArrayList<>();
    for (Entry k : e.maps("skylights", OuterTables.SKYLIGHT)) {
      Optional<Room.Size> size = k.size("size");
      Optional<CeilingSpot> at = k.text("in").flatMap(room -> Spots.onCeiling(k, "at", room));
      if (size.isPresent() && at.isPresent()) {
        out.add(
            new Roof.Skylight(
                at.get(),
                size.get().eastWest().value(),
                size.get().northSouth().value(),
                k.where("in")));
      }
    }
    return out;
  }

  /** An opening leads to another roof that is there. */
  private static void joined(Entry house, List<Roof> roofs) {
    List<String> known = roofs.stream().map(Roof::name).toList();
    for (Roof r : roofs) {
      for (Roof.Join j : r.joins()) {
        if (j.to().equals(r.name()) || !known.contains(j.to())) {
          String text =
              j.to().equals(r.name())
                  ? "a roof does not join itself"
                  : "there is no roof '" + j.to() + "' to join";
          String want = known.size() > 1 ? "another of: " + Names.list(known) : "another roof";
          house.desk().problems().add(j.where(), j.to(), want, "", text);
        }
      }
    }
  }

  private static List<Roof.Hatch> hatches(Entry e) {
    List<Entry> all = new ArrayList<>(e.maps("hatches", HouseTables.HATCH));
    e.map("hatch", HouseTables.HATCH).ifPresent(all::add);
    List<Roof.Hatch> out = new ArrayList<>();
    for (Entry h : all) {
      Room.Size size = FloorReader.hatchSize(h);
      Fact<Length> eastWest = size.eastWest();
      h.text("in")
          .flatMap(room -> Spots.onCeiling(h, "at", room))
          .ifPresent(
              at -> out.add(new Roof.Hatch(at, eastWest.value(), size.northSouth().value())));
    }
    return out;
  }
}
