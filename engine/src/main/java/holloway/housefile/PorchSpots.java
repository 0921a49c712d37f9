package holloway.housefile;

import holloway.house.Along;
import holloway.house.Fact;
import holloway.house.Porch;
import holloway.house.WallSpot;
import holloway.request.Spot;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Reads outlets that hang under the roof of a porch. */
final class PorchSpots {
  private final List<Porch> porches;

  PorchSpots(List<Porch> porches) {
    this.porches = porches;
  }

  /** Taped along the wall from an end of the porch, and out from the wall. */
  Optional<Spot> under(Entry e, String what) {
    String name = e.text("under").orElse("");
    Optional<Porch> porch = porches.stream().filter(p -> p.name().equals(name)).findFirst();
    Optional<Along> from = e.along("from");
    Optional<Fact<Length>> out = e.length("out");
    if (!e.has("out")) {
      e.problem(
          "out", "out: 3 ft", "", what + " lacks 'out:', how far from the house's wall it hangs");
    }
    if (porch.isEmpty()) {
      unknown(e, name);
      return Optional.empty();
    }
    if (from.isEmpty() || out.isEmpty() || !Spots.fits(e, "from", porch.get().face(), from.get())) {
      return Optional.empty();
    }
    beyond(e, what, porch.get(), from.get(), out.get());
    return Optional.of(
        new Spot.Outside(
            onWall(porch.get(), from.get()),
            Optional.of(new Spot.Under(name, from.get(), out.get()))));
  }

  private void unknown(Entry e, String name) {
    TreeSet<String> names =
        porches.stream().map(Porch::name).collect(Collectors.toCollection(TreeSet::new));
    e.problem(
        "under",
        names.isEmpty() ? "a porch of the list 'porches'" : "one of: " + Names.list(names),
        Nearest.of(name, names),
        "there is no porch '" + name + "'");
  }

  private static void beyond(Entry e, String what, Porch p, Along from, Fact<Length> out) {
    if (from.distance().value().compareTo(p.length().value()) >= 0) {
      e.problem(
          "from",
          "less than its length, counted from an end of the porch",
          "",
          what + " lies past the end of porch '" + p.name() + "'");
    }
    if (out.value().compareTo(p.out().value()) >= 0) {
      e.problem(
          "out",
          "less than the porch's own 'out'",
          "",
          what + " lies past the outer edge of porch '" + p.name() + "'");
    }
  }

  /** The place on the wall right behind, taped as the porch itself is. */
  private static WallSpot onWall(Porch p, Along from) {
    long start = p.from().distance().value().nm();
    long d = from.distance().value().nm();
    long along = from.from() == p.from().from() ? start + d : start + p.length().value().nm() - d;
    Fact<Length> taped = Fact.measured(new Length(along), from.distance().where());
    return new WallSpot(p.face(), new Along(p.from().from(), taped), p.height());
  }
}
