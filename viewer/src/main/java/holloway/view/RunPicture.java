package holloway.view;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Rgb;
import holloway.look.Sheet;
import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** One run from end to end in the timber that it passes, its steps numbered and told beside it. */
final class RunPicture {
  /** Timber farther from the run than this is left out. */
  private static final float NEAR = 0.16f;

  /** A room no farther than this from the run is one that it passes. */
  private static final float BESIDE = 0.3f;

  private final Model model;
  private final Cable cable;
  private final String cut;
  private final List<String> steps;
  private final Page page;

  /**
   * @param cut the length to cut, in words: the way alone would be too short
   * @param steps what is done, in words, one for each step of the run
   */
  RunPicture(Model model, Cable cable, String cut, List<String> steps, Page page) {
    this.model = model;
    this.cable = cable;
    this.cut = cut;
    this.steps = steps;
    this.page = page;
  }

  Sheet sheet() {
    Vector3f look = new Vector3f(-0.50f, 0.70f, -0.52f);
    Eye eye = Eye.on(cable.points(), look, new Vector3f(0, 0, 1), page.model, 3, 0.13f);
    Bodies bodies =
        new Painted(model, page.theme)
            .solidNear(p -> !isSheet(p), cable, NEAR)
            .lit(s -> s.runs().contains(cable.id()))
            .cable(cable, 0, Integer.MAX_VALUE, 1, 1)
            .bodies();
    Pane pane =
        new Pane(
            (int) page.model.x(),
            (int) page.model.y(),
            (int) page.model.width(),
            (int) page.model.height(),
            eye.view(),
            eye.projection(),
            List.of(),
            bodies,
            7 * page.canvas.scale());
    outlines(pane);
    marks(pane, eye);
    column();
    return new Sheet(page.width, page.height, page.theme, List.of(pane), page.canvas.marks());
  }

  /** Boards and slabs would hide the run from above. */
  private static boolean isSheet(Piece p) {
    return switch (p.kind()) {
      case SUBFLOOR, SLAB, LINING, CLADDING, NOT_OURS -> true;
      default -> false;
    };
  }

  /** The rooms' floors as lines, for where one is. */
  private void outlines(Pane pane) {
    for (RoomMark r : rooms()) {
      int colour = Rgb.with(page.theme.ink(), 0.20);
      for (int i = 0; i < r.outline().size(); i++) {
        Vector3f a = pane.pixel(r.outline().get(i));
        Vector3f b = pane.pixel(r.outline().get((i + 1) % r.outline().size()));
        float w = 1.2f * page.canvas.scale();
        page.model
            .part(a.x, a.y, b.x, b.y)
            .ifPresent(l -> page.canvas.add(new Mark.Line(l[0], l[1], l[2], l[3], w, colour)));
      }
    }
  }

  /** Rooms of the levels that the run passes; those of others would only lie over them. */
  private List<RoomMark> rooms() {
    List<Integer> passed =
        model.storeys().stream()
            .filter(s -> cable.points().stream().anyMatch(p -> model.storeyAt(p).equals(s)))
            .map(Storey::order)
            .toList();
    return model.rooms().stream().filter(r -> passed.contains(r.level())).toList();
  }

  /** Of a room that lies over or under the run's level a name would be read as of this one. */
  private boolean isPassed(RoomMark r) {
    for (int i = 0; i + 1 < cable.points().size(); i++) {
      Vector3fc a = cable.points().get(i);
      Vector3fc b = cable.points().get(i + 1);
      int parts = 1 + (int) (a.distance(b) / BESIDE);
      for (int k = 0; k <= parts; k++) {
        Vector3f p = new Vector3f(a).lerp(b, k / (float) parts);
        if (model.storeyAt(p).order() == r.level() && r.away(p) < BESIDE) {
          return true;
        }
      }
    }
    return false;
  }

  private void marks(Pane pane, Eye eye) {
    Placer placer = new Placer(page.model.inset(2), page.canvas.scale());
    placer.keepFree(page.scaleBar(eye));
    page.north(pane, placer, page.model, cable.points().get(0));
    Marks marks = new Marks(page.canvas, pane, placer);
    model.pins().stream()
        .filter(p -> p.runs().contains(cable.id()))
        .forEach(p -> marks.pin(p, true));
    for (EndMark e : model.ends()) {
      boolean own =
          e.at().distance(cable.points().get(0)) < 0.01f
              || e.at().distance(cable.points().get(cable.points().size() - 1)) < 0.01f;
      if (own) {
        marks.end(e);
      }
    }
    marks.guessed(cable, p -> true);
    numbers(pane, placer);
    marks.finish();
    rooms().stream().filter(this::isPassed).forEach(r -> marks.name(r.middle(), r.name()));
  }

  /** The number of each leg at its middle. */
  private void numbers(Pane pane, Placer placer) {
    List<Runnable> draw = new ArrayList<>();
    for (int s = 0; s < steps.size(); s++) {
      if (steps.get(s).isEmpty()) {
        continue;
      }
      Vector3f at = pane.pixel(cable.middle(s));
      String text = String.valueOf(number(s));
      float size = page.size();
      float r = size * 0.72f;
      placer.keepFree(new Area(at.x - 2, at.y - 2, 4, 4));
      draw.add(
          () -> {
            Area to = placer.beside(at.x, at.y, 2 * r, 2 * r, 3 * page.canvas.scale());
            page.canvas.leader(at.x, at.y, to, page.theme.run(cable.number()));
            ball(to.midX(), to.midY(), r, text);
          });
    }
    draw.forEach(Runnable::run);
  }

  private void ball(float x, float y, float r, String text) {
    page.canvas.add(new Mark.Disc(x, y, r, Rgb.opaque(page.theme.plate())));
    page.canvas.add(
        new Mark.Ring(
            x, y, r, 1.6f * page.canvas.scale(), Rgb.opaque(page.theme.run(cable.number()))));
    page.canvas.centred(x, y, text, page.size() * 0.95f, true, page.ink());
  }

  private int number(int step) {
    int n = 0;
    for (int i = 0; i <= step; i++) {
      n += steps.get(i).isEmpty() ? 0 : 1;
    }
    return n;
  }

  private void column() {
    page.title(
        model.name() + ": " + cable.id(),
        "way %s, cut length %s; seen from the south-east and above".formatted(cable.length(), cut));
    page.run(cable, "");
    page.heading("The way");
    for (int s = 0; s < steps.size(); s++) {
      if (!page.room(4)) {
        page.words("and on to " + number(steps.size() - 1) + ": see the work pack", page.quiet());
        break;
      }
      if (!steps.get(s).isEmpty()) {
        page.paragraph(number(s) + ".  " + steps.get(s), page.ink(), 0);
      }
    }
    if (page.room(4)) {
      page.heading("Signs");
      Signs.holes(page);
      Signs.lit(page);
      Signs.faint(page);
      page.northWords();
    }
  }
}
