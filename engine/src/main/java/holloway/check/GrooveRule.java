package holloway.check;

import holloway.hollow.HollowKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Whatever lies in one strip of a solid wall, all of it is cut: the works of the strip add up to no
 * less than the stretches that cables lie in, those that several share counted once.
 */
final class GrooveRule implements Rule {
  private static final double TOLERANCE_MM = 4;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    Map<String, List<Walk.At>> strips = new LinkedHashMap<>();
    for (Walk.At at : evidence.steps()) {
      boolean channel =
          at.isLeg() && evidence.hollow(at).filter(h -> h.kind() == HollowKind.CHANNEL).isPresent();
      if (channel) {
        strips.computeIfAbsent(at.hollow(), h -> new ArrayList<>()).add(at);
      }
    }
    strips.forEach(
        (strip, legs) -> {
          double rate = evidence.request().effort().get("channel.metre");
          double needed = cutMm(legs);
          double paid =
              evidence.plan().works().stream()
                  .filter(w -> w.kind().equals("channel") && w.id().startsWith(strip + "/to/"))
                  .mapToDouble(w -> w.minutes() / rate * 1000)
                  .sum();
          if (needed > paid + TOLERANCE_MM) {
            charge.step(
                legs.get(0), "%.0f mm are cut in this strip, works pay for %.0f", needed, paid);
          }
        });
  }

  /**
   * Upright stretches on one line joined; any other stretch counts once however often it is met.
   */
  private static double cutMm(List<Walk.At> legs) {
    Map<String, List<double[]>> upright = new LinkedHashMap<>();
    Map<String, Double> others = new LinkedHashMap<>();
    for (Walk.At leg : legs) {
      for (Span s : leg.spans()) {
        if (Math.abs(s.a().x() - s.b().x()) < 1 && Math.abs(s.a().y() - s.b().y()) < 1) {
          double low = Math.min(s.a().z(), s.b().z());
          double high = Math.max(s.a().z(), s.b().z());
          upright
              .computeIfAbsent(plan(s.a()), k -> new ArrayList<>())
              .add(new double[] {low, high});
        } else {
          others.put(bothWays(s), s.length());
        }
      }
    }
    double sum = others.values().stream().mapToDouble(Double::doubleValue).sum();
    for (List<double[]> stretches : upright.values()) {
      sum += joined(stretches);
    }
    return sum;
  }

  private static double joined(List<double[]> stretches) {
    stretches.sort(Comparator.comparingDouble(s -> s[0]));
    double sum = 0;
    double reached = Double.NEGATIVE_INFINITY;
    for (double[] s : stretches) {
      sum += Math.max(0, s[1] - Math.max(s[0], reached));
      reached = Math.max(reached, s[1]);
    }
    return sum;
  }

  private static String plan(Mm p) {
    return Math.round(p.x()) + "," + Math.round(p.y());
  }

  private static String bothWays(Span s) {
    String a = plan(s.a()) + "," + Math.round(s.a().z());
    String b = plan(s.b()) + "," + Math.round(s.b().z());
    return a.compareTo(b) < 0 ? a + " " + b : b + " " + a;
  }
}
