package holloway.housefile;

import holloway.house.Along;
import holloway.house.Dormer;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads and writes the dormers of a roof. */
final class DormerReader {
  private DormerReader() {}

  static List<Dormer> read(Entry roof) {
    List<Dormer> out = new ArrayList<>();
    for (Entry e : roof.maps("dormers", OuterTables.DORMER)) {
      Optional<Side> side = e.choice("side", Side.class);
      Optional<Along> from = e.along("from");
      Optional<Dormer.Cover> cover = e.choice("shape", Dormer.Cover.class);
      Optional<Fact<Length>> width = e.length("width");
      Optional<String> room = e.text("in");
      Optional<Fact<Length>> back = front(e, room.isPresent());
      Optional<Fact<Length>> height = e.length("height");
      if (side.isPresent()
          && from.isPresent()
          && cover.isPresent()
          && width.isPresent()
          && back.isPresent()
          && height.isPresent()) {
        out.add(
            new Dormer(
                side.get(),
                from.get(),
                width.get(),
                back.get(),
                height.get(),
                cover.get(),
                room,
                e.where()));
      }
    }
    return out;
  }

  /** Where its front stands: over an attic from the eave in, from a room out. */
  private static Optional<Fact<Length>> front(Entry e, boolean fromRoom) {
    String key = fromRoom ? "out" : "back";
    String other = fromRoom ? "back" : "out";
    if (e.has(other)) {
      e.problem(
          other,
          key + ": 2 ft",
          "",
          fromRoom
              ? "a dormer of a room is taped from inside it: 'out' from the knee wall's face to its"
                  + " front, not 'back'"
              : "'out' is taped from the knee wall of the room that goes out into the dormer: say"
                  + " 'in' which room; over an attic it is 'back'");
    } else if (!e.has(key)) {
      e.problem(
          key,
          key + ": 2 ft",
          "",
          fromRoom
              ? "the dormer lacks 'out:' (level, from the knee wall's face out to its front)"
              : "the dormer lacks 'back:' (level, from the outside of the eaves wall's studs to its"
                  + " front)");
    }
    return e.length(key);
  }

  static Map<String, Object> written(Dormer d) {
    Words words = new Words().word("side", d.side());
    d.room().ifPresent(r -> words.put("in", r));
    return words
        .word("shape", d.cover())
        .put("from", Words.of(d.from()))
        .length("width", d.width())
        .length(d.room().isPresent() ? "out" : "back", d.back())
        .length("height", d.height())
        .map();
  }
}
