package holloway.drawing;

import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.plan.Plan;
import holloway.survey.PlacedLevel;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** A plan's runs over the level they lie on: legs, rings where one rises or falls, holes. */
final class PlannedRuns {
  private static final double RING = 55;
  private final Sheet sheet;
  private final Plan plan;
  private final TreeSet<String> spaces = new TreeSet<>();

  PlannedRuns(Sheet sheet, Plan plan) {
    this.sheet = sheet;
    this.plan = plan;
  }

  /** A stretch of a leg on the sheet. */
  private record Piece(String space, double[] a, double[] b) {
    double length() {
      return Math.hypot(b[0] - a[0], b[1] - a[1]);
    }
  }

  void draw() {
    sheet.svg().open("runs");
    List<List<Piece>> all = new ArrayList<>();
    for (int i = 0; i < plan.runs().size(); i++) {
      all.add(pieces(i));
    }
    all.forEach(run -> run.forEach(p -> sheet.svg().line("under", p.a, p.b)));
    all.forEach(run -> run.forEach(this::piece));
    plan.holes().forEach(this::hole);
    sheet.svg().close();
    sheet.svg().open("run-names");
    plan.holes().forEach(this::name);
    for (int i = 0; i < all.size(); i++) {
      name(plan.runs().get(i).id(), all.get(i));
    }
    sheet.svg().close();
  }

  /** The spaces that were drawn on this level each with its look, under the rest. */
  void legend() {
    Rect drawn = sheet.svg().reach();
    double t = sheet.type();
    double y = drawn.y1() + 260 * t;
    sheet.svg().open("looks");
    for (String space : spaces) {
      double[] a = {drawn.x0(), y};
      sheet.svg().line(LegLooks.kind(space), a, new double[] {a[0] + 900, y});
      String said = sheet.words().apply("cable in: " + space);
      sheet.svg().text("left note", said, a[0] + 1000, y, sheet.plain(), false);
      y += 260 * t;
    }
    String rest = "Ring: a hole, with its label. Small square: the cable goes up or down there.";
    sheet.svg().text("left note", sheet.words().apply(rest), drawn.x0(), y, sheet.plain(), false);
    sheet.svg().close();
  }

  private List<Piece> pieces(int run) {
    List<Piece> out = new ArrayList<>();
    for (Plan.PlanStep s : plan.runs().get(run).steps()) {
      double[] aside = SideBySide.of(s, run, plan.runs().size(), sheet.placed());
      for (int i = 1; s.kind().equals("leg") && i < s.path().size(); i++) {
        Point3 a = s.path().get(i - 1);
        Point3 b = s.path().get(i);
        if (isHere(a.plan(), (a.z() + b.z()) / 2)) {
          out.add(new Piece(s.hollow().orElse(""), moved(a, aside), moved(b, aside)));
        }
      }
    }
    return out;
  }

  private void piece(Piece p) {
    spaces.add(p.space);
    if (p.length() < 1) {
      sheet.svg().rect("riser", p.space, Rect.around(p.a[0], p.a[1], 40, 40));
    } else {
      sheet.svg().line(LegLooks.kind(p.space), p.a, p.b);
    }
    sheet.labels().mark(Rect.of(List.of(p.a, p.b)).grown(30));
  }

  private void hole(Plan.PlannedHole h) {
    if (isHere(h.at().plan(), h.at().z())) {
      sheet.svg().circle("bore", h.id(), Svg.at(h.at().plan()), RING);
      double[] p = Svg.at(h.at().plan());
      sheet.labels().mark(Rect.around(p[0], p[1], 2 * RING, 2 * RING));
    }
  }

  private void name(Plan.PlannedHole h) {
    if (isHere(h.at().plan(), h.at().z())) {
      double[] p = Svg.at(h.at().plan());
      sheet.label("wanted", h.label(), p, 40, 60);
    }
  }

  /** At the middle of the run's longest stretch here. */
  private void name(String run, List<Piece> pieces) {
    Piece longest = null;
    for (Piece p : pieces) {
      longest = longest == null || p.length() > longest.length() ? p : longest;
    }
    if (longest != null) {
      double[] mid = {(longest.a[0] + longest.b[0]) / 2, (longest.a[1] + longest.b[1]) / 2};
      sheet.label("run", run, mid, 50, 80);
    }
  }

  private static double[] moved(Point3 p, double[] aside) {
    double[] at = Svg.at(p.plan());
    return new double[] {at[0] + aside[0], at[1] + aside[1]};
  }

  /**
   * From a level's floor to the next one's over it; what lies under the lowest floor belongs to it.
   */
  private boolean isHere(Point2 p, long z) {
    PlacedLevel of = null;
    for (PlacedLevel l : sheet.placed().levelsAt(p)) {
      boolean nearer =
          of == null
              || (l.floorZ() <= z
                  ? l.floorZ() > of.floorZ() || of.floorZ() > z
                  : l.floorZ() < of.floorZ());
      of = nearer ? l : of;
    }
    return of != null && of.name().equals(sheet.level().name());
  }
}
