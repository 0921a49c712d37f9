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
        boolean paid =
            evidence.plan().works().stream()
                .filter(w -> w.kind().equals("channel") && w.id().startsWith(at.hollow() + "/to/"))
                .anyMatch(w -> Math.abs(w.minutes() - due) <= MINUTES + METRES * rate);
        if (!paid) {
          charge.step(at, "lies in a channel, but no work of %.4f min cuts it", due);
        }
      }
    }
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
