package holloway.drawing;

import holloway.geometry.Point2;
import holloway.house.Side;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Dimension chains outside the plan: the faces one meets from each side, then the whole. */
final class Chains {
  private static final double FIRST = 900;
  private static final double STEP = 380;
  private final Sheet sheet;
  private final Rect plan;
  private final Rect clear;

  /**
   * @param plan the house, which is what is dimensioned
   * @param clear what the chains stand clear of: the house and what is drawn beside it
   */
  Chains(Sheet sheet, Rect plan, Rect clear) {
    this.sheet = sheet;
    this.plan = plan;
    this.clear = clear;
  }

  /** A face's stretch along its side and how far it lies out, nanometres. */
  private record Face(long lo, long hi, long out) {}

  void draw() {
    sheet.svg().open("dimensions");
    for (Side side : Side.values()) {
      chain(side, seen(side));
    }
    whole(Side.SOUTH, Math.round(plan.x0() * 1e6), Math.round(plan.x1() * 1e6));
    whole(Side.WEST, Math.round(-plan.y1() * 1e6), Math.round(-plan.y0() * 1e6));
    sheet.svg().close();
  }

  /** Of all faces that look to a side, the stretches that nothing lies before. */
  private List<Face> seen(Side side) {
    List<Face> all = new ArrayList<>();
    for (PlacedRoom r : sheet.rooms()) {
      for (Placed.Segment f : sheet.placed().listFaces(r.name(), side)) {
        boolean ew = side.runsEastWest();
        long across = ew ? (f.start().y() + f.end().y()) / 2 : (f.start().x() + f.end().x()) / 2;
        long out = side == Side.NORTH || side == Side.EAST ? across : -across;
        all.add(new Face(along(ew, f.start()), along(ew, f.end()), out));
      }
    }
    TreeSet<Long> cuts = new TreeSet<>();
    all.forEach(f -> cuts.addAll(List.of(f.lo, f.hi)));
    List<Face> out = new ArrayList<>();
    Face last = null;
    for (Long lo : cuts) {
      Long hi = cuts.higher(lo);
      Face f = hi == null ? null : outermost(all, lo, hi);
      if (f != null && f.equals(last)) {
        Face before = out.remove(out.size() - 1);
        out.add(new Face(before.lo, hi, f.out));
      } else if (f != null) {
        out.add(new Face(lo, hi, f.out));
      }
      last = f;
    }
    return out;
  }

  private static long along(boolean eastWest, Point2 p) {
    return eastWest ? p.x() : p.y();
  }

  private static Face outermost(List<Face> all, long lo, long hi) {
    Face best = null;
    for (Face f : all) {
      if (f.lo <= lo && f.hi >= hi && (best == null || f.out > best.out)) {
        best = f;
      }
    }
    return best;
  }

  private void chain(Side side, List<Face> faces) {
    for (Face f : faces) {
      dimension("chain", side, f.lo, f.hi, FIRST);
    }
  }

  private void whole(Side side, long lo, long hi) {
    dimension("whole", side, lo, hi, FIRST + STEP * sheet.type());
  }

  private void dimension(String kind, Side side, long lo, long hi, double off) {
    double[] a = point(side, lo, off);
    double[] b = point(side, hi, off);
    sheet.svg().line(kind, a, b);
    sheet.labels().mark(Rect.of(List.of(a, b)).grown(20));
    tick(a);
    tick(b);
    String text = sheet.tape(hi - lo);
    boolean upright = !side.runsEastWest();
    double lift = -sheet.plain() * 0.8;
    double x = (a[0] + b[0]) / 2 + (upright ? lift : 0);
    double y = (a[1] + b[1]) / 2 + (upright ? 0 : lift);
    for (double size : new double[] {sheet.plain(), Sheet.PLAIN, Sheet.SMALL, 90, 70}) {
      Rect box = Labels.box(text, x, y, size, upright);
      double length = upright ? box.high() : box.wide();
      if (length <= (hi - lo) / 1e6 + 120 && sheet.labels().isFree(box)) {
        sheet.labels().take(box);
        sheet.svg().text("dim", text, x, y, size, upright);
        return;
      }
    }
  }

  private void tick(double[] p) {
    sheet
        .svg()
        .line("tick", new double[] {p[0] - 50, p[1] + 50}, new double[] {p[0] + 50, p[1] - 50});
  }

  private double[] point(Side side, long nm, double off) {
    double mm = nm / 1e6;
    return switch (side) {
      case SOUTH -> new double[] {mm, clear.y1() + off};
      case NORTH -> new double[] {mm, clear.y0() - off};
      case WEST -> new double[] {clear.x0() - off, -mm};
      case EAST -> new double[] {clear.x1() + off, -mm};
    };
  }
}
