package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.house.RulePlace;
import holloway.house.Thing;
import holloway.limits.EntryFigures;
import holloway.limits.Figure;
import holloway.limits.RuleKey;
import holloway.plan.Plan;
import holloway.request.Outlet;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** B25 to B28: the provider's copper is protected and bonded where it comes in. */
final class BondAtEntrance implements PlanRule {
  private static final Source SOURCE = EntryFigures.BOND_LONG.cited().noting("; 800.90(B)");

  /** The length and the gauge are the US code's. */
  private static final String ELSEWHERE =
      "Have protection fitted there, bonded to the house's earth by a short straight wire. How that"
          + " is done is for the provider or a licensed electrician; the local code decides.";

  @Override
  public String id() {
    return "bond-at-entrance";
  }

  @Override
  public String about() {
    return "A provider's copper feed wants a protector at the entrance, bonded to the house's ground"
        + " by a short wire; the way to a stated power panel is measured. Fibre without metal wants"
        + " none.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), practice elsewhere", SOURCE, "20 ft (6 m) of 14 AWG copper or thicker");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Outlet o : finished.request().outlets()) {
      if (o.feed()) {
        Legs.of(finished.plan()).stream()
            .filter(r -> r.run().to().equals(o.name()) || r.run().from().equals(o.name()))
            .filter(r -> !r.fibre())
            .findFirst()
            .ifPresent(r -> out.add(finding(r, finished)));
      }
    }
    return out;
  }

  /** Where the outside ends: the first point of its last leg outside, else its first point. */
  private static Place entrance(Legs r) {
    List<Plan.PlanStep> outside = r.in(HollowKind.OUTSIDE_FACE);
    return outside.isEmpty()
        ? r.place()
        : Place.of(r.run().id(), Legs.start(outside.get(outside.size() - 1)));
  }

  private static OptionalDouble toPanel(Place entrance, Finished finished) {
    return finished.placed().house().things().stream()
        .filter(t -> t.kind() == Thing.Kind.PANEL && entrance.at().isPresent())
        .flatMap(t -> spot(t, finished).stream())
        .mapToDouble(p -> p.distanceTo(entrance.at().get()) / 1e9)
        .min();
  }

  private static java.util.Optional<Point3> spot(Thing t, Finished finished) {
    return finished
        .placed()
        .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
        .map((OnWall at) -> at.wall().world(at.s(), at.wall().core().mid(), at.z()));
  }

  private Finding finding(Legs r, Finished finished) {
    Figure figure = finished.figure(RuleKey.BONDING_WIRE, EntryFigures.BOND_LONG);
    double most = figure.length().toMetres();
    boolean own = figure.grade() == Figure.Grade.L;
    Place at = entrance(r);
    OptionalDouble panel = toPanel(at, finished);
    boolean far = panel.isPresent() && panel.getAsDouble() > most;
    boolean us = finished.place() == RulePlace.US || own;
    String remedy =
        !us
            ? ELSEWHERE
            : "Have a protector fitted there and bonded to the house's ground with at most "
                + (own ? figure.said() : "6 m (20 ft)")
                + " of 14 AWG copper or thicker"
                + (far ? "; the panel is further, so a ground rod of its own is likely." : ".")
                + " That is the provider's or a licensed electrician's work; the local code decides.";
    return say(
        finished.severity(
            RuleKey.BONDING_WIRE,
            finished.place() == RulePlace.US ? Severity.LAW : Severity.PRACTICE),
        at,
        own ? figure.from() : us ? SOURCE : Source.PRACTICE,
        false,
        new Said(
            r.run().id() + " brings copper in from outside.",
            panel.isPresent()
                ? Legs.metres(panel.getAsDouble()) + " straight to the panel"
                : "no panel stated",
            us ? Legs.number("%.1f m", most) : "a protector, bonded",
            remedy));
  }
}
