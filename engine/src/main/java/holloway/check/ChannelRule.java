package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import java.util.Optional;

/**
 * A channel is cut in the face of a solid wall: it is open to the surface of its room all along,
 * and cutting each stretch of it is a work that is paid once, however many cables lie in it.
 */
final class ChannelRule implements Rule {
  private static final double MINUTES = 0.001;
  private static final double METRES = 0.002;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      if (channel(at, evidence).isPresent()) {
        double rate = evidence.request().effort().get("channel.metre");
        double due = at.pathMm() / 1000 * rate;
        if (!isPaid(grooves(at, evidence), due, MINUTES + METRES * rate)) {
          charge.step(at, "lies in a channel, but no work of %.4f min cuts it", due);
        }
      }
    }
  }

  /** Minutes of each groove that is cut in the leg's channel. */
  private static double[] grooves(Walk.At at, Evidence evidence) {
    return evidence.plan().works().stream()
        .filter(w -> w.kind().equals("channel") && w.id().startsWith(at.hollow() + "/to/"))
        .mapToDouble(w -> w.minutes())
        .toArray();
  }

  /** One groove, or two that meet at an outlet on the way from floor to ceiling. */
  private static boolean isPaid(double[] grooves, double due, double within) {
    for (int i = 0; i < grooves.length; i++) {
      for (int j = i; j < grooves.length; j++) {
        double paid = i == j ? grooves[i] : grooves[i] + grooves[j];
        if (Math.abs(paid - due) <= within) {
          return true;
        }
      }
    }
    return false;
  }

  /** True for a leg in a channel that is cut in a face of the room whose surface this is. */
  static boolean opensOnto(Walk.At leg, String surface, Evidence evidence) {
    return channel(leg, evidence)
        .flatMap(Hollow::stand)
        .map(s -> s.equals("room/" + surface.replaceFirst("/surface$", "")))
        .orElse(false);
  }

  /** True for a place where a cable comes out of a channel onto the surface of its room. */
  static boolean joinsSurface(Walk.At at, Evidence evidence) {
    if (at.before().isEmpty() || at.after().isEmpty()) {
      return false;
    }
    Walk.At before = at.before().get();
    Walk.At after = at.after().get();
    return opensOnto(before, after.hollow(), evidence)
        || opensOnto(after, before.hollow(), evidence);
  }

  private static Optional<Hollow> channel(Walk.At at, Evidence evidence) {
    return at.isLeg()
        ? evidence.hollow(at).filter(h -> h.kind() == HollowKind.CHANNEL)
        : Optional.empty();
  }
}
