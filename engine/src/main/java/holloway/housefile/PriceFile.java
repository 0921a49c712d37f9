package holloway.housefile;

import holloway.catalog.Cable;
import holloway.catalog.Cables;
import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.house.House.InputFile;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads a price file: {@code prices} (its name), {@code currency}, {@code boxes} and {@code leads}
 * by cable kind (lengths in whole metres or feet to prices), {@code by-the-metre} (cable kinds to
 * what a metre costs that the shop cuts), and {@code items} by key.
 */
public final class PriceFile {
  private static final List<String> KEYS =
      List.of("prices", "currency", "boxes", "by-the-metre", "leads", "items");

  private final Problems problems;
  private final Map<String, List<PriceList.Piece>> boxes = new TreeMap<>();
  private final Map<String, List<PriceList.Piece>> leads = new TreeMap<>();
  private final Map<String, Long> items = new TreeMap<>();
  private final Map<String, Long> metres = new TreeMap<>();
  private String name = "";
  private String currency = "";

  private PriceFile(Problems problems) {
    this.problems = problems;
  }

  /** A price list, or what is wrong with the file. */
  public record Answer(Optional<PriceList> list, List<Problem> problems, List<InputFile> inputs) {}

  public static Answer read(Path path) {
    Problems problems = new Problems();
    List<InputFile> inputs = new ArrayList<>();
    Optional<PriceList> list = read(path, problems, inputs);
    return new Answer(problems.isEmpty() ? list : Optional.empty(), problems.sorted(), inputs);
  }

  /** Problems and the fingerprint are recorded. */
  static Optional<PriceList> read(Path path, Problems problems, List<InputFile> inputs) {
    Optional<InputText> text = InputText.read(path, problems);
    text.ifPresent(t -> inputs.add(t.file()));
    return text.flatMap(t -> new PriceFile(problems).list(t.root()));
  }

  private Optional<PriceList> list(Marked root) {
    if (!(root instanceof Marked.Mapping m)) {
      problems.add(
          root.where(),
          root.show(),
          "keys: " + String.join(", ", KEYS),
          "",
          "a price file is a map");
      return Optional.empty();
    }
    m.values().forEach((key, value) -> read(m, key, value));
    need(m, "prices", name, "prices: my shop, spring 2026");
    need(m, "currency", currency, "currency: USD");
    return Optional.of(new PriceList(name, currency, boxes, leads, items, metres));
  }

  private void need(Marked.Mapping root, String key, String value, String example) {
    if (value.isEmpty() && !root.values().containsKey(key)) {
      problems.add(root.where(), "", example, "", "a price file lacks '" + key + "'");
    }
  }

  private void read(Marked.Mapping root, String key, Marked value) {
    switch (key) {
      case "prices" -> name = text(value, ".{1,60}", "a name for the list");
      case "currency" -> currency = text(value, "[A-Z]{3}", "three letters: USD");
      case "boxes" -> kinds(value, boxes, false);
      case "by-the-metre" -> byTheMetre(value);
      case "leads" -> kinds(value, leads, true);
      case "items" -> items(value);
      default ->
          problems.add(
              root.keys().get(key),
              key,
              "one of: " + String.join(", ", KEYS),
              Nearest.of(key, new TreeSet<>(KEYS)),
              "a price file has no key '" + key + "'");
    }
  }

  private String text(Marked value, String pattern, String expected) {
    if (value instanceof Marked.Scalar s && !s.isNothing() && s.text().matches(pattern)) {
      return s.text();
    }
    problems.add(value.where(), value.show(), expected, "", "this cannot be read");
    return "";
  }

  private static List<String> known(boolean ready) {
    return Cables.all().stream().filter(c -> c.factoryEnds() == ready).map(Cable::kind).toList();
  }

  private void byTheMetre(Marked value) {
    List<String> known = known(false);
    map(value)
        .ifPresent(
            m ->
                m.values()
                    .forEach(
                        (kind, price) -> {
                          if (known.contains(kind)) {
                            metres.put(kind, cents(price));
                          } else {
                            unknown(m, kind, known, "no such cable is sold this way");
                          }
                        }));
  }

  /** Kinds of cable, each with lengths and prices. */
  private void kinds(Marked value, Map<String, List<PriceList.Piece>> out, boolean ready) {
    List<String> known = known(ready);
    map(value)
        .ifPresent(
            m ->
                m.values()
                    .forEach(
                        (kind, lengths) -> {
                          if (known.contains(kind)) {
                            lengths(kind, lengths, out);
                          } else {
                            unknown(m, kind, known, "no such cable is sold this way");
                          }
                        }));
  }

  private void lengths(String kind, Marked value, Map<String, List<PriceList.Piece>> out) {
    Map<Integer, Long> ladder = new TreeMap<>();
    map(value)
        .ifPresent(
            m ->
                m.values()
                    .forEach(
                        (length, price) -> {
                          int metres = metres(m, length);
                          long cents = cents(price);
                          if (metres > 0) {
                            ladder.put(metres, cents);
                          }
                        }));
    boolean told = value instanceof Marked.Mapping m && !m.values().isEmpty();
    if (ladder.isEmpty() && !told) {
      problems.add(
          value.where(), value.show(), "305 m: 165.00", "", "no length of '" + kind + "' is given");
    } else if (!ladder.isEmpty()) {
      out.put(kind, PriceList.ladder(ladder));
    }
  }

  /** Whole metres; feet are rounded down, so that a box is never taken for longer than it is. */
  private int metres(Marked.Mapping m, String length) {
    int metres = 0;
    if (length.matches("\\d{1,4} (m|ft)")) {
      int n = Integer.parseInt(length.substring(0, length.indexOf(' ')));
      metres = length.endsWith("ft") ? (int) (n * 3048L / 10_000) : n;
    }
    if (metres == 0) {
      problems.add(m.keys().get(length), length, "305 m, or 1000 ft", "", "a length sold is whole");
    }
    return metres;
  }

  private void items(Marked value) {
    map(value)
        .ifPresent(
            m ->
                m.values()
                    .forEach(
                        (key, price) -> {
                          if (ShopItem.find(key).isPresent()) {
                            items.put(key, cents(price));
                          } else {
                            unknown(m, key, ShopItem.keys(), "nothing of that name is bought");
                          }
                        }));
  }

  private void unknown(Marked.Mapping m, String key, List<String> known, String text) {
    problems.add(
        m.keys().get(key),
        key,
        "one of: " + String.join(", ", known),
        Nearest.of(key, new TreeSet<>(known)),
        text);
  }

  private Optional<Marked.Mapping> map(Marked value) {
    if (value instanceof Marked.Mapping m) {
      return Optional.of(m);
    }
    problems.add(value.where(), value.show(), "names with prices", "", "this is a map");
    return Optional.empty();
  }

  /** Above nothing: what costs nothing would be bought without end. */
  private long cents(Marked value) {
    if (value instanceof Marked.Scalar s && s.text().matches("\\d{1,6}(\\.\\d{1,2})?")) {
      long cents = new BigDecimal(s.text()).movePointRight(2).longValueExact();
      if (cents > 0) {
        return cents;
      }
    }
    problems.add(
        value.where(), value.show(), "a price above 0: 12 or 7.50", "", "this is no price");
    return 1;
  }
}
