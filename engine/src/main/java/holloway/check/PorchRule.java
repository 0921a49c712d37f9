package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.Porch;
import java.util.List;
import java.util.Optional;

/**
 * Cable over a porch's boards lies within its outline and the depth of its joists, and goes along
 * them: sideways no further than from one joist to the next. Under bare joists it lies below them,
 * under the roof. All of it from what was taped; a porch that is not stated has neither.
 */
final class PorchRule implements Rule {
  private static final String SPACE = "outside/porch ";
  private static final double SLACK_MM = 1;

  /** Boards under the joists of a porch. */
  private static final double BOARDS_MM = 20;

  /** Cable that turns out from the wall to bare joists hangs so far below them at most. */
  private static final double UNDER_MM = 125;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      Optional<Hollow> hollow = at.isLeg() ? evidence.hollow(at) : Optional.empty();
      if (hollow.isPresent() && at.hollow().startsWith(SPACE)) {
        String name = at.hollow().substring(SPACE.length()).split("/")[0];
        boolean boarded = hollow.get().kind() == HollowKind.PORCH_VOID;
        judge(at, name, boarded, evidence, charge);
      }
    }
  }

  private static void judge(
      Walk.At at, String name, boolean boarded, Evidence evidence, Charge charge) {
    Optional<PorchPlace> place = PorchPlace.of(name, evidence.house().framed().placed());
    if (place.isEmpty() || place.get().porch().boarded() != boarded) {
      charge.step(at, "lies at the porch %s, which states no such space", name);
      return;
    }
    Porch p = place.get().porch();
    double depth = p.joists().value().depth().toMm();
    double low = boarded ? 0 : -UNDER_MM;
    double high = depth + (boarded ? BOARDS_MM : 0);
    boolean outward = p.run().value() == Porch.Run.OUT;
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (Span span : at.spans()) {
      for (Mm q : List.of(span.a(), span.b())) {
        double[] l = place.get().local(q);
        boolean in =
            isIn(l[0], 0, p.length().value().toMm())
                && isIn(l[1], 0, p.out().value().toMm())
                && isIn(l[2], low, high);
        if (!in) {
          charge.step(at, "lies at %s, not under the roof of porch %s", q, name);
          return;
        }
        least = Math.min(least, outward ? l[0] : l[1]);
        most = Math.max(most, outward ? l[0] : l[1]);
      }
    }
    if (boarded && most - least > p.every().value().toMm()) {
      charge.step(at, "goes %.0f mm across the joists of porch %s", most - least, name);
    }
  }

  private static boolean isIn(double v, double low, double high) {
    return v >= low - SLACK_MM && v <= high + SLACK_MM;
  }
}
