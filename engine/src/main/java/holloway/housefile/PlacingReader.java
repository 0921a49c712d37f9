package holloway.housefile;

import holloway.house.Fact;
import holloway.house.Origin;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads how one room is placed. */
final class PlacingReader {
  private static final Map<String, Side> BESIDE =
      new TreeMap<>(
          Map.of(
              "east-of", Side.EAST,
              "west-of", Side.WEST,
              "north-of", Side.NORTH,
              "south-of", Side.SOUTH));
  private static final List<String> WAYS =
      List.of("east-of", "west-of", "north-of", "south-of", "above", "below", "at", "apart");

  /** Two storeys drawn in line without a taped tie: from experience, editable by stating a tie. */
  private static final Length ASSUMED_TIE = Length.mm(30);

  private final String name;
  private final Entry e;

  PlacingReader(String name, Entry e) {
    this.name = name;
    this.e = e;
  }

  /** Empty when a fault was reported. */
  Optional<Placing> read() {
    List<String> given =
        WAYS.stream().filter(e::has).filter(w -> !w.equals("apart") || isApart()).toList();
    if (given.isEmpty()) {
      return refuseStray(List.of("align", "shift", "shift-east", "shift-north", "tied"))
          ? Optional.of(new Placing.Free())
          : Optional.empty();
    }
    if (given.size() > 1) {
      e.problem(
          given.get(1),
          "one of: " + String.join(", ", WAYS),
          "",
          "room '%s' is placed twice, by '%s' and by '%s'; keep one and state the other under"
                  .formatted(name, given.get(0), given.get(1))
              + " 'measures:'");
      return Optional.empty();
    }
    String way = given.get(0);
    if (e.text(way).filter(name::equals).isPresent()) {
      e.problem(way, "another room", "", "room '" + name + "' cannot be placed by itself");
      return Optional.empty();
    }
    if (way.equals("apart")) {
      return refuseStray(List.of("align", "shift", "shift-east", "shift-north", "tied"))
          ? Optional.of(new Placing.Apart(e.where("apart")))
          : Optional.empty();
    }
    return way.equals("at") ? at() : BESIDE.containsKey(way) ? beside(way) : stacked(way);
  }

  private boolean isApart() {
    return e.yesNo("apart").orElse(false);
  }

  private Optional<Placing> at() {
    boolean ok = refuseStray(List.of("align", "shift", "shift-east", "shift-north", "tied"));
    return RoomReader.corner(e.raw("at").orElseThrow())
        .filter(c -> ok)
        .map(c -> new Placing.At(c.x(), c.y(), e.where("at")));
  }

  private Optional<Placing> beside(String way) {
    Side side = BESIDE.get(way);
    boolean ok = refuseStray(List.of("shift-east", "shift-north", "tied"));
    Optional<List<Side>> align = e.parsed("align", s -> Forms.align(s.text()));
    boolean fits =
        align.isPresent()
            && align.get().size() == 1
            && align.get().get(0).runsEastWest() != side.runsEastWest();
    if (!fits && (align.isPresent() || !e.has("align"))) {
      String two = side.runsEastWest() ? "east or west" : "north or south";
      e.problem(
          "align",
          "align: " + two,
          "",
          "room '%s' lies %s '%s': say which of their faces are in line, %s, and any 'shift'"
              .formatted(name, way.replace('-', ' '), e.text(way).orElse("?"), two));
    }
    if (!ok || !fits || e.text(way).isEmpty()) {
      return Optional.empty();
    }
    Fact<Length> shift = e.length("shift").orElse(Fact.measured(Length.ZERO, e.where("align")));
    return Optional.of(
        new Placing.Beside(e.text(way).get(), side, align.get().get(0), shift, e.where(way)));
  }

  private Optional<Placing> stacked(String way) {
    boolean ok = refuseStray(List.of("shift"));
    Optional<List<Side>> align = e.parsed("align", s -> Forms.align(s.text()));
    if (align.isPresent() ? align.get().size() != 2 : !e.has("align")) {
      e.problem(
          "align",
          "align: south-east",
          "",
          "room '%s' lies %s '%s': say which corner is in line, such as south-east"
              .formatted(name, way, e.text(way).orElse("?")));
      return Optional.empty();
    }
    if (!ok || align.isEmpty() || e.text(way).isEmpty()) {
      return Optional.empty();
    }
    boolean measured = e.text("tied").filter("measured"::equals).isPresent();
    return Optional.of(
        new Placing.Stacked(
            e.text(way).get(),
            way.equals("above"),
            align.get().get(0),
            align.get().get(1),
            tie("shift-east", measured),
            tie("shift-north", measured),
            e.where(way)));
  }

  private Fact<Length> tie(String key, boolean measured) {
    Fact<Length> said = e.length(key).orElse(Fact.measured(Length.ZERO, e.where("align")));
    if (measured) {
      return said;
    }
    boolean ownSpread = !said.spread().equals(Fact.TAPE);
    return new Fact<>(
        said.value(), ownSpread ? said.spread() : ASSUMED_TIE, Origin.ASSUMED, said.where());
  }

  /** Reports keys that mean nothing with this placing. */
  private boolean refuseStray(List<String> keys) {
    List<String> stray = keys.stream().filter(e::has).toList();
    for (String key : stray) {
      String means =
          switch (key) {
            case "shift" -> "'shift' goes with east-of, west-of, north-of or south-of";
            case "align" -> "'align' goes with a neighbour: east-of, west-of, ..., above or below";
            default -> "'" + key + "' goes with above or below";
          };
      e.problem(key, "", "", means);
    }
    return stray.isEmpty();
  }
}
