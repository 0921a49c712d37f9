package holloway.check.rules;

import holloway.catalog.Cable;
import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.limits.CablingFigures;
import holloway.limits.Figure;
import holloway.limits.Stretches;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A2-3 to A2-9: every turn of a run has room for the bend that its cable needs. */
final class TightTurn implements PlanRule {
  @Override
  public String id() {
    return "tight-turn";
  }

  @Override
  public String about() {
    return "How far a space reaches both ways of a turn, against the bend that the cable needs: wider"
        + " while a fish pulls it, less at rest. A thin void behind board is where it fails.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "standard",
        CablingFigures.BEND_UTP.cited(),
        "4 x diameter of four pairs; fibre 25 mm at rest, 50 mm pulled");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Legs r : Legs.of(finished.plan())) {
      r.cable().flatMap(c -> worst(r, c, finished)).ifPresent(out::add);
    }
    return out;
  }

  /** Millimetres inside: at rest, or pulled. */
  static double radius(Cable c, boolean pulled) {
    if (!c.fibre()) {
      return CablingFigures.BEND_UTP.value() * c.outside().toMm();
    }
    if (c.outdoor()) {
      var most = pulled ? CablingFigures.BEND_OTHER_PULLED : CablingFigures.BEND_OTHER_FIBRE;
      return most.value() * c.outside().toMm();
    }
    var indoor = pulled ? CablingFigures.BEND_FIBRE_PULLED : CablingFigures.BEND_FIBRE;
    return indoor.length().toMm();
  }

  /** Where the radius asked for is from. */
  private static Source source(Cable c, boolean pulled) {
    if (!c.fibre()) {
      return CablingFigures.BEND_UTP.cited();
    }
    Figure other = pulled ? CablingFigures.BEND_OTHER_PULLED : CablingFigures.BEND_OTHER_FIBRE;
    Figure indoor = pulled ? CablingFigures.BEND_FIBRE_PULLED : CablingFigures.BEND_FIBRE;
    return (c.outdoor() ? other : indoor).cited();
  }

  private Optional<Finding> worst(Legs r, Cable c, Finished finished) {
    Finding worst = null;
    double least = 1;
    for (Plan.PlanStep s : r.run().steps()) {
      Optional<Hollow> space = finished.house().findHollow(s.id()).filter(TightTurn::hasShape);
      double radius = radius(c, s.fish().isPresent());
      Stretches line = Stretches.of(s.path());
      for (int i = 0; space.isPresent() && i + 1 < line.size(); i++) {
        double room = room(line, i, space.get()) - c.outside().toMm();
        if (room / radius < least) {
          least = room / radius;
          worst =
              finding(
                  r.run().id()
                      + " turns in a space too thin for its bend: "
                      + finished.named(space.get())
                      + ".",
                  Place.of(r.run().id(), line.points().get(i + 1)),
                  room,
                  radius,
                  source(c, s.fish().isPresent()));
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Of a tube or an old cable only the two ends are known. */
  private static boolean hasShape(Hollow h) {
    return h.kind() != HollowKind.CONDUIT && h.kind() != HollowKind.OLD_CABLE;
  }

  /** How far the space reaches in the two directions of the turn, the lesser, millimetres. */
  private static double room(Stretches line, int i, Hollow space) {
    Point3 p = space.frame().toLocal(line.points().get(i));
    Point3 q = space.frame().toLocal(line.points().get(i + 1));
    Point3 r = space.frame().toLocal(line.points().get(i + 2));
    return Math.min(reach(p, q, space), reach(q, r, space));
  }

  private static double reach(Point3 a, Point3 b, Hollow space) {
    long dx = Math.abs(a.x() - b.x());
    long dy = Math.abs(a.y() - b.y());
    long dz = Math.abs(a.z() - b.z());
    long most = Math.max(dx, Math.max(dy, dz));
    Interval side =
        dx == most ? space.clear().x() : dy == most ? space.clear().y() : space.clear().z();
    return side.length() / 1e6;
  }

  private Finding finding(String what, Place at, double room, double radius, Source source) {
    return say(
        Severity.STANDARD,
        at,
        source,
        false,
        new Said(
            what,
            Legs.number("%.0f mm", room),
            Legs.number("%.0f mm", radius),
            "Take a thinner or more supple cable there, or a deeper way; do not kink it in."));
  }
}
