package holloway.drawing;

import holloway.schedule.HoleView;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The views of one hole on one sheet: above from the drill's side, below from where the bit comes
 * out; the face that is bored, and a section through the bore beside it (for paper) or below it
 * (for a narrow screen). Each is to a scale of its own, which a bar shows. Tape lines carry letters
 * and lengths; the landmarks stand below.
 */
public final class HoleDrawing {
  private static final double WIDE = 900;
  private static final double GAP = 60;

  private static final String STYLE =
      """
      polygon,line,circle{stroke-width:2}.cut{fill:#d0d0d0}.near{fill:#8c8c8c}
      .bored{fill:url(#bored);stroke-width:3.5}.back{fill:#fff;stroke-width:1.2}
      .tape{stroke-width:4}.axis{stroke-width:2.5;stroke-dasharray:14 5 3 5}
      .hole{fill:#fff;stroke-width:4}.halo{stroke:#fff;stroke-width:9}
      .plate{fill:#fff;stroke:none}.panel{stroke-width:1.5}
      """;

  private static final String PATTERN =
      """
      <defs><pattern id="bored" width="12" height="12" patternUnits="userSpaceOnUse" \
      patternTransform="rotate(45)"><path d="M0 0H12V12H0Z" fill="#fff"/>\
      <path d="M0 0V12" stroke="#000" stroke-width="2.4"/></pattern></defs>
      """;

  private final Svg svg = new Svg();
  private final UnitSystem system;
  private final Captions captions;
  private final Form form;

  /** The most that a panel takes up. */
  private final double high;

  /** Of two panels side by side a fiftieth, 3.4 mm on paper; of a narrow one 15 pixels in 290. */
  private final double type;

  private final double line;

  /**
   * Words of a sheet.
   *
   * @param drillSide over the views from where the drill stands; {@code farSide} over the others
   * @param nothingSeen in a view without a tape line
   * @param words puts landmarks, lengths and directions into the language of the captions
   */
  public record Captions(
      String drillSide, String farSide, String nothingSeen, UnaryOperator<String> words) {}

  /** What a drawing is for. */
  public enum Form {
    /** On its own: what is taped from is listed. */
    SHEET,
    /** On the hole's card, which says what is taped from. */
    CARD,
    /** On its card on a narrow screen: one view below the other. */
    NARROW
  }

  private HoleDrawing(UnitSystem system, Captions captions, Form form) {
    this.system = system;
    this.captions = captions;
    this.form = form;
    this.high = form == Form.NARROW ? 600 : 400;
    this.type = form == Form.NARROW ? 46 : 36;
    this.line = 1.3 * type;
  }

  public static String of(
      String label, List<HoleView> views, UnitSystem system, Captions captions, Form form) {
    HoleDrawing d = new HoleDrawing(system, captions, form);
    double y = 0;
    for (boolean drill : new boolean[] {true, false}) {
      List<HoleView> here = views.stream().filter(v -> v.drillSide() == drill).toList();
      y = here.isEmpty() ? y : d.row(label, here, y) + GAP;
    }
    String text = Paper.of(d.svg, label, 12, STYLE);
    return text.replaceFirst("</style>\n", "</style>\n" + PATTERN);
  }

  /** The foot of the row. */
  private double row(String label, List<HoleView> views, double top) {
    String side = views.get(0).drillSide() ? captions.drillSide() : captions.farSide();
    double y = lines("left strong", label + "   " + side, top + type, sheetWide(views));
    double x = 0;
    boolean narrow = form == Form.NARROW;
    double row = views.stream().mapToDouble(this::high).max().orElse(high);
    for (HoleView v : views) {
      double tall = narrow ? high(v) : row;
      panel(v, new Rect(x, y + line, x + WIDE, y + line + tall));
      x += narrow ? 0 : WIDE + GAP;
      y += narrow ? tall + 1.6 * line : 0;
    }
    y += narrow ? 0 : row + 1.8 * line;
    List<HoleView.Tape> tapes = views.get(0).tapes();
    for (HoleView.Tape t : form == Form.SHEET ? tapes : List.<HoleView.Tape>of()) {
      String text =
          letter(t, views)
              + "   "
              + captions.words().apply(system.format(new Length(t.nm())) + " from " + t.landmark());
      y = lines("left", text, y, sheetWide(views));
    }
    y = tapes.isEmpty() ? lines("left", captions.nothingSeen(), y, sheetWide(views)) : y;
    return y - line / 2;
  }

  private double sheetWide(List<HoleView> views) {
    return form == Form.NARROW ? WIDE : views.size() * (WIDE + GAP) - GAP;
  }

  /** Text in lines no wider than this; where the next line goes. */
  private double lines(String kind, String text, double y, double wide) {
    for (String part : Labels.folded(text, (int) (wide / type / Labels.LETTER))) {
      svg.text(kind, part, 0, y, type, false);
      y += line;
    }
    return y;
  }

  private String length(long nm) {
    return captions.words().apply(system.format(new Length(nm)));
  }

  /** By its place among the tape lines of the face view. */
  private static String letter(HoleView.Tape t, List<HoleView> views) {
    List<String> all = views.get(0).tapes().stream().map(HoleView.Tape::landmark).toList();
    return String.valueOf((char) ('a' + Math.max(0, all.indexOf(t.landmark()))));
  }

  /** From millimetres round the hole to the sheet. */
  private record Fit(double x, double y, double scale) {
    double[] at(double[] p) {
      return new double[] {x + p[0] * scale, y - p[1] * scale};
    }
  }

  private static Rect reach(HoleView v) {
    List<double[]> all = new ArrayList<>(v.bore());
    v.solids().forEach(s -> all.addAll(s.corners()));
    v.tapes().forEach(t -> all.addAll(List.of(t.from(), t.to())));
    return Rect.of(all).grown(20);
  }

  /** What a view needs when it is as wide as its panel, within bounds. */
  private double high(HoleView v) {
    Rect r = reach(v);
    return Math.min(high, Math.max(6 * type, r.high() * WIDE / r.wide()));
  }

  private void panel(HoleView v, Rect at) {
    Rect r = reach(v);
    double scale = Math.min(WIDE / r.wide(), at.high() / r.high());
    double x0 = at.x0() + (WIDE - r.wide() * scale) / 2 - r.x0() * scale;
    double y0 = at.y0() + (at.high() - r.high() * scale) / 2 + r.y1() * scale;
    Fit fit = new Fit(x0, y0, scale);
    svg.open(v.kind());
    solids(v, fit);
    bore(v, fit);
    tapes(v, fit, at);
    svg.rect("panel", "", at);
    double over = at.y0() - line / 2;
    String axes = captions.words().apply("↑ " + v.up() + "   → " + v.right());
    svg.text("left", axes, at.x0(), over, type, false);
    bar(fit.scale(), at.x1() - 12, over);
    svg.close();
  }

  private void solids(HoleView v, Fit fit) {
    boolean section = v.kind().equals("section");
    for (int pass = 0; pass < 3; pass++) {
      for (HoleView.Shape s : v.solids()) {
        int turn = s.near() ? 2 : s.bored() ? 1 : 0;
        String kind = s.near() ? "near" : s.bored() ? "bored" : section ? "cut" : "back";
        if (turn == pass) {
          svg.polygon(kind, s.what(), s.corners().stream().map(fit::at).toList());
        }
      }
    }
  }

  private void bore(HoleView v, Fit fit) {
    double half = Math.max(v.diameterMm() / 2 * fit.scale(), 5);
    double[] a = fit.at(v.bore().get(0));
    if (v.bore().size() == 1) {
      svg.circle("hole", "", a, half);
      svg.line(
          "axis", new double[] {a[0] - half - 14, a[1]}, new double[] {a[0] + half + 14, a[1]});
      svg.line(
          "axis", new double[] {a[0], a[1] - half - 14}, new double[] {a[0], a[1] + half + 14});
      return;
    }
    double[] b = fit.at(v.bore().get(1));
    double n = Math.max(1e-9, Math.hypot(b[0] - a[0], b[1] - a[1]));
    double dx = (b[0] - a[0]) / n;
    double dy = (b[1] - a[1]) / n;
    svg.polygon(
        "hole",
        "",
        List.of(
            new double[] {a[0] - dy * half, a[1] + dx * half},
            new double[] {b[0] - dy * half, b[1] + dx * half},
            new double[] {b[0] + dy * half, b[1] - dx * half},
            new double[] {a[0] + dy * half, a[1] - dx * half}));
    svg.line(
        "axis",
        new double[] {a[0] - dx * 30, a[1] - dy * 30},
        new double[] {b[0] + dx * 30, b[1] + dy * 30});
  }

  private void tapes(HoleView v, Fit fit, Rect panel) {
    Labels labels = new Labels();
    double[] hole = fit.at(v.bore().get(0));
    labels.take(Rect.around(hole[0], hole[1], 50, 50));
    for (int i = 0; i < v.tapes().size(); i++) {
      HoleView.Tape t = v.tapes().get(i);
      double[] a = fit.at(t.from());
      double[] b = fit.at(t.to());
      svg.line("halo", a, b);
      svg.line("tape", a, b);
      tick(a, b);
      tick(b, a);
      String name = v.kind().equals("face") ? String.valueOf((char) ('a' + i)) + " " : "";
      String text = name + length(t.nm());
      double[] mid = {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2};
      labels.mark(Rect.of(List.of(a, b)).grown(4));
      List<Rect> places =
          Labels.around(text, mid, type, 8, 14).stream().filter(panel::holds).toList();
      labels.settle(places).ifPresent(r -> plate(r, text));
    }
  }

  private void plate(Rect r, String text) {
    svg.rect("plate", "", r);
    svg.text("strong", text, (r.x0() + r.x1()) / 2, (r.y0() + r.y1()) / 2, type, false);
  }

  /** Across the line at its end. */
  private void tick(double[] at, double[] other) {
    double n = Math.max(1e-9, Math.hypot(other[0] - at[0], other[1] - at[1]));
    double dx = (other[0] - at[0]) / n * 11;
    double dy = (other[1] - at[1]) / n * 11;
    svg.line("tape", new double[] {at[0] - dy, at[1] + dx}, new double[] {at[0] + dy, at[1] - dx});
  }

  /** A round length of this scale. */
  private void bar(double scale, double right, double y) {
    boolean feet = system == UnitSystem.FT_IN;
    double unit = feet ? 304.8 : 100;
    double many = 1;
    while (unit * many * scale > 240 && many > 0.1) {
      many /= 2;
    }
    while (unit * many * 2 * scale < 170) {
      many *= 2;
    }
    double wide = unit * many * scale;
    String text = captions.words().apply(system.format(Length.mm(unit * many)));
    double room = Labels.box(text, 0, 0, type, false).wide();
    svg.line("tape", new double[] {right - wide, y}, new double[] {right, y});
    tick(new double[] {right - wide, y}, new double[] {right, y});
    tick(new double[] {right, y}, new double[] {right - wide, y});
    svg.text("bar", text, right - wide - 20 - room / 2, y, type, false);
  }
}
