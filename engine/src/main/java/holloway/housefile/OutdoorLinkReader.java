package holloway.housefile;

import holloway.house.Conduit;
import holloway.house.Fact;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/** Reads one link from a building to another. */
final class OutdoorLinkReader {
  private OutdoorLinkReader() {}

  /** Empty when a fault was reported. */
  static Optional<Conduit> read(Entry e) {
    Optional<WallSpot> from = HollowReader.end(e, "from");
    Optional<WallSpot> to = HollowReader.end(e, "to");
    Optional<String> kind = e.text("kind");
    Optional<Fact<Length>> length = TubeReader.length(e);
    if (kind.isEmpty() || !fits(e, kind.get()) || from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (length.isEmpty() || e.text("outdoor-link").isEmpty()) {
      return Optional.empty();
    }
    boolean there = e.yesNo("there").orElse(false);
    Conduit link =
        new Conduit(
            e.text("outdoor-link").get(),
            from.get(),
            to.get(),
            e.length("inside-diameter").map(Fact::value).orElse(Length.ZERO),
            0,
            length.get(),
            kind(kind.get()),
            Optional.of(new Conduit.Outdoor(there, e.length("depth"))),
            e.where());
    boolean duct = kind.get().equals("duct");
    return Optional.of(duct ? link.with(TubeReader.way(e, length.get().value())) : link);
  }

  private static Conduit.Kind kind(String word) {
    return switch (word) {
      case "duct" -> Conduit.Kind.TUBE;
      case "overhead" -> Conduit.Kind.SPAN;
      default -> Conduit.Kind.BURIED;
    };
  }

  /** From experience; where people walk or drive the local code wants more. */
  private static final Length HEAD = Length.mm(2_400);

  private static boolean isHigh(Entry e, String key) {
    boolean low =
        HollowReader.end(e, key).map(s -> s.height().value().compareTo(HEAD) < 0).orElse(false);
    if (low) {
      e.problem(
          key,
          "height: 3 m",
          "",
          "an overhead link that ends under 2.4 m (8 ft) over the floor hangs where people walk");
    }
    return !low;
  }

  private static boolean fits(Entry e, String kind) {
    boolean ok = true;
    if (kind.equals("duct") && !e.has("inside-diameter")) {
      e.problem(
          "inside-diameter",
          "inside-diameter: 50 mm",
          "",
          "a duct holds what its inside diameter lets through: say it, or kind: buried if the"
              + " cable lies bare in the earth");
      ok = false;
    }
    for (String key : List.of("there", "inside-diameter", "bends", "parts", "holds")) {
      if (!kind.equals("duct") && e.has(key)) {
        e.problem(
            key,
            "",
            "",
            "'%s' is said of a duct; a link that is %s has none. A cable that lies there already"
                    .formatted(key, kind)
                + " is no way for another one");
        ok = false;
      }
    }
    if (e.has("holds") && !e.yesNo("there").orElse(false)) {
      e.problem("holds", "there: yes", "", "a duct that is still to be dug holds nothing");
      ok = false;
    }
    ok &= !kind.equals("overhead") || isHigh(e, "from") & isHigh(e, "to");
    if (kind.equals("overhead") && e.has("depth")) {
      e.problem("depth", "", "", "an overhead link lies in no earth: leave 'depth' out");
      ok = false;
    }
    return ok;
  }
}
