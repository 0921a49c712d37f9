package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.house.Thing;
import holloway.limits.OwnRule;
import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where a rule file of one's own lets no hole be: too near to things it names. */
final class KeepOffs {
  /** A thing seen, or an obstacle, and the rule that speaks of it. */
  private record Near(OwnRule.KeepOff rule, String word, Frame frame, Box box) {}

  private final List<Near> near = new ArrayList<>();

  KeepOffs(Framed framed) {
    Placed placed = framed.placed();
    placed.house().ownRules().own(OwnRule.KeepOff.class).forEach(r -> find(r, framed));
  }

  private void find(OwnRule.KeepOff rule, Framed framed) {
    for (Thing t : framed.placed().house().things()) {
      String word = OwnRule.word(t.kind());
      if (rule.things().contains(word)) {
        framed
            .placed()
            .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
            .ifPresent(
                s -> {
                  var t0 = s.wall().core();
                  Box box = new Box(s.s(), s.s(), t0.lo(), t0.hi(), s.z(), s.z());
                  near.add(new Near(rule, word, s.wall().frame(), box));
                });
      }
    }
    for (Member m : framed.members()) {
      String word = m.id().replaceAll(".*/obstacle-\\d+-", "");
      boolean stated = m.kind() == MemberKind.OBSTACLE && !word.equals(m.id());
      if (stated && rule.things().contains(word)) {
        near.add(new Near(rule, word, m.frame(), m.box()));
      }
    }
  }

  /** Why no hole may lie on the axis; empty where none of the rules minds. */
  Optional<String> against(Point3 a, Point3 b) {
    for (Near n : near) {
      if (distance(n, a, b) < n.rule().least().nm()) {
        String said = "nearer than %s to a %s".formatted(n.rule().least(), n.word());
        return Optional.of(said + " (" + n.rule().words().source() + ")");
      }
    }
    return Optional.empty();
  }

  /** Axes run along one direction of the frame, so that the box around one is the axis itself. */
  private static double distance(Near n, Point3 a, Point3 b) {
    Point3 p = n.frame().toLocal(a);
    Point3 q = n.frame().toLocal(b);
    double x = gap(p.x(), q.x(), n.box().x0(), n.box().x1());
    double y = gap(p.y(), q.y(), n.box().y0(), n.box().y1());
    double z = gap(p.z(), q.z(), n.box().z0(), n.box().z1());
    return Math.sqrt(x * x + y * y + z * z);
  }

  private static double gap(long p, long q, long lo, long hi) {
    return Math.max(0, Math.max(lo - Math.max(p, q), Math.min(p, q) - hi));
  }
}
