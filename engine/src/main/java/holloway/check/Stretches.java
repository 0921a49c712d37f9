package holloway.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Parts of a straight stretch, each from one share of it (0 to 1) to another, in order. */
record Stretches(List<double[]> parts) {
  Stretches {
    parts = List.copyOf(parts);
  }

  /** The parts that lie within any of the solids. */
  static Stretches of(Span span, List<Solid> solids) {
    return joined(solids.stream().flatMap(s -> s.within(span).stream()).toList());
  }

  Stretches with(Stretches other) {
    List<double[]> all = new ArrayList<>(parts);
    all.addAll(other.parts);
    return joined(all);
  }

  Stretches without(Stretches other) {
    List<double[]> left = parts;
    for (double[] cut : other.parts) {
      List<double[]> next = new ArrayList<>();
      for (double[] p : left) {
        if (cut[1] <= p[0] || cut[0] >= p[1]) {
          next.add(p);
          continue;
        }
        if (p[0] < cut[0]) {
          next.add(new double[] {p[0], cut[0]});
        }
        if (cut[1] < p[1]) {
          next.add(new double[] {cut[1], p[1]});
        }
      }
      left = next;
    }
    return new Stretches(left);
  }

  /** The middle of the first part longer than {@code slack} that is left out between 0 and 1. */
  Optional<Double> firstGap(double slack) {
    double done = 0;
    for (double[] p : parts) {
      if (p[0] - done > slack) {
        return Optional.of((done + p[0]) / 2);
      }
      done = Math.max(done, p[1]);
    }
    return 1 - done > slack ? Optional.of((done + 1) / 2) : Optional.empty();
  }

  private static Stretches joined(List<double[]> any) {
    List<double[]> out = new ArrayList<>();
    for (double[] p : any.stream().sorted(Comparator.comparingDouble(p -> p[0])).toList()) {
      double[] last = out.isEmpty() ? null : out.get(out.size() - 1);
      if (last != null && p[0] <= last[1]) {
        last[1] = Math.max(last[1], p[1]);
      } else {
        out.add(p.clone());
      }
    }
    return new Stretches(out);
  }
}
