package holloway.desk;

import holloway.look.Area;
import holloway.look.Bodies;
import holloway.look.Canvas;
import holloway.look.Mark;
import holloway.look.Measure;
import holloway.look.Pane;
import holloway.look.Placer;
import holloway.look.Rgb;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.plan.Plan;
import holloway.session.Choice;
import holloway.session.Peel;
import holloway.session.Shown;
import holloway.view.Cable;
import holloway.view.HoleSheet;
import holloway.view.LiveMarks;
import holloway.view.Model;
import holloway.view.Orbit;
import holloway.view.Painted;
import holloway.view.Piece;
import holloway.view.Pin;
import holloway.view.Slice;
import holloway.view.Space;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.joml.Vector4f;

/** Makes the sheet of the window out of a model and what is shown of it. */
final class Seen {
  private final Model model;
  private final Shown shown;
  private final Theme theme;

  Seen(Model model, Shown shown) {
    this.model = model;
    this.shown = shown;
    this.theme = shown.light() ? Theme.LIGHT : Theme.DUSK;
  }

  Theme theme() {
    return theme;
  }

  private boolean level(int order) {
    return model.storeys().stream()
        .filter(s -> s.order() == order)
        .noneMatch(s -> shown.hiddenLevels().contains(s.name()));
  }

  /** Whether a piece is drawn at all, as a veil or more. */
  boolean isShown(Piece p) {
    boolean sheet = p.isSkin() || isDeckSheet(p);
    return level(p.level()) && !(sheet && shown.peel() == Peel.FRAMING);
  }

  /** Whether a piece hides what lies behind it. */
  boolean hides(Piece p) {
    return isShown(p) && !(shown.peel() == Peel.VEILED && (p.isSkin() || isDeckSheet(p)));
  }

  /** Whether a hollow is lit. */
  boolean isLit(Space s) {
    return s.isLit() && isShown(s.centre()) && isWanted(s);
  }

  /** Whether a point belongs to a level that is shown. */
  boolean isShown(Vector3fc p) {
    return !shown.hiddenLevels().contains(model.storeyAt(p).name());
  }

  /** What is drawn of the house; changes only with what is shown, never with the eye. */
  Bodies bodies() {
    Painted p = new Painted(model, theme).choosing(shown.choice().name());
    if (shown.peel() == Peel.FINISHED) {
      p.solid(x -> level(x.level()));
    } else {
      p.solid(x -> level(x.level()) && !x.isSkin() && !isDeckSheet(x));
      if (shown.peel() == Peel.VEILED) {
        p.veiled(x -> level(x.level()) && (x.isSkin() || isDeckSheet(x)));
      }
    }
    p.lit(s -> isShown(s.centre()) && isWanted(s));
    p.cables(this::isWanted, shown.fat());
    return p.bodies();
  }

  /** Boards under foot hide as much as finishes do. */
  static boolean isDeckSheet(Piece p) {
    return switch (p.kind()) {
      case SUBFLOOR -> true;
      default -> false;
    };
  }

  private Optional<String> run() {
    return shown.choice() instanceof Choice.Run r ? Optional.of(r.id()) : Optional.empty();
  }

  private boolean isWanted(Cable c) {
    if (shown.choice() instanceof Choice.Hole h) {
      return model.findPin(h.id()).map(p -> p.runs().contains(c.id())).orElse(true);
    }
    return run().map(c.id()::equals).orElse(true);
  }

  private boolean isWanted(Space s) {
    return run().map(s.runs()::contains).orElse(true);
  }

  /** What a slice leaves, in metres. */
  Optional<Slice> slice() {
    return shown
        .cut()
        .map(c -> new Slice(c.way().ordinal(), (float) (c.at() / 1e9), (float) (c.thick() / 1e9)));
  }

  Pane pane(Bodies bodies, Orbit orbit, Area area, float scale) {
    List<Vector4f> cuts = slice().map(Slice::planes).orElse(List.of());
    return new Pane(
        (int) area.x(),
        (int) area.y(),
        (int) area.width(),
        (int) area.height(),
        orbit.view(),
        orbit.projection(area.width(), area.height()),
        List.copyOf(cuts),
        bodies,
        3.2f * scale);
  }

  private boolean inSlice(Vector3f p) {
    return slice().map(s -> s.contains(p)).orElse(true);
  }

  /** Whether a pin is shown: on a level and in a slice that are. */
  boolean isShown(Pin p) {
    boolean mine = run().map(p.runs()::contains).orElse(true);
    return mine && isShown(p.middle()) && inSlice(p.middle());
  }

  /** The window that marks are put on. */
  record Place(int width, int height, float scale, Measure measure) {}

  Sheet sheet(
      Pane pane,
      Place on,
      List<Plan.FindingLine> findings,
      Optional<HoleSheet> hole,
      Optional<Vector3f> place) {
    Canvas canvas = new Canvas(theme, on.measure, on.scale);
    Area free = new Area(pane.x(), pane.y(), pane.width(), pane.height());
    Placer placer = new Placer(free.inset(2), on.scale);
    LiveMarks marks = new LiveMarks(canvas, pane, placer);
    place.ifPresent(p -> here(canvas, pane, p));
    model.ends().stream()
        .filter(e -> isShown(e.at()) && inSlice(new Vector3f(e.at())))
        .forEach(marks::end);
    for (Pin p : model.pins()) {
      boolean chosen = shown.choice().equals(new Choice.Hole(p.id()));
      if (chosen || isShown(p)) {
        marks.pin(p, chosen);
      }
    }
    model.cables().stream()
        .filter(this::isWanted)
        .forEach(c -> marks.guessed(c, p -> isShown(p) && inSlice(new Vector3f(p))));
    marks.findings(findings, p -> isShown(p) && inSlice(new Vector3f(p)));
    marks.finish();
    hole.ifPresent(marks::tapes);
    model.rooms().stream()
        .filter(r -> level(r.level()) && inSlice(new Vector3f(r.middle()).add(0, 0, 0.5f)))
        .forEach(r -> marks.name(r.middle(), r.name()));
    return new Sheet(on.width, on.height, theme, List.of(pane), canvas.marks());
  }

  /** Where the person is on their walk. */
  private void here(Canvas c, Pane pane, Vector3f at) {
    Vector3f p = pane.pixel(at);
    float r = 13 * c.scale();
    c.add(new Mark.Ring(p.x, p.y, r, 3 * c.scale(), Rgb.opaque(theme.glow())));
    c.add(new Mark.Ring(p.x, p.y, r + 3 * c.scale(), 1.5f * c.scale(), Rgb.opaque(theme.plate())));
  }
}
