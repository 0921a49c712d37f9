package holloway.housefile;

import holloway.catalog.Cable;
import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Porch;
import holloway.house.WallSpot;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one outlet and its cables. */
final class OutletReader {
  /** A cable of an outlet; the run's name if the person gave one. */
  record Wanted(String kind, Optional<String> name, Marked at) {}

  private final Defaults defaults;
  private final PorchSpots porches;

  OutletReader(Defaults defaults, List<Porch> porches) {
    this.defaults = defaults;
    this.porches = new PorchSpots(porches);
  }

  Optional<Outlet> read(Entry e) {
    String name = e.text("name").orElse("?");
    if (name.equals("cabinet")) {
      e.problem("name", "another name", "", "'cabinet' is the cabinet's own name");
    }
    List<Spot> spots = new ArrayList<>();
    String what = e.text("name").map(n -> "outlet '" + n + "'").orElse("this outlet");
    spot(e, what).ifPresent(spots::add);
    for (Entry other : e.maps("or", WantedTables.ALTERNATIVE)) {
      spot(other, "an alternative of " + what).ifPresent(spots::add);
    }
    List<Wanted> cables = cables(e);
    int spare = e.whole("spare").orElse(0);
    boolean feed = e.yesNo("feed").orElse(false);
    checkCables(e, cables, feed);
    if (spots.isEmpty() || e.text("name").isEmpty()) {
      return Optional.empty();
    }
    List<String> kinds = cables.stream().map(Wanted::kind).toList();
    String power = e.text("power").orElse("none");
    return Optional.of(
        new Outlet(name, spots, kinds, spare, feed, power, e.length("box-depth"), e.where()));
  }

  static List<Wanted> cables(Entry e) {
    List<Wanted> out = new ArrayList<>();
    for (Marked item : e.items("cables")) {
      Optional<Entry> named = Entry.of(item, WantedTables.NAMED_CABLE, e.desk());
      Optional<String> kind =
          item instanceof Marked.Scalar s
              ? Optional.of(s.text())
              : named.flatMap(n -> n.text("kind"));
      kind.filter(k -> Cable.find(k).isPresent())
          .ifPresent(k -> out.add(new Wanted(k, named.flatMap(n -> n.text("name")), item)));
    }
    if (!e.has("cables") && e.yesNo("feed").orElse(false)) {
      // the provider's box is for nothing else: one outdoor copper cable unless said
      Marked at = e.raw("feed").orElseThrow();
      out.add(new Wanted("outdoor-cat6", Optional.empty(), at));
    }
    return out;
  }

  private static void checkCables(Entry e, List<Wanted> cables, boolean feed) {
    for (Wanted w : cables) {
      boolean outdoor = Cable.get(w.kind()).outdoor();
      if (feed && !outdoor) {
        e.desk()
            .problems()
            .add(
                w.at().where(),
                w.kind(),
                "outdoor-cat6 or outdoor-fibre",
                "",
                "the provider's box stands outside: its cables are outdoor cables");
      }
    }
  }

  private Optional<Spot> spot(Entry e, String what) {
    List<String> ways =
        List.of("wall", "ceiling", "outside", "under").stream().filter(e::has).toList();
    if (ways.size() != 1) {
      e.problem(
          ways.isEmpty() ? "wall" : ways.get(1),
          "in: office, wall: south, from: west 3 ft, height: 16 in; or in + ceiling; or outside; or under",
          "",
          ways.isEmpty()
              ? what + " is nowhere: give wall, ceiling, outside or under"
              : what
                  + " is in two places, "
                  + String.join(" and ", ways)
                  + "; keep one and put the other under 'or:'");
      return Optional.empty();
    }
    boolean outside = ways.get(0).equals("outside") || ways.get(0).equals("under");
    if (!ways.get(0).equals("under") && e.has("out")) {
      e.problem(
          "out", "", "", "'out' is taped for what hangs under a porch: " + what + " does not");
    }
    if (!outside && !e.has("in")) {
      e.problem("in", "in: office", "", what + " does not say which room it is in");
    }
    return switch (ways.get(0)) {
      case "ceiling" -> ceiling(e, what);
      case "outside" -> outside(e, what);
      case "under" -> under(e, what);
      default -> wall(e, what);
    };
  }

  private Optional<Spot> ceiling(Entry e, String what) {
    refuse(e, what, "on a ceiling", List.of("from", "to", "height"));
    return e.text("in")
        .flatMap(room -> Spots.onCeiling(e, "ceiling", room))
        .map(Spot.OnCeiling::new);
  }

  private Optional<Spot> outside(Entry e, String what) {
    refuse(e, what, "outside", List.of("in", "to"));
    wantFrom(e, what);
    Optional<FaceRef> face = e.face("outside");
    Optional<Along> from = e.along("from");
    if (face.isEmpty() || from.isEmpty()) {
      return Optional.empty();
    }
    Spots.fits(e, "from", face.get(), from.get());
    Fact<Length> height = e.length("height").orElseGet(() -> defaults.heightUnlessSaid(e, what));
    return Optional.of(new Spot.Outside(new WallSpot(face.get(), from.get(), height)));
  }

  private Optional<Spot> under(Entry e, String what) {
    refuse(e, what, "under a porch", List.of("in", "to", "height"));
    wantFrom(e, what);
    return porches.under(e, what);
  }

  private Optional<Spot> wall(Entry e, String what) {
    wantFrom(e, what);
    Optional<WallSpot> at = Spots.onWall(e, defaults.heightUnlessSaid(e, what));
    Optional<Length> to = e.length("to").map(Fact::value);
    if (at.isPresent() && to.isPresent()) {
      if (to.get().compareTo(at.get().along().distance().value()) <= 0) {
        e.problem(
            "to",
            "more than 'from'",
            "",
            "'to' is the far end of the range; it must lie beyond"
                + " 'from', counted from the same end");
      }
    }
    return at.map(a -> new Spot.OnWall(a, to));
  }

  private static void wantFrom(Entry e, String what) {
    if (!e.has("from")) {
      e.problem(
          "from", Form.ALONG.expected(), "", what + " lacks 'from:', its place along the wall");
    }
  }

  private static void refuse(Entry e, String what, String where, List<String> keys) {
    keys.stream()
        .filter(e::has)
        .forEach(k -> e.problem(k, "", "", "'" + k + "' means nothing for " + what + " " + where));
  }
}
