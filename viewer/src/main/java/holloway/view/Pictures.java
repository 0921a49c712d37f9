package holloway.view;

import holloway.geometry.Turn;
import holloway.look.Measure;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pipeline.PlannedHouse;
import holloway.plan.Plan;
import holloway.report.SeenWords;
import holloway.scene.SceneMaker;
import holloway.schedule.HoleCard;
import holloway.schedule.Tapes;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** Still pictures of a planned house, each a whole sheet of a size that is asked for. */
public final class Pictures {
  private static final String BEFORE =
      "Look for wires and pipes, with the power off and tested; local code and licensed people"
          + " decide.";

  private final PlannedHouse house;
  private final Model model;
  private final SeenWords words;
  private final UnitSystem units;

  public Pictures(PlannedHouse house) {
    this.house = house;
    this.units = house.units();
    this.words = new SeenWords(house.placed(), house.request(), units);
    this.model = Models.of(SceneMaker.of(house.hollows(), house.plan()), words::cable);
  }

  public Model model() {
    return model;
  }

  /** Real north in the house's own frame; empty where the house stands along the compass. */
  public Optional<Vector3fc> north() {
    Turn turn = house.placed().site().turn();
    // What is turned so stands in its site: back from there is into the house's own frame.
    return turn.isNone()
        ? Optional.empty()
        : Optional.of(new Vector3f((float) turn.sin(), (float) turn.cos(), 0));
  }

  /** How large, in which colours, in which type, and what puts a text into its language. */
  public record Paper(
      int width, int height, Theme theme, Measure measure, UnaryOperator<String> words) {
    /** In English. */
    public Paper(int width, int height, Theme theme, Measure measure) {
      this(width, height, theme, measure, UnaryOperator.identity());
    }
  }

  /** Who has a picture in hand will drill by it. */
  private Page page(Paper p) {
    if (!house.judged()) {
      throw new IllegalStateException("a plan that is not judged is not printed");
    }
    return new Page(p, units, north());
  }

  /** A level from above; empty when there is none of that name. */
  public Optional<Sheet> level(String name, Paper paper) {
    return model.findStorey(name).map(s -> new LevelPicture(model, s, page(paper)).sheet());
  }

  public Sheet slice(Slice slice, Paper paper) {
    return new SlicePicture(model, slice, page(paper)).sheet();
  }

  /** A run with its steps; empty when there is none of that id with a route. */
  public Optional<Sheet> run(String id, Paper paper) {
    return model
        .findCable(id)
        .map(
            c -> {
              Plan.PlannedRun r = planned(id);
              return new RunPicture(model, c, words.cut(r), words.steps(r), page(paper)).sheet();
            });
  }

  /**
   * This plan and another for the same house side by side.
   *
   * @param name what this one is called; {@code otherName} the other
   */
  public Sheet beside(String name, Pictures other, String otherName, Paper paper) {
    TwoWays ways = new TwoWays(house.plan(), other.house.plan(), words);
    return new TwoWaysPicture(
            new TwoWaysPicture.Side(name, model, ways.onlyFirst()),
            new TwoWaysPicture.Side(otherName, other.model, ways.onlySecond()),
            ways,
            page(paper))
        .sheet();
  }

  private Plan.PlannedRun planned(String id) {
    return house.plan().runs().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  /** A hole by its label or id from both sides; empty when there is none. */
  public Optional<Sheet> hole(String name, Paper paper) {
    return house.plan().holes().stream()
        .filter(h -> h.label().equalsIgnoreCase(name) || h.id().equals(name))
        .findFirst()
        .map(h -> new HolePicture(model, sheet(h), page(paper)).sheet());
  }

  /** What is told of a hole and where its tapes lie; empty when there is none of that id. */
  public Optional<HoleSheet> findHole(String id) {
    return house.plan().holes().stream()
        .filter(h -> h.id().equals(id))
        .findFirst()
        .map(this::sheet);
  }

  public SeenWords words() {
    return words;
  }

  /** What is drawn and told of one hole. */
  HoleSheet sheet(Plan.PlannedHole h) {
    Pin pin = model.findPin(h.id()).orElseThrow();
    Optional<Tapes> tapes = Optional.ofNullable(house.tapes().get(h.id()));
    HoleCard card = house.cards().get(h.id());
    return new HoleSheet(
        pin,
        words.what(h),
        tapes.map(t -> Models.metres(t.a())).orElseGet(() -> Models.metres(h.axis().get(0))),
        tapes.map(t -> Models.metres(t.b())).orElseGet(() -> Models.metres(h.axis().get(1))),
        marks(tapes.map(Tapes::sideA).orElse(List.of())),
        marks(tapes.map(Tapes::sideB).orElse(List.of())),
        words.stand(h),
        out(h, tapes),
        h.between(),
        lines(h, Optional.ofNullable(card)));
  }

  private List<TapeMark> marks(List<Tapes.Line> lines) {
    return lines.stream()
        .map(
            l ->
                new TapeMark(
                    Models.metres(l.from()),
                    Models.metres(l.to()),
                    units.format(new Length(l.nm())),
                    l.landmark()))
        .toList();
  }

  /** The hollow on the far side, by what runs say of it. */
  private String out(Plan.PlannedHole h, Optional<Tapes> tapes) {
    boolean turned =
        tapes
            .flatMap(t -> house.hollows().findSite(h.id()).map(s -> !s.a().equals(t.a())))
            .orElse(false);
    return words.hollow(house.plan(), h.between().get(turned ? 0 : 1));
  }

  private List<HoleSheet.Line> lines(Plan.PlannedHole h, Optional<HoleCard> card) {
    List<HoleSheet.Line> out = new ArrayList<>();
    List<String> first = new ArrayList<>();
    card.flatMap(c -> words.caution(h, c)).ifPresent(first::add);
    first.add(BEFORE);
    out.add(new HoleSheet.Line("Before you drill", first));
    List<String> rules =
        house.plan().findings().stream()
            .filter(f -> f.place().equals(h.id()))
            .map(f -> f.severity() + ": " + words.finding(f))
            .distinct()
            .toList();
    out.add(new HoleSheet.Line("Where", List.of(words.where(h))));
    List<String> make = new ArrayList<>(List.of(words.method(h)));
    card.ifPresent(c -> make.add(words.bit(c)));
    card.filter(c -> !c.angle().isEmpty()).ifPresent(c -> make.add(c.angle()));
    out.add(new HoleSheet.Line("Make it", make));
    card.filter(c -> !c.pilot().isEmpty())
        .ifPresent(c -> out.add(new HoleSheet.Line("Pilot first", List.of(c.pilot()))));
    card.filter(c -> !c.breakthrough().isEmpty())
        .ifPresent(c -> out.add(new HoleSheet.Line("Comes out", List.of(c.breakthrough()))));
    card.filter(c -> c.toleranceMm() > 0)
        .ifPresent(
            c ->
                out.add(
                    new HoleSheet.Line(
                        "May be off by", List.of(units.format(Length.mm(c.toleranceMm()))))));
    if (!rules.isEmpty()) {
      out.add(new HoleSheet.Line("Rules", rules));
    }
    return out;
  }
}
