package holloway.desk;

import holloway.look.Panels;
import holloway.pick.Ray;
import holloway.pick.Shapes;
import holloway.plan.Plan;
import holloway.units.Length;
import holloway.units.UnitSystem;
import holloway.view.Piece;
import holloway.view.Pin;
import holloway.view.Space;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.joml.Vector3fc;

/** Cards of what has no place in a list: a timber, a hollow, an outlet. */
final class BodyCard {
  private static final long MILLIMETRE = 1_000_000;
  private static final long THIRTY_SECOND = 793_750;

  private BodyCard() {}

  static void member(Panels p, Table t, String id) {
    Piece m = t.model().findPiece(id).orElseThrow();
    p.heading(m.kind().word());
    p.pair("part of", t.pictures.words().owner(m.owner()));
    p.pair("size", size(t, m.u(), m.v(), m.w()));
    t.model().storeys().stream()
        .filter(s -> s.order() == m.level())
        .findFirst()
        .ifPresent(s -> p.pair("level", s.name()));
    p.words(
        m.assumed()
            ? "Its place is assumed. Find it before you drill."
            : "Its place was stated or follows from what was measured.");
    List<String> holes =
        t.model().pins().stream().filter(x -> bores(x, m)).map(Pin::label).toList();
    p.pair("holes of the plan in it", holes.isEmpty() ? "none" : String.join(", ", holes));
    p.quiet(m.id());
  }

  /** Whether the axis of a hole goes through a piece. */
  private static boolean bores(Pin pin, Piece m) {
    Shapes one = new Shapes();
    one.add(m.centre(), m.u(), m.v(), m.w());
    Vector3d from = new Vector3d(pin.a());
    double length = from.distance(new Vector3d(pin.b()));
    Ray ray = new Ray(from, new Vector3d(pin.axis()), 1e-4, Math.max(2e-4, length - 1e-4), 0, 0);
    return !Double.isNaN(one.enters(ray, 0));
  }

  static void hollow(Panels p, Table t, String id) {
    Space s = t.model().findSpace(id).orElseThrow();
    p.heading(s.kind().word());
    p.pair("part of", t.pictures.words().owner(s.owner()));
    p.pair("clear", size(t, s.u(), s.v(), s.w()));
    p.pair("filled with", s.fill());
    if (s.runs().isEmpty()) {
      p.words("No run of the plan lies in it.");
    } else {
      p.heading("Runs in it");
      s.runs().forEach(p::words);
    }
    if (t.work.wanted().wishes().bans().contains(id)) {
      p.words("It is forbidden.");
    }
    p.quiet(s.id());
  }

  /** A hollow as a person says it. */
  static String name(Table t, String id) {
    return t.model()
        .findSpace(id)
        .filter(s -> s.runs().isEmpty())
        .map(s -> s.kind().word() + " of " + t.pictures.words().owner(s.owner()))
        .orElseGet(() -> t.pictures.words().hollow(t.plan(), id));
  }

  static void outlet(Panels p, Table t, String name) {
    p.heading(name);
    if (t.work.isSketch()) {
      p.heading(Board.SKETCH);
      p.words("Do not cut: where its box goes is known once the plan is judged.");
    } else {
      t.pictures.words().outlet(t.plan(), name).ifPresent(p::words);
    }
    List<Plan.PlannedRun> runs =
        t.plan().runs().stream().filter(r -> r.to().equals(name) || r.from().equals(name)).toList();
    runs.forEach(r -> p.pair(r.id(), t.pictures.words().cable(r.routeM())));
  }

  /** Three lengths, the longest last, as timber is spoken of. */
  private static String size(Table t, Vector3fc... halves) {
    // What was a whole number of nanometres went through a number of the card: back to a tape's
    // step.
    var units = t.work.house().units();
    long step = units == UnitSystem.METRIC ? MILLIMETRE : THIRTY_SECOND;
    List<Length> all = new ArrayList<>();
    Stream.of(halves)
        .sorted(Comparator.comparingDouble(Vector3fc::length))
        .forEach(h -> all.add(new Length(Math.round(h.length() * 2e9 / step) * step)));
    return String.join(" x ", all.stream().map(units::format).toList());
  }
}
