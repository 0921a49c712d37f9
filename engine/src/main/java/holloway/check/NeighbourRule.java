package holloway.check;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.hollow.Site;
import holloway.house.Standing;
import holloway.plan.Plan;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;

/**
 * What is shared with a neighbour or theirs is left alone: nothing is bored, cut or fixed in a
 * party wall, nothing lies in, over or under their rooms, and nobody works from a room that is
 * theirs or that was not surveyed. Read from walls and rooms as the survey placed them.
 */
final class NeighbourRule implements Rule {
  /**
   * Cable clipped to a wall lies this near to it at most, millimetres. To the face of a wall
   * between split levels it may be clipped: that is one's own.
   */
  private static final double CLIPPED_MM = 15;

  /** Cable on the next wall comes this far along a shared one in the corner, millimetres. */
  private static final double CORNER_MM = 60;

  /** Depth of the wall that a shared one ends against, nanometres: a thin framed one. */
  private static final long END = 110_000_000;

  private static final double SLACK_MM = 1;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    List<Wall> shared =
        evidence.house().framed().placed().walls().stream()
            .filter(w -> w.traits().isParty())
            .toList();
    List<Member> theirs =
        evidence.house().framed().members().stream()
            .filter(m -> m.kind() == MemberKind.NOT_OURS && isRoom(m, evidence))
            .toList();
    for (Walk.At at : evidence.steps()) {
      if (at.step().path().size() >= 2) {
        judgeRoom(at, evidence, charge);
        boolean stated = SplitRule.isStated(at, evidence);
        shared.stream()
            .filter(w -> !stated || !w.traits().isSplit())
            .forEach(w -> judgeWall(at, w, charge));
        theirs.forEach(m -> judgeTheirs(at, m, charge));
      }
    }
    for (Plan.PlannedHole hole : evidence.plan().holes()) {
      judgeHole(hole, shared, evidence, charge);
    }
  }

  private static boolean isRoom(Member m, Evidence evidence) {
    return evidence.house().framed().placed().rooms().stream()
        .anyMatch(r -> r.name().equals(m.owner()));
  }

  /** In a room that nobody works in there is no leg at all. */
  private static void judgeRoom(Walk.At at, Evidence evidence, Charge charge) {
    for (PlacedRoom r : evidence.house().framed().placed().rooms()) {
      boolean closed = r.room().standing() != Standing.OURS;
      if (closed && at.isLeg() && isIn(at, r)) {
        charge.step(at, "lies in %s, which %s", r.name(), why(r));
      }
    }
  }

  private static boolean isIn(Walk.At at, PlacedRoom r) {
    Outline outline = new Outline(r.outline());
    for (Span s : at.spans()) {
      Mm mid = s.at(0.5);
      boolean height = mid.z() > r.floorZ() / 1e6 && mid.z() < r.ceilingZ() / 1e6;
      if (height && outline.holds(new Span(mid, mid), 0)) {
        return true;
      }
    }
    return false;
  }

  private static String why(PlacedRoom r) {
    return r.room().standing() == Standing.SOMEBODY_ELSES
        ? "is somebody else's"
        : "was not surveyed";
  }

  private static void judgeWall(Walk.At at, Wall w, Charge charge) {
    double along = 0;
    for (Span s : at.spans()) {
      Solid faces = grown(w, w.traits().isSplit() ? 0 : CLIPPED_MM);
      int steps = (int) Math.max(1, Math.ceil(s.length() / 20));
      for (int i = 0; i < steps; i++) {
        along += faces.holds(s.at((i + 0.5) / steps), 0) ? s.length() / steps : 0;
      }
    }
    boolean cut = at.isCrossing() && (along > SLACK_MM || passesEnd(at, w));
    if (cut || along > CORNER_MM) {
      charge.step(
          at,
          "%s %s, %s: nothing is bored, cut or fixed in it",
          at.isCrossing() ? "cuts into" : "lies in or on",
          w.id(),
          w.traits().isSplit()
              ? "a wall between split levels"
              : "a wall shared with somebody else");
    }
  }

  /** A level bore through the posts at the end of a shared wall crosses it too. */
  private static boolean passesEnd(Walk.At at, Wall w) {
    Solid line =
        new Solid(w.frame(), new Box(-END, w.length() + END, 0, w.thickness(), 0, w.height()));
    return at.spans().stream()
        .filter(s -> Math.abs(s.a().z() - s.b().z()) < SLACK_MM)
        .anyMatch(s -> line.entered(s, SLACK_MM));
  }

  private static Solid grown(Wall w, double mm) {
    long by = Math.round(mm * 1e6);
    return new Solid(w.frame(), new Box(0, w.length(), -by, w.thickness() + by, 0, w.height()));
  }

  private static void judgeTheirs(Walk.At at, Member theirs, Charge charge) {
    Solid solid = Solid.of(theirs);
    if (at.spans().stream().anyMatch(s -> solid.entered(s, SLACK_MM))) {
      charge.step(at, "lies over, under or in %s, which is somebody else's", theirs.owner());
    }
  }

  private static void judgeHole(
      Plan.PlannedHole hole, List<Wall> shared, Evidence evidence, Charge charge) {
    Optional<Site> site = evidence.house().findSite(hole.id());
    for (Wall w : shared) {
      boolean pierced =
          site.isPresent()
              && site.get().pierces().stream()
                  .flatMap(
                      id ->
                          evidence.house().framed().members().stream()
                              .filter(m -> m.id().equals(id)))
                  .anyMatch(m -> m.owner().equals(w.id()));
      if (pierced) {
        charge.plan(
            hole.id(),
            "bores into %s, which %s",
            w.id(),
            w.traits().isSplit() ? "stands between split levels" : "is shared with somebody else");
      }
    }
  }
}
