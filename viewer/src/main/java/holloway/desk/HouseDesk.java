package holloway.desk;

import holloway.look.Area;
import holloway.look.Canvas;
import holloway.look.Key;
import holloway.look.Mark;
import holloway.look.Measure;
import holloway.look.Pane;
import holloway.look.Panels;
import holloway.look.Rgb;
import holloway.look.Session;
import holloway.look.Sheet;
import holloway.pipeline.LiveHouse;
import holloway.session.Choice;
import holloway.session.Work;
import holloway.view.NorthMark;
import holloway.view.Orbit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** The viewer of one house file: keys, pointer, panels, plans made anew, files looked after. */
public final class HouseDesk implements Session {
  private final Table table;
  private final Acts acts;
  private final Board board;
  private final HouseFiles files;
  private final LongSupplier clock;
  private final Consumer<String> told;
  private final Consumer<byte[]> shots;
  private String lastTold = "";
  private int width = 1280;
  private int height = 800;
  private float scale = 1;
  private int drawnVersion = -1;
  private Sheet sheet;
  private final Sight now = new Sight();
  private final Sight before = new Sight();
  private final Rehearsal rehearsal;
  private boolean wasPlanning;
  private boolean shotWanted;
  private float clickedX = -100;
  private float clickedY = -100;

  /**
   * @param sketching makes sketches of plans; {@code judging} all that may take longer
   * @param told is given the state as a line of JSON after every frame that changed it
   * @param shots is given a picture of the window whenever the state changed
   * @param clock nanoseconds that only grow
   */
  public record Around(
      Executor sketching,
      Executor judging,
      LongSupplier clock,
      Consumer<String> told,
      Consumer<byte[]> shots) {}

  public HouseDesk(Path file, LiveHouse house, LiveHouse.Judged judged, Around around) {
    this.table = new Table(new Work(house, judged, around.sketching(), around.judging()));
    table.beside = this::beside;
    this.files = new HouseFiles(file, table);
    this.acts = new Acts(table, files::save);
    this.board = new Board(table, acts);
    this.clock = around.clock();
    this.rehearsal = new Rehearsal(table.work, around.judging());
    this.told = around.told();
    this.shots = around.shots();
    look();
  }

  /**
   * From now on slides are tried while nothing else is to be done, so that the first that a person
   * asks for is no slower than the next.
   */
  public void rehearse() {
    rehearsal.begin();
  }

  /** The table, for tests. */
  Table table() {
    return table;
  }

  /** The pane as it is now. */
  Pane pane() {
    look();
    return now.pane();
  }

  @Override
  public void resized(int w, int h, float s) {
    width = w;
    height = h;
    scale = s;
    table.version++;
  }

  @Override
  public void key(Key key, boolean shift, boolean control) {
    acts.key(key, shift, control);
    table.version++;
  }

  @Override
  public void click(float x, float y) {
    look();
    Seen seen = new Seen(table.model(), table.shown);
    List<Choice> all = table.pointed().at(seen, now.pane(), x, y, scale * type());
    // Clicked again in one place: what lies behind.
    boolean again = Math.hypot(x - clickedX, y - clickedY) < 4 * scale && !all.isEmpty();
    int before = again ? all.indexOf(table.shown.choice()) : -1;
    Choice c = all.isEmpty() ? Choice.NONE : all.get((before + 1) % all.size());
    clickedX = x;
    clickedY = y;
    table.show(table.shown.choosing(c));
  }

  private float type() {
    return table.shown.typeScale();
  }

  @Override
  public void drag(float dx, float dy, boolean second) {
    table.see(
        second
            ? table.orbit.shifted(-dx / height, dy / height)
            : table.orbit.turned(-dx / height * 2.5f, dy / height * 2.5f));
  }

  @Override
  public void wheel(float steps, float x, float y) {
    table.see(table.orbit.nearer((float) Math.pow(1.12, steps)));
  }

  @Override
  public void tick() {
    table.take();
    if (wasPlanning != table.work.isPlanning()) {
      wasPlanning = table.work.isPlanning();
      table.version++;
    }
    files.look(clock.getAsLong());
    rehearsal.goOn();
  }

  @Override
  public boolean isWaiting() {
    return table.work.isPlanning() || rehearsal.isOn();
  }

  @Override
  public boolean isStale() {
    return drawnVersion != table.version;
  }

  private void look() {
    Area all = free();
    Area own = table.both ? all.half(1) : all;
    // Half as wide a part shows as much of the house from twice as far.
    Orbit from = table.both ? table.orbit.nearer(0.5f) : table.orbit;
    now.look(table.model(), table.shown, from, own, scale);
    if (table.both) {
      before.look(table.before(), table.shown, from, all.half(0), scale);
    }
  }

  /** Beside a card the middle of the house's part is the middle of what it leaves. */
  private double beside() {
    Area card = Board.card(width, height, typeSize());
    return Board.hasCard(table) ? card.right() / 2 / free().width() : 0;
  }

  /** The part of the window that no list covers. */
  private Area free() {
    Area list = Board.list(width, height, typeSize());
    float low = height - Board.statusHeight(table, list.x(), typeSize()) - typeSize();
    return new Area(0, 0, Math.max(64, list.x()), Math.max(64, low));
  }

  @Override
  public Sheet sheet(Measure measure) {
    if (isStale() || sheet == null) {
      look();
      sheet = whole(measure);
      drawnVersion = table.version;
      shotWanted = true;
    }
    return sheet;
  }

  private Sheet whole(Measure measure) {
    float size = scale * type() * 0.85f;
    Seen.Place place = new Seen.Place(width, height, size, measure);
    Sheet own =
        new Seen(table.model(), table.shown)
            .sheet(
                now.pane(),
                place,
                table.plan().findings(),
                table.chosenHole().flatMap(h -> table.pictures.findHole(h.id())),
                table.place());
    Canvas names = new Canvas(own.theme(), measure, size);
    if (!table.both) {
      if (table.work.isSketch()) {
        name(names, now.pane(), Board.SKETCH);
      }
      north(names, now.pane());
      List<Mark> named = new ArrayList<>(own.over());
      named.addAll(names.marks());
      return new Sheet(width, height, own.theme(), own.panes(), named);
    }
    Sheet old =
        new Seen(table.before(), table.shown)
            .sheet(before.pane(), place, List.of(), Optional.empty(), Optional.empty());
    List<Mark> marks = new ArrayList<>(old.over());
    marks.addAll(own.over());
    name(names, before.pane(), "as in the files");
    name(
        names,
        now.pane(),
        table.work.isSketch()
            ? "as changed; " + Board.SKETCH.toLowerCase(Locale.ROOT)
            : "as changed");
    north(names, before.pane());
    north(names, now.pane());
    marks.addAll(names.marks());
    return new Sheet(width, height, own.theme(), List.of(before.pane(), now.pane()), marks);
  }

  /** Of a house that stands turned: its words go by a north of its own. */
  private void north(Canvas c, Pane p) {
    Area place = NorthMark.area(new Area(p.x(), p.y(), p.width(), p.height()), c.size());
    table.pictures.north().ifPresent(n -> NorthMark.draw(c, p, table.orbit.target(), n, place));
  }

  private static void name(Canvas c, Pane pane, String text) {
    Area box = c.label(text, c.size(), true);
    float x = pane.x() + (pane.width() - box.width()) / 2;
    float y = pane.y() + pane.height() - 2 * c.size();
    Area at = new Area(x, y, box.width(), box.height());
    c.plated(at, text, c.size(), true, Rgb.opaque(c.theme().ink()));
  }

  @Override
  public void panels(Panels panels) {
    board.say(panels, width, height, typeSize());
  }

  @Override
  public float typeSize() {
    return Math.round(Canvas.TYPE * 0.9f * scale * type());
  }

  @Override
  public void shown(long number, long houses, int samples) {
    String state = Tell.of(table, now.pane(), new Tell.Drawn(0, 0, samples));
    if (!state.equals(lastTold)) {
      lastTold = state;
      told.accept(Tell.of(table, now.pane(), new Tell.Drawn(number, houses, samples)));
    }
  }

  @Override
  public boolean wantsPicture() {
    boolean wanted = shotWanted && shots != null;
    shotWanted = false;
    return wanted;
  }

  @Override
  public void taken(byte[] png) {
    shots.accept(png);
  }

  @Override
  public boolean isOver() {
    return table.over;
  }

  @Override
  public String title() {
    return "Holloway: " + table.model().name();
  }
}
