package holloway.housefile;

import holloway.house.Where;
import holloway.request.Profile;
import holloway.request.Wishes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Reads wishes from the wishes file and the house file. A key of the wishes file replaces the same
 * key of the house file, whole lists included, so that a ban can be lifted there too.
 */
final class WishesReader {
  private static final Wishes NONE = Wishes.NONE;

  /** The strongest first. */
  private final List<Entry> sources = new ArrayList<>();

  private final Entry house;
  private final Optional<Entry> file;

  WishesReader(Entry house, Optional<Entry> file) {
    this.house = house;
    this.file = file;
    file.ifPresent(sources::add);
    house.map("wishes", WantedTables.WISHES).ifPresent(sources::add);
  }

  Wishes read() {
    return new Wishes(
        first("hour-is-worth", e -> e.parsed("hour-is-worth", s -> Forms.money(s.text()))),
        first("visible-metre", e -> e.parsed("visible-metre", s -> Forms.minutes(s.text())))
            .orElse(NONE.visibleMetre()),
        first("attic", e -> e.choice("attic", Wishes.Season.class)).orElse(NONE.attic()),
        list("avoid"),
        list("bans"),
        first("profile", e -> e.choice("profile", Profile.class)).orElse(NONE.profile()),
        crew());
  }

  private int crew() {
    return file.filter(e -> e.has("crew"))
        .or(() -> Optional.of(house))
        .flatMap(e -> e.whole("crew"))
        .orElse(NONE.crew());
  }

  private <T> Optional<T> first(String key, Function<Entry, Optional<T>> read) {
    return sources.stream().filter(e -> e.has(key)).findFirst().flatMap(read);
  }

  private List<String> list(String key) {
    return first(key, e -> Optional.of(e.texts(key).stream().map(Marked.Scalar::text).toList()))
        .orElse(List.of());
  }

  Map<String, String> through() {
    Map<String, String> out = new TreeMap<>();
    throughMap()
        .ifPresent(
            m ->
                m.values()
                    .forEach(
                        (id, v) -> {
                          if (v instanceof Marked.Scalar s) {
                            out.put(id, s.text());
                          }
                        }));
    return out;
  }

  Map<String, Where> throughWhere() {
    return throughMap().map(m -> new TreeMap<>(m.keys())).orElseGet(TreeMap::new);
  }

  private Optional<Marked.Mapping> throughMap() {
    return first(
        "through",
        e ->
            e.raw("through")
                .filter(Marked.Mapping.class::isInstance)
                .map(Marked.Mapping.class::cast));
  }
}
