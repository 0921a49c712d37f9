package holloway.housefile;

import holloway.house.Fact;
import holloway.house.TubeWay;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** How a stated tube goes: as one stretch, or from pull box to pull box. */
final class TubeReader {
  /** Quarter turns of a tube of which nobody said any: what may be drawn through. */
  private static final int USUAL = 2;

  private TubeReader() {}

  /** All of it; empty when a fault was reported. */
  static Optional<Fact<Length>> length(Entry e) {
    List<Entry> parts = e.maps("parts", OuterTables.TUBE_PART);
    if (parts.isEmpty()) {
      if (!e.has("length") && !e.has("parts")) {
        e.problem("length", "length: 6 m", "", "its length is asked for, or a tube's 'parts'");
      }
      return e.length("length");
    }
    for (String key : List.of("length", "bends")) {
      if (e.has(key)) {
        e.problem(key, "", "", "the parts of a tube say '%s' each: leave it out".formatted(key));
        return Optional.empty();
      }
    }
    long sum = 0;
    for (Entry p : parts) {
      sum += p.length("length").map(l -> l.value().nm()).orElse(0L);
    }
    return Optional.of(Fact.stated(new Length(sum), e.where()));
  }

  static TubeWay way(Entry e, Length length) {
    List<String> holds = e.texts("holds").stream().map(Marked.Scalar::text).sorted().toList();
    List<TubeWay.Part> parts = new ArrayList<>();
    for (Entry p : e.maps("parts", OuterTables.TUBE_PART)) {
      Length own = p.length("length").map(Fact::value).orElse(Length.ZERO);
      parts.add(new TubeWay.Part(own, angles(p)));
    }
    return new TubeWay(
        parts.isEmpty() ? List.of(new TubeWay.Part(length, angles(e))) : parts, holds);
  }

  private static List<Integer> angles(Entry e) {
    List<Integer> out = new ArrayList<>();
    for (Marked.Scalar s : e.texts("bends")) {
      if (s.text().matches("\\d{1,3}")) {
        out.add(Integer.parseInt(s.text()));
      }
    }
    // A number below nought is reported by its shape.
    int quarters = Math.max(0, e.whole("bends").orElse(USUAL));
    return out.isEmpty() ? Collections.nCopies(quarters, 90) : out;
  }
}
