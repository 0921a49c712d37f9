package holloway.check;

import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What stands between two parts of a split-level house is not known: no leg or crossing comes
 * between their rooms, except in a tube or along an old cable that is stated. Judged from the
 * outlines of the rooms alone: a point lies between two outlines if its distances to both add up to
 * the distance between them.
 */
final class SplitRule implements Rule {
  /** Rooms further apart than this have open air between them, millimetres. */
  private static final double FURTHEST_MM = 900;

  private static final double STEP_MM = 20;
  private static final double SLACK_MM = 2;

  /** Two rooms that face each other, and the heights of both. */
  private record Gap(PlacedRoom a, PlacedRoom b, Outline planA, Outline planB, double wide) {
    boolean holds(Mm p) {
      double z = p.z() * 1e6;
      boolean high = within(z, a) || within(z, b);
      double da = planA.distance(p.x(), p.y());
      double db = planB.distance(p.x(), p.y());
      return high && da > SLACK_MM && db > SLACK_MM && da + db <= wide + SLACK_MM;
    }

    private static boolean within(double z, PlacedRoom r) {
      return z > r.floorZ() && z < r.ceilingZ();
    }
  }

  /** What lies in a room stands in no wall, however the rooms over and beside it lie. */
  private record Inside(PlacedRoom room, Outline plan) {
    boolean holds(Mm p) {
      return Gap.within(p.z() * 1e6, room) && plan.holds(new Span(p, p), 0);
    }
  }

  @Override
  public void judge(Evidence evidence, Charge charge) {
    List<Gap> gaps = gaps(evidence.house().framed().placed());
    List<Inside> rooms =
        evidence.house().framed().placed().rooms().stream()
            .map(r -> new Inside(r, new Outline(r.outline())))
            .toList();
    for (Walk.At at : gaps.isEmpty() ? List.<Walk.At>of() : evidence.steps()) {
      if (isStated(at, evidence)) {
        continue;
      }
      gaps.stream()
          .filter(g -> passes(at, g, rooms))
          .findFirst()
          .ifPresent(
              g ->
                  charge.step(
                      at,
                      "comes between %s and %s, whose floors lie at different heights: what stands"
                          + " there is not known",
                      g.a().name(),
                      g.b().name()));
    }
  }

  /**
   * In a tube or along an old cable that somebody stated, or at a box where it ends: it passes the
   * wall, however it does.
   */
  static boolean isStated(Walk.At at, Evidence evidence) {
    String id = at.step().id();
    Optional<Hollow> in =
        at.isLeg()
            ? evidence.hollow(at)
            : evidence.house().hollows().stream()
                .filter(h -> Set.of(h.id() + "/from/cut-out", h.id() + "/to/cut-out").contains(id))
                .findFirst();
    return in.filter(h -> h.kind() == HollowKind.CONDUIT || h.kind() == HollowKind.OLD_CABLE)
        .isPresent();
  }

  private static List<Gap> gaps(Placed placed) {
    List<Gap> out = new ArrayList<>();
    if (placed.levels().stream().allMatch(l -> l.part() == 0)) {
      return out;
    }
    for (PlacedRoom a : placed.rooms()) {
      for (PlacedRoom b : placed.rooms()) {
        if (part(placed, a) < part(placed, b)) {
          Outline planA = new Outline(a.outline());
          Outline planB = new Outline(b.outline());
          double wide = planA.distance(planB);
          if (wide <= FURTHEST_MM) {
            out.add(new Gap(a, b, planA, planB, wide));
          }
        }
      }
    }
    return out;
  }

  private static int part(Placed placed, PlacedRoom room) {
    return placed.getLevel(room.room().level()).part();
  }

  private static boolean passes(Walk.At at, Gap gap, List<Inside> rooms) {
    for (Span s : at.spans()) {
      int steps = (int) Math.max(1, Math.ceil(s.length() / STEP_MM));
      for (int i = 0; i < steps; i++) {
        Mm p = s.at((i + 0.5) / steps);
        if (gap.holds(p) && rooms.stream().noneMatch(r -> r.holds(p))) {
          return true;
        }
      }
    }
    return false;
  }
}
