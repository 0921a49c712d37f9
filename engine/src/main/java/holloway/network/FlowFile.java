package holloway.network;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.routing.RouteGraph;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A capacitated fixed-charge design in the lines of the open sets "R" and "C" (B. Gendron and T. G.
 * Crainic, from 1994). There flow may be divided at will; here it goes in whole units, each a run
 * of its own. So a cost that is found is one of the set's problem, and a bound that is proven holds
 * there too: what the shares prove of whole units they prove of any mixture of them.
 *
 * <p>Capacity becomes the width of a hole and a unit a cable, by the rule that three or more may
 * fill 40 % of it. Where all figures have a common divisor, that much is one unit.
 */
final class FlowFile {
  private static final long MOST_RUNS = 20_000;

  /** A unit's cable is so wide that rounding the hole to a millimetre changes nothing. */
  private static final int ONE_MM = 1000;

  private static final Cable ONE =
      new Cable(
          "unit",
          Length.mm(ONE_MM),
          Length.mm(ONE_MM),
          Length.ZERO,
          false,
          false,
          false,
          "reckoned");

  private final List<Fields> arcs;
  private final List<Fields> wanted;
  private final NetDraft draft = new NetDraft();
  private final long demand;
  private final int unit;

  private FlowFile(List<Fields> arcs, List<Fields> wanted) {
    this.arcs = arcs;
    this.wanted = wanted;
    demand = wanted.stream().mapToLong(f -> f.whole(2, 1)).sum();
    int divisor = 0;
    for (Fields f : wanted) {
      divisor = divisor(divisor, f.whole(2, 1));
    }
    for (Fields f : arcs) {
      divisor = divisor(divisor, f.whole(3, 0) < demand ? f.whole(3, 0) : 0);
    }
    unit = Math.max(1, divisor);
    if (demand / unit > MOST_RUNS) {
      throw new NetworkException(
          "%d units of flow are more than the %d this can plan one by one"
              .formatted(demand / unit, MOST_RUNS));
    }
  }

  private static int divisor(int a, int b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  static Instance read(List<String> text) {
    List<Fields> lines = new ArrayList<>();
    for (int i = 0; i < text.size(); i++) {
      if (i < 2 || !text.get(i).isBlank()) {
        lines.add(Fields.of(i + 1, text.get(i)));
      }
    }
    if (lines.size() < 2 || lines.get(1).words().length < 3) {
      throw new NetworkException("line 2 has to be: nodes arcs commodities");
    }
    int first = 2 + lines.get(1).whole(1, 0);
    long last = (long) first + lines.get(1).whole(2, 0);
    if (first < 0 || lines.size() < last) {
      throw new NetworkException("line 2 promises more lines than the " + lines.size() + " here");
    }
    return new FlowFile(lines.subList(2, first), lines.subList(first, (int) last)).build();
  }

  private Instance build() {
    for (Fields f : arcs) {
      int capacity = f.whole(3, 0);
      // An arc that takes nothing is none; one that takes all has no limit.
      if (capacity >= unit) {
        List<RouteGraph.Step> hole =
            capacity >= demand
                ? List.of()
                : List.of(new RouteGraph.Step(millimetres(capacity / unit), 0));
        draft.arc(f.whole(0, 0), f.whole(1, 0), f.cost(2) * unit, f.cost(4), hole);
      }
    }
    for (int k = 0; k < wanted.size(); k++) {
      Fields f = wanted.get(k);
      for (int at : new int[] {0, 1}) {
        if (!draft.hasNode(f.whole(at, 0))) {
          throw f.wrong("node " + f.words()[at] + " is on no arc");
        }
      }
      for (int i = 1; i <= f.whole(2, 1) / unit; i++) {
        draft.run("%d unit %05d".formatted(k + 1, i), f.whole(0, 0), f.whole(1, 0), ONE);
      }
    }
    return draft.finish();
  }

  /** The least hole that takes so many units; it takes no more than those. */
  private static int millimetres(int units) {
    int mm = (int) Math.ceil(ONE_MM * Math.sqrt(units / 0.40));
    // Two in one hole have a rule of their own.
    mm = units == 2 ? (int) Math.ceil(ONE_MM * Math.sqrt(2 / 0.31)) : mm;
    boolean exact =
        Fit.fits(Collections.nCopies(units, ONE), mm)
            && !Fit.fits(Collections.nCopies(units + 1, ONE), mm);
    if (!exact) {
      throw new IllegalStateException("no hole takes just " + units + " units");
    }
    return mm;
  }
}
