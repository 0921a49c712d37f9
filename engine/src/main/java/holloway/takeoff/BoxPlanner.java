package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.PriceList;
import holloway.limits.LocalRules;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Plans boxes, cuts and pulls for a plan with cut lengths. */
public final class BoxPlanner {
  private final Plan plan;
  private final PriceList prices;
  private final Pulls pulls;
  private final Jackets jackets;

  private BoxPlanner(Plan plan, PriceList prices, LocalRules own) {
    this.plan = plan;
    this.prices = prices;
    this.jackets = Jackets.of(plan, own);
    this.pulls = new Pulls(plan, jackets);
  }

  /**
   * @param own rules of one's own: they decide in which jacket a cable is bought
   */
  public static BoxPlan of(Plan plan, PriceList prices, LocalRules own) {
    return new BoxPlanner(plan, prices, own).solve();
  }

  private BoxPlan solve() {
    Map<String, List<Cutting.Piece>> byKind = new TreeMap<>();
    Map<String, String> priced = new TreeMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      if (!Cable.get(r.cable()).factoryEnds()) {
        Cutting.Piece piece = new Cutting.Piece(r.id(), Math.round(r.cableM() * 1000));
        Jackets.Jacket jacket = jackets.of(r.id());
        byKind.computeIfAbsent(jacket.words(), k -> new ArrayList<>()).add(piece);
        priced.put(jacket.words(), jacket.kind());
      }
    }
    int[] from = new int[plan.runs().size()];
    List<BoxPlan.Order> orders = new ArrayList<>();
    byKind.forEach((words, pieces) -> orders.add(order(words, priced.get(words), pieces, from)));
    return new BoxPlan(List.copyOf(orders), atOnce(), pulls.count(from), pulls.least());
  }

  private BoxPlan.Order order(String words, String kind, List<Cutting.Piece> pieces, int[] from) {
    List<PriceList.Piece> ladder = prices.boxesOf(kind);
    boolean priced = prices.priced(kind);
    OptionalLong metre = priced ? prices.cutOf(kind) : OptionalLong.of(BoxPlan.CUT_COUNTS);
    List<Cutting.Size> sizes =
        ladder.stream()
            .map(
                p ->
                    new Cutting.Size(
                        p.metres() * 1000L, priced ? p.cents().getAsLong() : p.metres()))
            .toList();
    Cutting.Result cut = Cutting.of(pieces, sizes, metre);
    List<Cutting.Box> boxes = drawnTogether(cut.boxes(), from);
    List<BoxPlan.Reel> reels = new ArrayList<>();
    int whole = 0;
    for (Cutting.Box b : boxes) {
      whole += b.cut() ? 0 : 1;
      String name = b.cut() ? " cut length " + (reels.size() - whole + 1) : " box " + whole;
      reels.add(reel(words + name, b, priced));
    }
    return new BoxPlan.Order(
        words,
        priced,
        cut.cost(),
        cut.bound(),
        List.copyOf(reels),
        cut.tooLong().stream().map(BoxPlanner::cut).toList());
  }

  /** The same boxes, pieces exchanged between them where that saves pulls and still fits. */
  private List<Cutting.Box> drawnTogether(List<Cutting.Box> boxes, int[] from) {
    List<Cutting.Piece> pieces = boxes.stream().flatMap(b -> b.pieces().stream()).toList();
    // Runs of other kinds keep a box of their own number: they are never drawn from these.
    int[] mine = new int[from.length];
    Arrays.fill(mine, -1);
    for (int b = 0; b < boxes.size(); b++) {
      for (Cutting.Piece p : boxes.get(b).pieces()) {
        mine[pulls.indexOf(p.run())] = b;
      }
    }
    int[] trial = from.clone();
    for (Cutting.Piece p : pieces) {
      trial[pulls.indexOf(p.run())] = mine[pulls.indexOf(p.run())];
    }
    Exchange.Room room =
        (run, box) ->
            mine[run] >= 0
                && box < boxes.size()
                && filled(pieces, trial, box) <= boxes.get(box).size().usable();
    new Exchange(pulls, trial, room).improve(boxes.size());
    for (Cutting.Piece p : pieces) {
      from[pulls.indexOf(p.run())] = trial[pulls.indexOf(p.run())];
    }
    List<Cutting.Box> out = new ArrayList<>();
    for (int b = 0; b < boxes.size(); b++) {
      int box = b;
      out.add(
          new Cutting.Box(
              boxes.get(b).size(),
              pieces.stream().filter(p -> from[pulls.indexOf(p.run())] == box).toList(),
              boxes.get(b).cut()));
    }
    return out;
  }

  private long filled(List<Cutting.Piece> pieces, int[] from, int box) {
    return pieces.stream()
        .filter(p -> from[pulls.indexOf(p.run())] == box)
        .mapToLong(Cutting.Piece::mm)
        .sum();
  }

  private static BoxPlan.Reel reel(String name, Cutting.Box box, boolean priced) {
    int metres = (int) (box.size().mm() / 1000);
    OptionalLong cents = priced ? OptionalLong.of(box.size().cost()) : OptionalLong.empty();
    List<BoxPlan.Cut> cuts = box.pieces().stream().map(BoxPlanner::cut).toList();
    double left = (box.size().mm() - box.used()) / 1000.0;
    return new BoxPlan.Reel(name, metres, cents, cuts, left, box.cut());
  }

  private static BoxPlan.Cut cut(Cutting.Piece p) {
    return new BoxPlan.Cut(p.run(), p.mm() / 1000.0);
  }

  private List<BoxPlan.AtOnce> atOnce() {
    List<BoxPlan.AtOnce> out = new ArrayList<>();
    for (int n = 1; n <= pulls.mostUseful(); n++) {
      out.add(new BoxPlan.AtOnce(n, pulls.count(pulls.shared(n)), pulls.bound(n)));
    }
    return List.copyOf(out);
  }
}
