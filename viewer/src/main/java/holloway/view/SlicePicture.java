package holloway.view;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Sheet;
import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4f;

/** A slice of the house between two planes, seen square to it, with the heights of its storeys. */
final class SlicePicture {
  private final Model model;
  private final Slice slice;
  private final Page page;

  SlicePicture(Model model, Slice slice, Page page) {
    this.model = model;
    this.slice = slice;
    this.page = page;
  }

  Sheet sheet() {
    List<Vector3fc> all = new ArrayList<>();
    model.pieces().stream()
        .filter(p -> slice.touches(p.centre(), p.reach()))
        .forEach(
            p -> {
              all.add(new Vector3f(p.centre()).add(p.reach()));
              all.add(new Vector3f(p.centre()).sub(p.reach()));
            });
    model.cables().forEach(c -> inSlice(c, all));
    if (all.isEmpty()) {
      all.add(model.low());
      all.add(model.high());
    }
    Eye eye = Eye.on(all, slice.look(), slice.up(), page.model, 3, 0.07f);
    List<Vector4f> planes = slice.planes();
    Bodies bodies =
        new Painted(model, page.theme)
            .solidIn(slice, p -> !lies(p))
            .veiled(p -> slice.touches(p.centre(), p.reach()) && lies(p))
            .lit(s -> true)
            .cables(c -> true, 1)
            .bodies();
    Pane pane =
        new Pane(
            (int) page.model.x(),
            (int) page.model.y(),
            (int) page.model.width(),
            (int) page.model.height(),
            eye.view(),
            eye.projection(),
            List.copyOf(planes),
            bodies,
            page.leastPixels(model));
    marks(pane, eye, all);
    column();
    return new Sheet(page.width, page.height, page.theme, List.of(pane), page.canvas.marks());
  }

  /** The ends of what of a cable lies in the slice, so that one in the ground is seen as well. */
  private void inSlice(Cable c, List<Vector3fc> to) {
    for (int i = 0; i + 1 < c.points().size(); i++) {
      Vector3fc a = c.points().get(i);
      Vector3fc b = c.points().get(i + 1);
      float da = a.get(slice.axis()) - slice.at();
      float db = b.get(slice.axis()) - slice.at();
      float half = slice.thick() / 2;
      if (Math.min(da, db) > half || Math.max(da, db) < -half) {
        continue;
      }
      to.add(new Vector3f(a).lerp(b, part(da, db, half)));
      to.add(new Vector3f(b).lerp(a, part(db, da, half)));
    }
  }

  /** How far along from one end the slice begins, 0 where that end is within it. */
  private static float part(float from, float to, float half) {
    float edge = Math.max(-half, Math.min(half, from));
    return from == to ? 0 : (edge - from) / (to - from);
  }

  /** Board that lies flat in the slice would hide all that is behind it. */
  private boolean lies(Piece p) {
    Vector3f r = p.reach();
    return p.isSkin() && r.get(slice.axis()) <= Math.min(r.x, Math.min(r.y, r.z)) + 1e-4f;
  }

  private void marks(Pane pane, Eye eye, List<Vector3fc> all) {
    Placer placer = new Placer(page.model.inset(2), page.canvas.scale());
    placer.keepFree(page.scaleBar(eye));
    Marks marks = new Marks(page.canvas, pane, placer);
    if (slice.isUpright()) {
      heights(pane, all, placer);
    }
    for (RoomMark r : model.rooms()) {
      inside(r).ifPresent(p -> marks.name(p, r.name()));
    }
    new CutCables(page, pane).draw(model.cables(), slice);
    model.ends().stream().filter(e -> slice.holds(e.at())).forEach(marks::end);
    model.pins().stream().filter(p -> slice.holds(p.middle())).forEach(p -> marks.pin(p, false));
    model.cables().forEach(c -> marks.guessed(c, p -> slice.holds(p)));
    marks.finish();
  }

  /** A place in a room's part of the slice, half-way up; none where the slice misses the room. */
  private java.util.Optional<Vector3f> inside(RoomMark r) {
    Storey s = model.storeys().get(r.level());
    if (!slice.isUpright()) {
      boolean in = slice.at() > s.floor() && slice.at() < s.ceiling();
      return in ? java.util.Optional.of(new Vector3f(r.middle())) : java.util.Optional.empty();
    }
    int along = slice.axis() == 0 ? 1 : 0;
    List<Float> cross = new ArrayList<>();
    for (int i = 0; i < r.outline().size(); i++) {
      Vector3fc a = r.outline().get(i);
      Vector3fc b = r.outline().get((i + 1) % r.outline().size());
      float d0 = a.get(slice.axis()) - slice.at();
      float d1 = b.get(slice.axis()) - slice.at();
      if (d0 < 0 != d1 < 0) {
        float t = d0 / (d0 - d1);
        cross.add(a.get(along) + (b.get(along) - a.get(along)) * t);
      }
    }
    cross.sort(null);
    if (cross.size() < 2) {
      return java.util.Optional.empty();
    }
    Vector3f out = new Vector3f(r.middle());
    out.setComponent(slice.axis(), slice.at());
    out.setComponent(along, (cross.get(0) + cross.get(1)) / 2);
    out.z = r.middle().z() + (s.ceiling() - s.floor()) / 2;
    return java.util.Optional.of(out);
  }

  /** Floor to ceiling of each storey, at the left edge; of further parts at the right one. */
  private void heights(Pane pane, List<Vector3fc> all, Placer placer) {
    float left = Float.MAX_VALUE;
    float right = -Float.MAX_VALUE;
    for (Vector3fc p : all) {
      left = Math.min(left, pane.pixel(p).x);
      right = Math.max(right, pane.pixel(p).x);
    }
    float edge = page.size() * 2.4f;
    float first = Math.max(page.model.x() + edge, left - page.size() * 1.4f);
    float further = Math.min(page.model.right() - edge, right + page.size() * 1.4f);
    for (Storey s : model.storeys()) {
      boolean shown =
          model.rooms().stream().anyMatch(r -> r.level() == s.order() && inside(r).isPresent());
      if (!shown) {
        continue;
      }
      if (s.part() > 1) {
        continue; // a third edge there is not
      }
      float x = s.part() == 0 ? first : further;
      Vector3f c = new Vector3f(model.centre());
      float y0 = pane.pixel(new Vector3f(c.x, c.y, s.floor())).y;
      float y1 = pane.pixel(new Vector3f(c.x, c.y, s.ceiling())).y;
      if (y1 < page.model.y() || y0 > page.model.bottom()) {
        // The slice shows no part of a house that is so high or so deep.
        continue;
      }
      page.canvas.dimension(x, y0, x, y1, page.theme.quiet());
      String text = page.length(s.ceiling() - s.floor());
      Area box = page.canvas.label(text, page.size(), false);
      Area to =
          new Area(
              Math.max(2, x - box.width() / 2),
              (y0 + y1) / 2 - box.height() / 2,
              box.width(),
              box.height());
      page.canvas.plated(to, text, page.size(), false, page.quiet());
      placer.keepFree(to);
    }
  }

  private void column() {
    page.title(model.name() + ": slice", slice.says(page::length, page.up()));
    page.heading("Runs in this slice, and their way");
    int all = 0;
    int left = 0;
    for (Cable c : model.cables()) {
      boolean in = c.points().stream().anyMatch(slice::holds) || crosses(c);
      all += in ? 1 : 0;
      if (in && page.room(11)) {
        page.run(c, c.length());
      } else if (in) {
        left++;
      }
    }
    page.more(left, all);
    if (all == 0) {
      page.words("none", page.quiet());
    }
    page.heading("Signs");
    CutCables.sign(page);
    Signs.holes(page);
    Signs.ends(page);
    Signs.lit(page);
    Signs.faint(page);
  }

  private boolean crosses(Cable c) {
    for (int i = 0; i + 1 < c.points().size(); i++) {
      float a = c.points().get(i).get(slice.axis()) - slice.at();
      float b = c.points().get(i + 1).get(slice.axis()) - slice.at();
      if (a < 0 != b < 0) {
        return true;
      }
    }
    return false;
  }
}
