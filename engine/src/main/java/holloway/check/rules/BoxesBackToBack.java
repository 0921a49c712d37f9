package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.house.Thing;
import holloway.house.WallSpot;
import holloway.limits.Figure;
import holloway.limits.FireFigures;
import holloway.limits.RuleKey;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.survey.OnWall;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** B24: two boxes in opposite faces of the wall that parts a garage from the house. */
final class BoxesBackToBack implements PlanRule {
  @Override
  public String id() {
    return "boxes-back-to-back";
  }

  @Override
  public String about() {
    return "A box of the plan in a wall that parts fire, and another one nearly behind it: together"
        + " they leave no board between.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "standard",
        FireFigures.RATED_BOXES.cited().noting(" (a note, not a duty)"),
        "24 in (600 mm)");
  }

  private record Box(String name, OnWall at) {}

  @Override
  public List<Finding> find(Finished finished) {
    List<Box> planned = new ArrayList<>();
    for (Outlet o : finished.request().outlets()) {
      if (o.spots().size() == 1
          && o.spots().get(0) instanceof Spot.OnWall w
          && w.upTo().isEmpty()) {
        spot(w.at(), finished).ifPresent(at -> planned.add(new Box(o.name(), at)));
      }
    }
    List<Box> all = new ArrayList<>(planned);
    for (Thing t : finished.placed().house().things()) {
      if (isBox(t.kind())) {
        spot(t.at(), finished).ifPresent(at -> all.add(new Box(named(t), at)));
      }
    }
    List<Finding> out = new ArrayList<>();
    for (int i = 0; i < planned.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        pair(planned.get(i), all.get(j), finished).ifPresent(out::add);
      }
    }
    return out;
  }

  /** With its room: a house has many sockets. */
  private static String named(Thing t) {
    String kind = t.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return "the " + kind + " in the " + t.at().face().room();
  }

  private static boolean isBox(Thing.Kind kind) {
    return kind == Thing.Kind.SOCKET || kind == Thing.Kind.SWITCH || kind == Thing.Kind.DATA_BOX;
  }

  private static Optional<OnWall> spot(WallSpot at, Finished finished) {
    return finished
        .placed()
        .findSpot(at.face(), at.along(), at.height().value().nm())
        .filter(w -> w.wall().isFramed() && finished.separates(w.wall()));
  }

  private Optional<Finding> pair(Box a, Box b, Finished finished) {
    long apart = Math.abs(a.at().s() - b.at().s());
    boolean opposite =
        a.at().wall().id().equals(b.at().wall().id()) && a.at().side() != b.at().side();
    Figure least = finished.figure(RuleKey.BOXES_APART, FireFigures.RATED_BOXES);
    boolean own = least.grade() == Figure.Grade.L;
    if (!opposite || apart >= least.length().nm()) {
      return Optional.empty();
    }
    OnWall at = a.at();
    return Optional.of(
        say(
            finished.severity(RuleKey.BOXES_APART, Severity.STANDARD),
            Place.of(a.name(), at.wall().world(at.s(), at.wall().core().mid(), at.z())),
            own ? least.from() : least.cited().noting(" (a note, not a duty)"),
            false,
            new Said(
                "%s and %s lie back to back in the garage separation."
                    .formatted(a.name(), b.name()),
                Legs.number("%.0f mm apart", apart / 1e6),
                (own ? least.said() : "600 mm (24 in)") + " apart",
                "Move the outlet, or put fire-stop pads round both boxes.")));
  }
}
