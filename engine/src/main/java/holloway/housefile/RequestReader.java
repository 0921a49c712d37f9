package holloway.housefile;

import holloway.catalog.PinOut;
import holloway.catalog.PriceList;
import holloway.house.Fact;
import holloway.house.Porch;
import holloway.house.WallSpot;
import holloway.house.Where;
import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Wishes;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Reads cabinet, outlets and links, and makes the runs out of them. */
final class RequestReader {
  private static final String CABINET = "cabinet";

  private final Entry house;
  private final Defaults defaults;
  private final List<Porch> porches;
  private final Map<String, String> through;
  private final List<Run> runs = new ArrayList<>();
  private final Map<String, Where> runNames = new TreeMap<>();

  /**
   * @param porches that outlets may hang under
   * @param through run ids and the hollow each must pass
   */
  RequestReader(Entry house, Defaults defaults, List<Porch> porches, Map<String, String> through) {
    this.house = house;
    this.defaults = defaults;
    this.porches = porches;
    this.through = through;
  }

  /** Empty when the cabinet cannot be read. */
  Optional<Request> read(Wishes wishes, Effort effort, PriceList prices) {
    Optional<WallSpot> cabinet =
        house
            .map("cabinet", WantedTables.CABINET)
            .flatMap(c -> Spots.onWall(c, Fact.assumed(Length.ZERO)));
    List<Outlet> outlets = outlets();
    links();
    if (isEmptyList(house, "outlets")) {
      String example =
          Teaching.example(WantedTables.HOUSE, WantedTables.HOUSE.find("outlets").orElseThrow())
              .orElseThrow();
      house.problem("outlets", example, "", "no cable is wanted: give at least one outlet");
    }
    checkWired();
    runs.sort(Comparator.comparing(Run::id));
    return cabinet.map(
        at ->
            new Request(
                new Request.Cabinet(at, house.where("cabinet"), otherPlaces()),
                outlets,
                runs,
                wishes,
                effort,
                prices,
                new Request.Shop(
                    house.choice("pin-out", PinOut.class).orElse(PinOut.USUAL),
                    house.text("prices"),
                    house.texts("have").stream()
                        .map(Marked.Scalar::text)
                        .collect(Collectors.toSet()),
                    JobReader.read(house))));
  }

  private List<WallSpot> otherPlaces() {
    List<WallSpot> out = new ArrayList<>();
    house
        .map("cabinet", WantedTables.CABINET)
        .ifPresent(
            c ->
                c.maps("or", OuterTables.WALL_SPOT)
                    .forEach(o -> Spots.onWall(o, Fact.assumed(Length.ZERO)).ifPresent(out::add)));
    return out;
  }

  private List<Outlet> outlets() {
    List<Outlet> out = new ArrayList<>();
    Map<String, Where> names = new TreeMap<>();
    OutletReader reader = new OutletReader(defaults, porches);
    for (Entry e : house.maps("outlets", WantedTables.OUTLET)) {
      e.text("name").ifPresent(n -> Unique.claim(e, "name", n, names, "outlet"));
      reader.read(e).ifPresent(out::add);
      e.text("name").ifPresent(n -> outletRuns(e, n));
    }
    return out;
  }

  private static boolean isEmptyList(Entry e, String key) {
    return e.raw(key)
        .filter(v -> v instanceof Marked.Sequence s && s.items().isEmpty())
        .isPresent();
  }

  /** An outlet without cables must be an end of a link. */
  private void checkWired() {
    Set<String> linked = new TreeSet<>();
    for (Entry link : house.maps("links", WantedTables.LINK)) {
      link.text("from").ifPresent(linked::add);
      link.text("to").ifPresent(linked::add);
    }
    for (Entry e : house.maps("outlets", WantedTables.OUTLET)) {
      boolean feed = !e.has("cables") && e.yesNo("feed").orElse(false);
      boolean cabled = feed || e.has("cables") && !isEmptyList(e, "cables");
      boolean wired = cabled || linked.contains(e.text("name").orElse(""));
      if (!wired) {
        String text = "no cable goes to outlet '%s'".formatted(e.text("name").orElse("?"));
        e.problem("cables", "cables: [cat6], or a link to it", "", text);
      }
    }
  }

  /** {@code desk/cat6-1}, {@code desk/cat6-2}, ..., then {@code desk/spare-1}. */
  private void outletRuns(Entry e, String outlet) {
    List<OutletReader.Wanted> cables = OutletReader.cables(e);
    Map<String, Integer> count = new TreeMap<>();
    for (OutletReader.Wanted w : cables) {
      int n = count.merge(w.kind(), 1, Integer::sum);
      String id = w.name().orElse(outlet + "/" + w.kind() + "-" + n);
      add(e, "cables", id, CABINET, outlet, w.kind(), false);
    }
    for (int i = 1; !cables.isEmpty() && i <= e.whole("spare").orElse(0); i++) {
      add(e, "spare", outlet + "/spare-" + i, CABINET, outlet, cables.get(0).kind(), true);
    }
  }

  private void links() {
    Map<String, Integer> count = new TreeMap<>();
    for (Entry e : house.maps("links", WantedTables.LINK)) {
      Optional<String> from = e.text("from");
      Optional<String> to = e.text("to");
      Optional<String> cable = e.text("cable");
      if (from.isPresent() && from.equals(to)) {
        e.problem("to", "another outlet", "", "a link joins two different ends");
      } else if (from.isPresent() && to.isPresent() && cable.isPresent()) {
        String ends = from.get() + " to " + to.get() + "/" + cable.get();
        String id = e.text("name").orElse(ends + "-" + count.merge(ends, 1, Integer::sum));
        add(e, e.has("name") ? "name" : "from", id, from.get(), to.get(), cable.get(), false);
      }
    }
  }

  private void add(
      Entry e, String key, String id, String from, String to, String cable, boolean spare) {
    Unique.claim(e, key, id, runNames, "run");
    runs.add(new Run(id, from, to, cable, spare, Optional.ofNullable(through.get(id))));
  }

  /** Wishes may name only runs that exist. */
  void checkThrough(Problems problems, Map<String, Where> at) {
    at.forEach(
        (id, where) -> {
          if (!runNames.containsKey(id) && !runNames.isEmpty()) {
            problems.add(
                where,
                id,
                "one of: " + Names.list(runNames.keySet()),
                Nearest.of(id, runNames.keySet()),
                "there is no run '" + id + "'");
          }
        });
  }
}
