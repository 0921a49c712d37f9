package holloway.check;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.house.Lining;
import holloway.house.Thing;
import holloway.house.WallSpot;
import holloway.limits.BoxPractice;
import holloway.plan.Plan;
import holloway.request.Effort;
import holloway.request.Outlet;
import holloway.request.Spot;
import holloway.survey.OnWall;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is cut out for an outlet, by the members that stand behind its spot: each sheet of lining is
 * paid for, and a box goes in only as deep as the sheets and what is clear behind them.
 */
final class BoxRule implements Rule {
  private static final double MINUTES = 0.001;
  private static final double SLACK_MM = 1;
  private static final double SAME_BOX_MM = 150;
  private static final List<String> KINDS =
      List.of("cut-out.board", "cut-out.plaster", "cut-out.ceiling", "cut-out.outside");

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Plan.PlannedWork work : evidence.plan().works()) {
      if (work.kind().equals("cut-out")) {
        judge(work, evidence, charge);
      }
    }
  }

  private void judge(Plan.PlannedWork work, Evidence evidence, Charge charge) {
    String end = work.id().endsWith("/cut-out") ? work.id().replaceAll("/cut-out$", "") : "";
    List<Behind> behind = behind(end, evidence);
    Optional<Double> box = boxMm(end, evidence);
    Effort effort = evidence.request().effort();
    for (Behind b : behind) {
      double needed = box.orElse(BoxPractice.LEAST.toMm());
      if (behind.size() == 1
          && b.framed()
          && !end.equals("cabinet")
          && b.deepMm() < needed - SLACK_MM) {
        charge.plan(
            work.id(),
            "cuts out for a box of %.0f mm, and there are %.0f mm from the face to the back",
            needed,
            b.deepMm());
      }
    }
    List<Double> due = new ArrayList<>();
    for (Behind b : behind) {
      boolean kept = b.box() && !end.equals("cabinet");
      if (kept) {
        due.add(effort.get("open.box"));
        continue;
      }
      // A box within the slack of what is there may be priced either way.
      for (double slack : new double[] {SLACK_MM, -SLACK_MM}) {
        double minutes = price(b, box, end.equals("cabinet"), effort, slack);
        if (!due.contains(minutes)) {
          due.add(minutes);
        }
      }
    }
    if (behind.isEmpty()) {
      due.addAll(overhead(end, evidence));
    }
    if (due.isEmpty()) {
      due.addAll(anyPrice(effort));
    }
    if (due.stream().noneMatch(d -> Math.abs(d - work.minutes()) <= MINUTES)) {
      charge.plan(work.id(), "says %.4f min, which is no price of it: %s", work.minutes(), due);
    }
  }

  private static double price(
      Behind b, Optional<Double> box, boolean cabinet, Effort effort, double slack) {
    boolean plaster = b.lining() == Lining.PLASTER || b.lining() == Lining.LATH_AND_PLASTER;
    boolean sunk =
        b.hollow() && !b.framed() && b.deepMm() < box.orElse(BoxPractice.LEAST.toMm()) - slack;
    boolean shallow =
        b.framed() && !cabinet && b.deepMm() < box.orElse(BoxPractice.USUAL.toMm()) - slack;
    return effort.get(plaster || sunk ? "cut-out.plaster" : "cut-out.board")
        + (b.sheets() > 1 ? (b.sheets() - 1) * effort.get("cut-out.layer") : 0)
        + (shallow ? effort.get("cut-out.shallow") : 0);
  }

  /** Of each spot on a ceiling, by the sheets that lie over it; none where it is on no ceiling. */
  private static List<Double> overhead(String end, Evidence evidence) {
    List<Double> out = new ArrayList<>();
    Effort effort = evidence.request().effort();
    for (Spot s : outlet(end, evidence).map(Outlet::spots).orElse(List.of())) {
      int sheets = CeilingSheets.over(s, evidence);
      if (sheets == 0) {
        return List.of();
      }
      out.add(effort.get("cut-out.ceiling") + (sheets - 1) * effort.get("cut-out.layer"));
    }
    return out;
  }

  /** Of the outside, or of what is on one spot a ceiling and on another a wall. */
  private static List<Double> anyPrice(Effort effort) {
    List<Double> out = new ArrayList<>();
    effort.minutes().entrySet().stream()
        .filter(e -> KINDS.contains(e.getKey()))
        .forEach(e -> out.add(e.getValue()));
    return out;
  }

  private static Optional<Double> boxMm(String end, Evidence evidence) {
    return outlet(end, evidence).flatMap(Outlet::boxDepth).map(d -> d.value().toMm());
  }

  /** The outlet of an end; a further spot of it is counted after an at sign. */
  private static Optional<Outlet> outlet(String end, Evidence evidence) {
    String name = end.replaceAll("@\\d+$", "");
    return evidence.request().outlets().stream()
        .filter(o -> o.name().equals(end) || o.name().equals(name))
        .findFirst();
  }

  /** What stands behind the spot, or behind each of several that it may be; empty if no wall. */
  private static List<Behind> behind(String end, Evidence evidence) {
    List<Behind> out = new ArrayList<>();
    if (end.equals("cabinet")) {
      look(evidence.request().cabinet().at(), evidence).ifPresent(out::add);
      return out;
    }
    Optional<Outlet> outlet = outlet(end, evidence);
    if (outlet.isEmpty()) {
      return out;
    }
    // A settled plan names the spot that was chosen like the outlet, whichever of them it is.
    List<Spot> spots = outlet.get().spots();
    for (Spot s : spots) {
      if (!(s instanceof Spot.OnWall w)) {
        return List.of();
      }
      for (WallSpot at : RangeSpots.of(w, end, evidence)) {
        look(at, evidence).ifPresent(out::add);
      }
    }
    return out;
  }

  private static Optional<Behind> look(WallSpot at, Evidence evidence) {
    return evidence
        .house()
        .framed()
        .placed()
        .findSpot(at.face(), at.along(), at.height().value().nm())
        .map(s -> look(s, evidence));
  }

  /**
   * @param sheets of lining in front of anything else
   * @param deepMm from the face to the next skin or stone behind them
   * @param hollow something is clear behind the sheets
   * @param box a low-voltage box hangs within 150 mm along and up the wall, on this face
   */
  private record Behind(
      Lining lining, boolean framed, int sheets, double deepMm, boolean hollow, boolean box) {}

  private static Behind look(OnWall s, Evidence evidence) {
    Wall w = s.wall();
    List<Member> met =
        evidence.house().framed().membersOf(w.id()).stream()
            .filter(m -> m.box().x().contains(s.s()) && m.box().z().contains(s.z()))
            .filter(m -> isSkin(m.kind()))
            .sorted(Comparator.comparingDouble(m -> from(m, s)))
            .toList();
    int sheets = 0;
    double back = 0;
    double next = w.thickness() / 1e6;
    for (Member m : met) {
      boolean joined = from(m, s) <= back + SLACK_MM;
      if (joined && m.kind() == MemberKind.LINING) {
        sheets++;
        back = from(m, s) + m.box().y().length() / 1e6;
      } else {
        next = Math.min(next, from(m, s));
      }
    }
    boolean hollow = next > back + SLACK_MM;
    Lining lining = evidence.house().framed().placed().lining(w, s.side(), s.s());
    return new Behind(lining, w.isFramed(), sheets, next, hollow, hasBox(s, evidence));
  }

  /** Measured in the open, from the middle of the box to the spot, both in front of the wall. */
  private static boolean hasBox(OnWall s, Evidence evidence) {
    Mm here = Mm.of(s.wall().world(s.s(), 0, s.z()));
    for (Thing t : evidence.house().framed().placed().house().things()) {
      if (t.kind() != Thing.Kind.DATA_BOX) {
        continue;
      }
      Optional<OnWall> box =
          evidence
              .house()
              .framed()
              .placed()
              .findSpot(t.at().face(), t.at().along(), t.at().height().value().nm());
      if (box.isPresent()
          && box.get().wall().id().equals(s.wall().id())
          && box.get().side() == s.side()) {
        Mm there = Mm.of(s.wall().world(box.get().s(), 0, box.get().z()));
        double up = Math.abs(there.z() - here.z());
        double along = Math.hypot(there.x() - here.x(), there.y() - here.y());
        if (up < SAME_BOX_MM && along < SAME_BOX_MM) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isSkin(MemberKind kind) {
    return kind == MemberKind.LINING || kind == MemberKind.CLADDING || kind == MemberKind.MASONRY;
  }

  /** Millimetres from the face that is cut to the near side of a member. */
  private static double from(Member m, OnWall s) {
    return (s.side() == 0 ? m.box().y0() : s.wall().thickness() - m.box().y1()) / 1e6;
  }
}
