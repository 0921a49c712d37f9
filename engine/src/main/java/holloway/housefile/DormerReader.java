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
      Optional<Fact<Length>> back = e.length("back");
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
                e.where()));
      }
    }
    return out;
  }

  static Map<String, Object> written(Dormer d) {
    return new Words()
        .word("side", d.side())
        .word("shape", d.cover())
        .put("from", Words.of(d.from()))
        .length("width", d.width())
        .length("back", d.back())
        .length("height", d.height())
        .map();
  }
}
