package holloway.catalogue;

import holloway.check.Referee;
import holloway.hollow.HollowHouse;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.support.Chain;
import java.util.List;

/** A sound plan made unsound in one place, and what the referee then says. */
final class Spoiled {
  private Spoiled() {}

  /**
   * What the referee says of a plan where the hollows and crossings of one house stand in another.
   */
  static String saidIn(Chain other, Chain own, Plan p) {
    HollowHouse h = own.house();
    HollowHouse mixed =
        new HollowHouse(
            other.framed(), h.hollows(), h.sites(), h.stands(), h.accesses(), h.refused());
    return Referee.check(p, mixed, other.request()).refusals().toString();
  }

  /** The plan without one of its works. */
  static Plan without(Plan p, String work) {
    List<Plan.PlannedWork> left = p.works().stream().filter(w -> !w.id().equals(work)).toList();
    if (left.size() == p.works().size()) {
      throw new IllegalArgumentException("no work " + work + " in " + p.works());
    }
    return withWorks(p, left);
  }

  /** The plan with one of its holes bored that wide, millimetres. */
  static Plan widened(Plan p, String hole, int bit) {
    List<Plan.PlannedHole> holes =
        p.holes().stream()
            .map(
                h ->
                    h.id().equals(hole)
                        ? new Plan.PlannedHole(
                            h.id(),
                            h.label(),
                            h.kind(),
                            bit,
                            h.depthMm(),
                            h.at(),
                            h.between(),
                            h.method(),
                            h.stand(),
                            h.works(),
                            h.minutes(),
                            h.runs(),
                            h.assumed(),
                            h.otherMethods(),
                            h.bores(),
                            h.axis(),
                            h.through())
                        : h)
            .toList();
    return holloway.check.Spoiled.with(p, holes, p.works());
  }

  /** The plan with one of its works done in half the time. */
  static Plan halved(Plan p, String work) {
    return withWorks(
        p,
        p.works().stream()
            .map(
                w ->
                    w.id().equals(work)
                        ? new Plan.PlannedWork(
                            w.id(), w.kind(), w.minutes() / 2, w.holes(), w.patches(), w.zone())
                        : w)
            .toList());
  }

  private static Plan withWorks(Plan p, List<Plan.PlannedWork> works) {
    return new Plan(
        p.format(),
        p.house(),
        p.profile(),
        p.perMinute(),
        p.inputs(),
        p.totals(),
        p.runs(),
        p.holes(),
        p.unrouted(),
        works,
        p.findings(),
        p.materials(),
        p.survey());
  }

  /** What the referee has against a plan for this house. */
  static String refused(Plan p, WrittenHouse house) {
    return Referee.check(p, house.hollows(), house.request()).refusals().toString();
  }
}
