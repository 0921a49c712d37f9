package holloway.housefile;

import holloway.catalog.PinOut;
import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.request.Wishes;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Writes cabinet, outlets, links and wishes; runs become cables again, with their names. */
final class WantedWriter {
  private static final String CABINET = "cabinet";

  private final Request request;

  /** Runs that no cable of an outlet stands for yet, by id. */
  private final Map<String, Run> left = new TreeMap<>();

  WantedWriter(Request request) {
    this.request = request;
    request.runs().stream().filter(r -> !r.spare()).forEach(r -> left.put(r.id(), r));
  }

  void into(Words file) {
    List<Object> others = new ArrayList<>();
    request.cabinet().others().forEach(o -> others.add(new Words().spot(o).map()));
    file.put("cabinet", new Words().spot(request.cabinet().at()).put("or", others).map());
    file.put("outlets", request.outlets().stream().map(this::outlet).toList());
    file.put("links", links());
    file.put("wishes", wishes(request.wishes()));
    file.put("crew", String.valueOf(request.wishes().crew()));
    if (request.shop().pinOut() != PinOut.USUAL) {
      file.word("pin-out", request.shop().pinOut());
    }
    file.put("job", JobReader.write(request.shop().job()));
    file.put("have", request.shop().have().stream().sorted().toList());
    file.maybe("prices", request.shop().priceFile(), f -> f);
  }

  private Map<String, Object> outlet(Outlet o) {
    Words w = new Words().put("name", o.name());
    spot(o.spots().get(0), w);
    List<Object> others = new ArrayList<>();
    o.spots().stream().skip(1).forEach(s -> others.add(spot(s, new Words()).map()));
    w.put("or", others).put("cables", cables(o)).put("spare", String.valueOf(o.spare()));
    w.yesNo("feed", o.feed()).put("power", o.power());
    return w.length("box-depth", o.boxDepth()).map();
  }

  private static Words spot(Spot spot, Words w) {
    if (spot instanceof Spot.OnWall on) {
      return w.spot(on.at()).maybe("to", on.upTo(), l -> Words.of(l));
    }
    if (spot instanceof Spot.OnCeiling on) {
      return w.put("in", on.at().room()).put("ceiling", Words.of(on.at()));
    }
    Spot.Outside out = (Spot.Outside) spot;
    if (out.under().isPresent()) {
      Spot.Under under = out.under().get();
      return w.put("under", under.porch())
          .put("from", Words.of(under.from()))
          .length("out", under.out());
    }
    return w.put("outside", Words.of(out.at().face()))
        .put("from", Words.of(out.at().along()))
        .length("height", out.at().height());
  }

  /** A cable without a name is counted by its kind; one whose number is missing has a name. */
  private List<Object> cables(Outlet o) {
    List<Object> out = new ArrayList<>();
    Map<String, Integer> count = new TreeMap<>();
    for (String kind : o.cables()) {
      int n = count.merge(kind, 1, Integer::sum);
      if (left.remove(o.name() + "/" + kind + "-" + n) != null) {
        out.add(kind);
        continue;
      }
      Optional<Run> named =
          left.values().stream()
              .filter(r -> r.from().equals(CABINET) && r.to().equals(o.name()))
              .filter(r -> r.cable().equals(kind) && isName(r.id()))
              .findFirst();
      named.ifPresent(r -> left.remove(r.id()));
      out.add(
          named
              .<Object>map(r -> new Words().put("kind", kind).put("name", r.id()).map())
              .orElse(kind));
    }
    return out;
  }

  /** A name that a person gave; what we count by has a stroke in it. */
  private static boolean isName(String id) {
    return id.indexOf('/') < 0;
  }

  /** In such an order that the numbers of those without a name come out again. */
  private List<Object> links() {
    Map<String, List<Run>> alike = new TreeMap<>();
    left.values().forEach(r -> alike.computeIfAbsent(ends(r), k -> new ArrayList<>()).add(r));
    List<Object> out = new ArrayList<>();
    alike.forEach(
        (ends, runs) -> {
          Map<String, Run> waiting = new TreeMap<>();
          runs.forEach(r -> waiting.put(r.id(), r));
          for (int n = 1; !waiting.isEmpty(); n++) {
            Run next = waiting.remove(ends + "-" + n);
            String first =
                waiting.keySet().stream().filter(WantedWriter::isName).findFirst().orElse(null);
            if (next == null && first == null) {
              throw new IllegalStateException("no link can have the number of " + waiting.keySet());
            }
            out.add(link(next != null ? next : waiting.remove(first)));
          }
        });
    return out;
  }

  private static String ends(Run r) {
    return r.from() + " to " + r.to() + "/" + r.cable();
  }

  private static Map<String, Object> link(Run r) {
    Words w = new Words().put("from", r.from()).put("to", r.to()).put("cable", r.cable());
    return isName(r.id()) ? w.put("name", r.id()).map() : w.map();
  }

  private Map<String, Object> wishes(Wishes w) {
    Words out = new Words();
    out.maybe(
        "hour-is-worth",
        w.hourIsWorth(),
        m -> BigDecimal.valueOf(m.cents(), 2).toPlainString() + " " + m.currency());
    out.put("visible-metre", number(w.visibleMetre(), 4) + " min");
    out.word("attic", w.attic()).put("avoid", w.avoid()).put("bans", w.bans());
    out.word("profile", w.profile());
    Map<String, Object> through = new LinkedHashMap<>();
    request.runs().forEach(r -> r.through().ifPresent(t -> through.put(r.id(), t)));
    return out.put("through", through).map();
  }

  static Map<String, Object> effort(Effort effort) {
    Map<String, Object> out = new LinkedHashMap<>();
    new TreeMap<>(effort.minutes()).forEach((k, v) -> out.put(k, number(v, 6)));
    return out;
  }

  private static String number(double value, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
    return rounded.stripTrailingZeros().toPlainString();
  }
}
