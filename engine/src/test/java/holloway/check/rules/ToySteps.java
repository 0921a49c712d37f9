package holloway.check.rules;

import static holloway.check.ToyHouse.at;

import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a made-up run goes through: legs and crossings, in order. */
final class ToySteps {
  private final List<Plan.PlanStep> steps = new ArrayList<>();
  private final List<Site> sites = new ArrayList<>();
  private int fish;
  private int holes;

  List<Plan.PlanStep> steps() {
    return steps;
  }

  List<Site> sites() {
    return sites;
  }

  void leg(String id, HollowKind kind, boolean blind, Point3... path) {
    double m = 0;
    for (int i = 1; i < path.length; i++) {
      m += path[i - 1].distanceTo(path[i]) / 1e9;
    }
    Optional<Integer> number = blind ? Optional.of(++fish) : Optional.empty();
    steps.add(
        new Plan.PlanStep(
            "leg",
            id,
            Optional.of(kind.word()),
            Optional.empty(),
            List.of(path),
            m,
            Optional.of(blind ? "blind" : "hand"),
            number,
            Optional.of(1.0)));
  }

  /** A crossing of that kind that the run passes. */
  void through(SiteKind kind) {
    String id = "site-" + ++holes;
    sites.add(
        new Site(
            id,
            kind,
            at(0, 0, 0),
            at(0, 0, 100),
            "east/bay-800",
            "attic",
            List.of(),
            List.of(),
            51,
            51,
            false,
            false));
    steps.add(
        new Plan.PlanStep(
            "crossing",
            id,
            Optional.empty(),
            Optional.of("H" + holes),
            List.of(at(0, 0, 0), at(0, 0, 100)),
            0.1,
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  /** A crossing of the shop's ceiling that pierces those members, bored or already made. */
  void crossing(String id, boolean made, List<String> pierces) {
    Point3 a = at(2000, 1500, 2387);
    Point3 b = at(2000, 1500, 2400);
    sites.add(
        new Site(
            id,
            SiteKind.CEILING,
            a,
            b,
            "east/bay-800",
            "attic",
            pierces,
            List.of(),
            51,
            51,
            made,
            false));
    steps.add(
        new Plan.PlanStep(
            "crossing",
            id,
            Optional.empty(),
            Optional.of("H9"),
            List.of(a, b),
            0.013,
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }
}
