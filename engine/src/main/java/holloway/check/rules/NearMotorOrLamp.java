package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.framing.Member;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Thing;
import holloway.limits.Figure;
import holloway.limits.WiringFigures;
import holloway.plan.Plan;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** A8-14: copper near what disturbs it, as far off as sources that differ ask. Glass minds none. */
final class NearMotorOrLamp implements PlanRule {
  private static final String MOTOR = "motor";
  private static final String LAMP = "fluorescent light";

  /** Halvings of a stretch: to less than a micrometre over any house. */
  private static final int STEPS = 80;

  @Override
  public String id() {
    return "near-motor-or-lamp";
  }

  @Override
  public String about() {
    return "Copper near a motor, a transformer or a fluorescent light that the house file states,"
        + " on a wall (things), in a wall, in a void or under a ceiling (obstacles).";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "practice",
        WiringFigures.MOTOR.cited(),
        "48 in (1.2 m) from a motor or transformer, 12 in (300 mm) from a fluorescent light");
  }

  /** What disturbs, as a box of its own frame. */
  private record Noise(String what, String room, Frame frame, Box box) {
    Figure wanted() {
      return what.equals(MOTOR) ? WiringFigures.MOTOR : WiringFigures.FLUORESCENT;
    }
  }

  /** Where a run comes nearest. */
  private record Near(Legs run, Plan.PlanStep step, double mm) {}

  @Override
  public List<Finding> find(Finished finished) {
    List<Noise> all = new ArrayList<>();
    for (Thing t : finished.placed().house().things()) {
      if (t.kind() == Thing.Kind.MOTOR || t.kind() == Thing.Kind.FLUORESCENT_LIGHT) {
        seen(t, finished).ifPresent(all::add);
      }
    }
    finished.house().framed().members().forEach(m -> stated(m).ifPresent(all::add));
    return all.stream().flatMap(n -> judge(n, finished).stream()).toList();
  }

  /** Flat on its wall: how far it comes out of it is not known. */
  private static Optional<Noise> seen(Thing t, Finished finished) {
    Optional<OnWall> at =
        finished.placed().findSpot(t.at().face(), t.at().along(), t.at().height().value().nm());
    return at.map(
        s -> {
          long half = t.width().nm() / 2;
          long up = Math.max(0, t.top().nm() - t.at().height().value().nm());
          long face = s.side() == 0 ? 0 : s.wall().thickness();
          Box box = new Box(s.s() - half, s.s() + half, face, face, s.z() - up, s.z() + up);
          return new Noise(t.kind().words(), t.at().face().room(), s.wall().frame(), box);
        });
  }

  private static Optional<Noise> stated(Member m) {
    String kind = m.id().replaceAll(".*/obstacle-\\d+-", "").replace('-', ' ');
    return kind.equals(MOTOR) || kind.equals(LAMP)
        ? Optional.of(new Noise(kind, "", m.frame(), m.box()))
        : Optional.empty();
  }

  private Optional<Finding> judge(Noise n, Finished finished) {
    double least = n.wanted().length().toMm();
    TreeSet<String> runs = new TreeSet<>();
    Near nearest = null;
    for (Legs r : Legs.of(finished.plan())) {
      for (Plan.PlanStep s : r.fibre() ? List.<Plan.PlanStep>of() : r.run().steps()) {
        double mm = s.kind().equals("leg") ? away(s, n) : Double.MAX_VALUE;
        if (mm < least - 1e-3) {
          runs.add(r.run().id());
          nearest = nearest == null || mm < nearest.mm() ? new Near(r, s, mm) : nearest;
        }
      }
    }
    return Optional.ofNullable(nearest).map(x -> finding(n, x, runs.size()));
  }

  private static double away(Plan.PlanStep s, Noise n) {
    double least = Double.MAX_VALUE;
    for (int i = 1; i < s.path().size(); i++) {
      Point3 a = n.frame().toLocal(s.path().get(i - 1));
      Point3 b = n.frame().toLocal(s.path().get(i));
      least = Math.min(least, away(a, b, n.box()));
    }
    return least;
  }

  /** The distance to a box is convex along a stretch, so thirds close in on the least, mm. */
  private static double away(Point3 a, Point3 b, Box box) {
    double lo = 0;
    double hi = 1;
    for (int i = 0; i < STEPS; i++) {
      double left = lo + (hi - lo) / 3;
      double right = hi - (hi - lo) / 3;
      if (at(a, b, left, box) <= at(a, b, right, box)) {
        hi = right;
      } else {
        lo = left;
      }
    }
    return at(a, b, (lo + hi) / 2, box) / 1e6;
  }

  private static double at(Point3 a, Point3 b, double t, Box box) {
    double x = off(a.x() + t * (b.x() - a.x()), box.x());
    double y = off(a.y() + t * (b.y() - a.y()), box.y());
    double z = off(a.z() + t * (b.z() - a.z()), box.z());
    return Math.sqrt(x * x + y * y + z * z);
  }

  private static double off(double v, Interval side) {
    return Math.max(0, Math.max(side.lo() - v, v - side.hi()));
  }

  private Finding finding(Noise n, Near near, int runs) {
    String where = n.room().isEmpty() ? "the stated " + n.what() : n.what() + " in the " + n.room();
    String who = runs == 1 ? near.run().run().id() + " passes" : "%d cables pass".formatted(runs);
    return say(
        Severity.PRACTICE,
        Place.of(near.step().id(), Legs.start(near.step())),
        n.wanted().cited(),
        false,
        new Said(
            "%s near %s%s.".formatted(who, n.room().isEmpty() ? "" : "the ", where),
            Legs.number("%.0f mm", near.mm()),
            Legs.number("%.0f mm", n.wanted().length().toMm()),
            "Keep copper further off, cross it at a right angle where it has to pass, or take"
                + " fibre there."));
  }
}
