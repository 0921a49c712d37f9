package holloway.housefile;

import holloway.house.Battens;
import holloway.house.Fact;
import holloway.house.House;
import holloway.house.Lining;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.WallRef;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.limits.UsualBuild;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/** Reads what is said of a service layer before a framed wall. */
final class BattensReader {
  private BattensReader() {}

  /** Towards the side of the face that is named; on both where none is. */
  static List<Battens> read(Entry e, Optional<Side> side) {
    Optional<Entry> said = e.map("battens", HouseTables.BATTENS_TABLE);
    Optional<WallSpec.Kind> kind = CavityReader.kind(e);
    if (said.isPresent()) {
      kind.filter(k -> k != WallSpec.Kind.FRAMED).ifPresent(k -> notFramed(e, k));
    }
    return said.flatMap(b -> battens(b, side)).stream().toList();
  }

  private static void notFramed(Entry e, WallSpec.Kind kind) {
    boolean none = kind == WallSpec.Kind.GLAZED || kind == WallSpec.Kind.OPEN;
    e.problem(
        "battens",
        none ? "no battens" : "kind: furred, void: 45 mm",
        "",
        kind == WallSpec.Kind.GLAZED
            ? "a wall of glass has no battens; leave one of the two out"
            : kind == WallSpec.Kind.OPEN
                ? "an open side has no 'battens'"
                : "battens before masonry are said by kind: furred and how deep its void is");
  }

  private static Optional<Battens> battens(Entry b, Optional<Side> side) {
    Optional<Fact<Length>> depth = b.length("depth");
    Optional<String> run = b.text("run");
    boolean level = run.filter("level"::equals).isPresent();
    if (b.has("first") && run.isPresent() && !level) {
      b.problem(
          "first",
          "run: level, first: 8 in",
          "",
          "the height of the first batten is said of level ones; upright ones stand on the studs");
    }
    Length board = new Length(UsualBuild.fixed("board-thickness"));
    WallTraits.Layer over =
        b.scalar("over")
            .flatMap(s -> Entry.quietly(() -> Forms.layer(s.text(), s.where())))
            .orElse(new WallTraits.Layer(Lining.BOARD, Fact.assumed(board)));
    if (depth.isEmpty() || run.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Battens(side, depth.get(), b.length("every"), level, b.length("first"), over));
  }

  /** Battens carry a lining: none stand before the bare walls of a room. */
  static void check(House house, Problems problems) {
    for (WallSpec w : house.walls()) {
      for (Battens b : w.traits().battens()) {
        for (Room r : house.rooms()) {
          if (r.walls() == Lining.OPEN && w.ref().filter(x -> names(x, r.name())).isPresent()) {
            problems.add(
                b.depth().where(),
                b.depth().value().toString(),
                "finish: board",
                "",
                "the walls of %s are open, and battens carry a lining: keep one of the two"
                    .formatted(r.name()));
          }
        }
      }
    }
  }

  private static boolean names(WallRef ref, String room) {
    return ref.face().filter(f -> f.room().equals(room)).isPresent()
        || ref.between().filter(b -> b.one().equals(room) || b.other().equals(room)).isPresent();
  }
}
