package holloway.drawing;

import holloway.geometry.Point3;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * A run unfolded from end to end, to scale: what it goes along is laid out to the right, height is
 * upwards. Legs are numbered on the line and listed below; holes carry their labels.
 */
public final class RunElevation {
  private static final double TEXT = 150;

  /** Between a rise and what follows, so that up and down beside each other stay apart. */
  private static final double STEP = 60;

  private final Svg svg = new Svg();
  private final Labels labels = new Labels();
  private final Placed placed;
  private final UnitSystem system;
  private final UnaryOperator<String> words;
  private final Type type;

  /**
   * Millimetres of the house that one of the drawing shows: 1 unless the type would be too small.
   */
  private double shrunk = 1;

  /** How large the type is against the whole drawing. */
  public enum Type {
    /** At least 3 mm on a sheet of paper. */
    PAPER(8000, 2000, 800, 60),
    /** At least 13 pixels on a screen that is 290 wide. */
    NARROW(2300, 2300, 450, 25);

    private final double widest;
    private final double tallest;
    private final double sample;
    private final int letters;

    Type(double widest, double tallest, double sample, int letters) {
      this.widest = widest;
      this.tallest = tallest;
      this.sample = sample;
      this.letters = letters;
    }
  }

  private RunElevation(Placed placed, UnitSystem system, UnaryOperator<String> words, Type type) {
    this.placed = placed;
    this.system = system;
    this.words = words;
    this.type = type;
  }

  /**
   * By run id.
   *
   * @param words turns the plan's words for hollows (and {@code cabinet}) into those to be shown
   */
  public static Map<String, String> of(
      Plan plan, Placed placed, UnitSystem system, UnaryOperator<String> words, Type type) {
    Map<String, String> out = new TreeMap<>();
    plan.runs().stream()
        .filter(r -> !r.steps().isEmpty())
        .forEach(r -> out.put(r.id(), new RunElevation(placed, system, words, type).draw(r)));
    return out;
  }

  /** A row of the list: a leg with its number, or a hole with its label. */
  private record Row(String mark, String hollow, double m, double[] at) {
    boolean isHole() {
      return hollow.isEmpty();
    }
  }

  private String draw(Plan.PlannedRun run) {
    Rect own = Rect.of(unfold(run).stream().flatMap(List::stream).toList());
    shrunk = Math.max(1, Math.max(own.wide() / type.widest, own.high() / type.tallest));
    List<List<double[]>> lines = unfold(run);
    double x0 = lines.get(0).get(0)[0];
    List<double[]> end = lines.get(lines.size() - 1);
    double x1 = end.get(end.size() - 1)[0];
    lines.forEach(l -> l.forEach(p -> labels.mark(Rect.around(p[0], p[1], 30, 30))));
    svg.open("levels");
    levels(lines, x0, Math.max(x1, x0 + 1500));
    svg.close();
    svg.open("line");
    List<Row> legs = legs(run, lines);
    svg.close();
    svg.open("marks");
    ends(run, lines.get(0).get(0), end.get(end.size() - 1));
    marks(legs);
    svg.close();
    legend(legs, x0);
    return Paper.of(svg, run.id(), 60, LegLooks.style());
  }

  /** Each step's points on the sheet. */
  private List<List<double[]>> unfold(Plan.PlannedRun run) {
    List<List<double[]>> out = new ArrayList<>();
    double x = 0;
    int upright = 0;
    for (Plan.PlanStep s : run.steps()) {
      List<double[]> line = new ArrayList<>();
      Point3 before = s.path().get(0);
      line.add(new double[] {x, -before.z() / 1e6 / shrunk});
      for (Point3 p : s.path().subList(1, s.path().size())) {
        double along = Math.hypot(p.x() - before.x(), p.y() - before.y()) / 1e6;
        int way = along > 1 ? 0 : Long.signum(p.z() - before.z());
        if (way * upright < 0) {
          x += STEP;
          line.add(new double[] {x, -before.z() / 1e6 / shrunk});
        }
        upright = along > 1 ? 0 : way == 0 ? upright : way;
        x += along / shrunk;
        line.add(new double[] {x, -p.z() / 1e6 / shrunk});
        before = p;
      }
      out.add(line);
    }
    return out;
  }

  private void levels(List<List<double[]>> lines, double x0, double x1) {
    Rect all = Rect.of(lines.stream().flatMap(List::stream).toList());
    for (PlacedLevel l : placed.levels()) {
      double y = -l.floorZ() / 1e6 / shrunk;
      // The floor under the lowest point, and what the run comes near to.
      if (y < all.y0() - 300 / shrunk || y > all.y1() + 3000 / shrunk) {
        continue;
      }
      svg.line("level", new double[] {x0 - 300, y}, new double[] {x1 + 300, y});
      double wide = Labels.box(l.name(), 0, 0, TEXT, false).wide();
      svg.text("left name", l.name(), x0 - 300, y - TEXT * 0.7, TEXT, false);
      labels.take(new Rect(x0 - 300, y - TEXT * 1.2, x0 - 300 + wide, y - TEXT * 0.2));
    }
  }

  private List<Row> legs(Plan.PlannedRun run, List<List<double[]>> lines) {
    List<Row> out = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Plan.PlanStep s = run.steps().get(i);
      List<double[]> line = lines.get(i);
      String look = s.hollow().map(LegLooks::kind).orElse("leg");
      for (int p = 1; p < line.size(); p++) {
        svg.line(look, line.get(p - 1), line.get(p));
        labels.mark(Rect.of(List.of(line.get(p - 1), line.get(p))).grown(25));
      }
      add(out, s, middle(line));
    }
    return out;
  }

  /** Legs of one hollow that follow one another through its opening are one row. */
  private static void add(List<Row> out, Plan.PlanStep s, double[] at) {
    if (s.label().isPresent()) {
      out.add(new Row(s.label().get(), "", 0, at));
    } else if (s.kind().equals("leg")) {
      int last = out.size() - 1;
      String hollow = s.hollow().orElse("?");
      if (last >= 0 && out.get(last).hollow().equals(hollow)) {
        Row r = out.get(last);
        out.set(last, new Row(r.mark(), hollow, r.m() + s.m(), s.m() > r.m() ? at : r.at()));
      } else {
        long legs = out.stream().filter(r -> !r.isHole()).count();
        out.add(new Row(String.valueOf(legs + 1), hollow, s.m(), at));
      }
    }
  }

  /** Half-way along the line. */
  private static double[] middle(List<double[]> line) {
    double all = 0;
    for (int i = 1; i < line.size(); i++) {
      all += length(line, i);
    }
    double left = all / 2;
    for (int i = 1; i < line.size(); i++) {
      double m = length(line, i);
      if (m >= left && m > 0) {
        double t = left / m;
        double[] a = line.get(i - 1);
        double[] b = line.get(i);
        return new double[] {a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t};
      }
      left -= m;
    }
    return line.get(0);
  }

  private static double length(List<double[]> line, int i) {
    return Math.hypot(line.get(i)[0] - line.get(i - 1)[0], line.get(i)[1] - line.get(i - 1)[1]);
  }

  private void ends(Plan.PlannedRun run, double[] a, double[] b) {
    svg.rect("end", "", Rect.around(a[0], a[1], 110, 110));
    svg.circle("end", "", b, 60);
    place("strong", words.apply(run.from()), a);
    place("strong", words.apply(run.to()), b);
  }

  private void marks(List<Row> rows) {
    for (Row r : rows) {
      if (r.isHole()) {
        svg.circle("bore", r.mark, r.at, 55);
        place("strong", r.mark, r.at);
      }
    }
    rows.stream().filter(r -> !r.isHole()).forEach(r -> place("number", r.mark, r.at));
  }

  private void place(String kind, String text, double[] at) {
    labels
        .settle(Labels.around(text, at, TEXT, 70, 90))
        .ifPresent(
            r -> svg.text(kind, text, (r.x0() + r.x1()) / 2, (r.y0() + r.y1()) / 2, TEXT, false));
  }

  private void legend(List<Row> legs, double x0) {
    svg.open("legs");
    double y = svg.reach().y1() + 2 * TEXT;
    for (Row l : legs) {
      if (l.isHole()) {
        svg.circle("bore", l.mark, new double[] {x0 + type.sample / 2, y}, 55);
        svg.text(
            "left strong",
            l.mark + "   " + words.apply(height(l.at[1])),
            x0 + type.sample + 150,
            y,
            TEXT,
            false);
      } else {
        String length = words.apply(system.format(Length.mm(Math.round(l.m * 1000))));
        String text = l.mark + "   " + words.apply(l.hollow) + "   " + length;
        svg.line(LegLooks.kind(l.hollow), new double[] {x0, y}, new double[] {x0 + type.sample, y});
        for (String part : Labels.folded(text, type.letters)) {
          svg.text("left", part, x0 + type.sample + 150, y, TEXT, false);
          y += 1.2 * TEXT;
        }
        y -= 1.2 * TEXT;
      }
      y += 1.5 * TEXT;
    }
    svg.close();
  }

  /** Over the floor of the level it is on. */
  private String height(double y) {
    double up = -y * shrunk;
    PlacedLevel under = placed.levels().get(0);
    for (PlacedLevel l : placed.levels()) {
      boolean higher = l.floorZ() > under.floorZ() || under.floorZ() / 1e6 > up;
      under = l.floorZ() / 1e6 <= up && higher ? l : under;
    }
    double over = up - under.floorZ() / 1e6;
    return under.name() + " + " + system.format(Length.mm(Math.round(over)));
  }
}
