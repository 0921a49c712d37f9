package holloway.drawing;

import holloway.geometry.Point2;
import holloway.survey.PlacedPorch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The outlines of roofs over porches, dashed as what lies overhead is. */
final class Porches {
  private final Sheet sheet;
  private final List<PlacedPorch> here;
  private final Map<String, Rect> named = new LinkedHashMap<>();

  Porches(Sheet sheet) {
    this.sheet = sheet;
    this.here =
        PlacedPorch.of(sheet.placed()).stream()
            .filter(p -> sheet.isHere(p.porch().face().room()))
            .toList();
  }

  /** What dimensions have to stand clear of. */
  Rect around(Rect plan) {
    List<double[]> all = new ArrayList<>();
    all.add(new double[] {plan.x0(), plan.y0()});
    all.add(new double[] {plan.x1(), plan.y1()});
    here.forEach(p -> all.addAll(ring(p)));
    return Rect.of(all);
  }

  void shapes() {
    if (here.isEmpty()) {
      return;
    }
    sheet.svg().open("porches");
    for (PlacedPorch p : here) {
      List<double[]> ring = ring(p);
      sheet.svg().polygon("porch hidden", "porch " + p.porch().name(), ring);
      named.put("porch " + p.porch().name(), Rect.of(ring));
    }
    sheet.svg().close();
  }

  void labels() {
    named.forEach(
        (name, r) -> {
          double[] mid = {(r.x0() + r.x1()) / 2, (r.y0() + r.y1()) / 2};
          sheet.label("shaft", name, mid, 0, 150);
        });
  }

  private static List<double[]> ring(PlacedPorch p) {
    List<Point2> corners =
        List.of(
            p.frame().toWorld(0, 0, 0).plan(),
            p.frame().toWorld(p.length(), 0, 0).plan(),
            p.frame().toWorld(p.length(), p.out(), 0).plan(),
            p.frame().toWorld(0, p.out(), 0).plan());
    return corners.stream().map(Svg::at).toList();
  }
}
