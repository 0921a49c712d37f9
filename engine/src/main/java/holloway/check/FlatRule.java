package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.survey.PlacedRoom;
import java.util.List;
import java.util.Optional;

/**
 * In a flat roof cable lies over one of its rooms or their walls, within the depth of its joists,
 * and goes along them: sideways no further than from one joist to the next. Read from rooms and
 * roof as stated; nothing at all lies in a flat roof that states no way its joists run.
 */
final class FlatRule implements Rule {
  private static final double SLACK_MM = 1;

  /** Board and lining between a ceiling and the joists over it. */
  private static final double LINING_MM = 40;

  /** Half a thick outer wall. */
  private static final double WALL_MM = 400;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      Optional<Hollow> hollow = at.isLeg() ? evidence.hollow(at) : Optional.empty();
      if (hollow.isPresent() && hollow.get().kind() == HollowKind.JOIST_BAY) {
        roof(hollow.get(), evidence).ifPresent(r -> judge(at, r, evidence, charge));
      }
    }
  }

  private static Optional<Roof> roof(Hollow h, Evidence evidence) {
    return evidence.house().framed().placed().house().roofs().stream()
        .filter(r -> h.id().startsWith(r.name() + "/") || h.id().startsWith(r.name() + "-"))
        .filter(r -> h.id().contains("/roof-bay-"))
        .findFirst();
  }

  private static void judge(Walk.At at, Roof roof, Evidence evidence, Charge charge) {
    if (roof.shape() != Roof.Shape.FLAT || roof.run().isEmpty()) {
      charge.step(at, "lies in the roof %s, which states no bays", roof.name());
      return;
    }
    boolean ew = roof.run().get() == Direction.EAST_WEST;
    double lo = Double.MAX_VALUE;
    double hi = -Double.MAX_VALUE;
    for (Span span : at.spans()) {
      for (Mm p : List.of(span.a(), span.b())) {
        lo = Math.min(lo, ew ? p.y() : p.x());
        hi = Math.max(hi, ew ? p.y() : p.x());
        if (rooms(roof, evidence).stream().noneMatch(r -> isOver(r, roof, p))) {
          charge.step(at, "lies at %s, not between ceiling and roof of %s", p, roof.name());
          return;
        }
      }
    }
    if (hi - lo > roof.every().value().toMm()) {
      charge.step(at, "goes %.0f mm across the joists of the roof %s", hi - lo, roof.name());
    }
  }

  private static List<PlacedRoom> rooms(Roof roof, Evidence evidence) {
    return evidence.house().framed().placed().rooms().stream()
        .filter(
            r ->
                roof.rooms().contains(r.name())
                    || roof.level().filter(r.room().level()::equals).isPresent())
        .toList();
  }

  private static boolean isOver(PlacedRoom r, Roof roof, Mm p) {
    double up = p.z() - r.ceilingZ() / 1e6;
    return up > -SLACK_MM
        && up < roof.chord().value().depth().toMm() + LINING_MM
        && new Outline(r.outline()).near(p, WALL_MM);
  }
}
