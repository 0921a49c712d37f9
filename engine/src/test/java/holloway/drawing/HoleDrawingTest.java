package holloway.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.schedule.HoleView;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A hole 610 mm from a corner and 1200 mm over the floor, measured on the sheet. */
class HoleDrawingTest {
  private static final Pattern TAPE =
      Pattern.compile(
          "<line class=\"tape\" x1=\"(\\S+)\" y1=\"(\\S+)\" x2=\"(\\S+)\" y2=\"(\\S+)\"/>");
  private static final Pattern TEXT =
      Pattern.compile(
          "<text class=\"(\\S+)[^\"]*\" x=\"(\\S+)\" y=\"(\\S+)\"[^>]*font-size=\"(\\S+)\"[^>]*>([^<]*)<");

  private static HoleView face() {
    return new HoleView(
        "face",
        true,
        "east",
        "up",
        List.of(
            new HoleView.Shape(
                "stud",
                false,
                false,
                List.of(
                    new double[] {100, -1200},
                    new double[] {138, -1200},
                    new double[] {138, 200},
                    new double[] {100, 200}))),
        List.of(
            new HoleView.Tape(
                "the corner", 610_000_000L, new double[] {-610, 0}, new double[] {0, 0}),
            new HoleView.Tape(
                "the floor", 1_200_000_000L, new double[] {0, -1200}, new double[] {0, 0})),
        List.of(new double[] {0, 0}),
        22);
  }

  private static String drawn(HoleDrawing.Form form) {
    return HoleDrawing.of(
        "H7",
        List.of(face()),
        UnitSystem.METRIC,
        new HoleDrawing.Captions("from here", "from there", "nothing", t -> t),
        form);
  }

  /** Ends of every line that is drawn as a tape, longest first; marks at their ends are short. */
  private static List<double[]> tapes(String svg) {
    List<double[]> out = new ArrayList<>();
    for (MatchResult m : TAPE.matcher(svg).results().toList()) {
      double[] l = new double[4];
      for (int i = 0; i < 4; i++) {
        l[i] = Double.parseDouble(m.group(i + 1));
      }
      out.add(l);
    }
    out.sort((a, b) -> Double.compare(length(b), length(a)));
    return out;
  }

  private static double length(double[] l) {
    return Math.hypot(l[2] - l[0], l[3] - l[1]);
  }

  @Test
  void bothTapesAreDrawnToOneScaleAndEndAtTheHole() {
    for (HoleDrawing.Form form : HoleDrawing.Form.values()) {
      String svg = drawn(form);
      List<double[]> lines = tapes(svg);
      double[] tall = lines.get(0);
      double[] wide = lines.get(1);
      assertEquals(1200.0 / 610, length(tall) / length(wide), 0.003, form.name());
      assertEquals(tall[0], tall[2], 0.11, "upright");
      assertEquals(wide[1], wide[3], 0.11, "level");
      assertTrue(tall[1] > tall[3], "the floor is below");
      assertTrue(wide[0] < wide[2], "the corner is at the left");
      assertEquals(tall[2], wide[2], 0.11, "they meet at the hole");
      assertEquals(tall[3], wide[3], 0.11, "they meet at the hole");
      MatchResult hole =
          Pattern.compile("<circle class=\"hole\" cx=\"(\\S+)\" cy=\"(\\S+)\"")
              .matcher(svg)
              .results()
              .findFirst()
              .get();
      assertEquals(tall[2], Double.parseDouble(hole.group(1)), 0.11);
      assertEquals(tall[3], Double.parseDouble(hole.group(2)), 0.11);
    }
  }

  /** The bar's length on the sheet, at the scale of the tapes, is the length written at it. */
  @Test
  void theBarIsAsLongAsItSays() {
    for (HoleDrawing.Form form : HoleDrawing.Form.values()) {
      String svg = drawn(form);
      List<double[]> lines = tapes(svg);
      double scale = length(lines.get(0)) / 1200;
      String said =
          TEXT.matcher(svg)
              .results()
              .filter(m -> m.group(1).equals("bar"))
              .findFirst()
              .get()
              .group(5);
      double bar = length(lines.get(2));
      double mm =
          Double.parseDouble(said.replaceAll("[^0-9.]", "")) * (said.endsWith("mm") ? 1 : 1000);
      assertEquals(mm, bar / scale, 1.5, said);
    }
  }

  @Test
  void lengthsAreWrittenAndNothingOverlaps() {
    for (HoleDrawing.Form form : HoleDrawing.Form.values()) {
      List<Rect> boxes = new ArrayList<>();
      List<String> texts = new ArrayList<>();
      for (MatchResult m : TEXT.matcher(drawn(form)).results().toList()) {
        double x = Double.parseDouble(m.group(2));
        double y = Double.parseDouble(m.group(3));
        Rect box = Labels.box(m.group(5), x, y, Double.parseDouble(m.group(4)), false);
        boolean left = m.group(1).equals("left");
        boxes.add(left ? new Rect(x, box.y0(), x + box.wide(), box.y1()) : box);
        texts.add(m.group(5));
      }
      String corner = UnitSystem.METRIC.format(holloway.units.Length.mm(610));
      String floor = UnitSystem.METRIC.format(holloway.units.Length.mm(1200));
      assertTrue(texts.contains("a " + corner), texts.toString());
      assertTrue(texts.contains("b " + floor), texts.toString());
      assertTrue(texts.stream().anyMatch(t -> t.startsWith("H7")), texts.toString());
      for (int i = 0; i < boxes.size(); i++) {
        for (int j = i + 1; j < boxes.size(); j++) {
          assertEquals(
              0, boxes.get(i).shared(boxes.get(j)), 1e-6, texts.get(i) + " | " + texts.get(j));
        }
      }
    }
  }
}
