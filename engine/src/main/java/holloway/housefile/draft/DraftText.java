package holloway.housefile.draft;

import holloway.geometry.Point2;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.housefile.Quoted;
import holloway.units.Length;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a draft as a house file that reads as it stands. */
public final class DraftText {
  /** How every comment begins that asks the person for something. */
  public static final String TO_FINISH = "# to finish: ";

  private final Draft draft;
  private final TapeText tape;
  private final Comments out = new Comments();

  private DraftText(Draft draft) {
    this.draft = draft;
    this.tape = new TapeText(draft.metric());
  }

  /**
   * @param schema what the editor line names as the schema
   * @param name of the house
   * @param place us, uk, eu or none
   * @param built the year, 0 if it is not known
   * @throws IllegalArgumentException when the name cannot be a name
   */
  public static String of(Draft draft, String schema, String name, String place, int built) {
    Quoted.check(name);
    DraftText text = new DraftText(draft);
    text.out.line("# yaml-language-server: $schema=" + schema);
    draft.about().forEach(a -> text.out.comment("", "# ", a));
    text.out.toFinish("", draft.toFinish());
    text.out.line("");
    text.out.line("house: " + Quoted.name(name));
    text.out.line("place: " + place);
    text.out.line(built > 0 ? "built: " + built : "# built: 1985");
    if (!draft.turned().isNone()) {
      text.out.line("turned: " + draft.turned().words());
    }
    text.body();
    return text.out.toString();
  }

  private void body() {
    walls("outer-walls", draft.outerWalls());
    walls("inner-walls", draft.innerWalls());
    out.line("\nlevels:");
    draft.levels().forEach(this::level);
    out.line("\nrooms:");
    draft.rooms().forEach(this::room);
    list("walls", draft.walls().stream().map(this::wall).toList());
    list("openings", draft.openings().stream().map(this::opening).toList());
    if (!draft.roofs().isEmpty()) {
      out.line("\nroof:");
      draft.roofs().forEach(this::roof);
    }
    request();
  }

  private void list(String key, List<String> lines) {
    if (!lines.isEmpty()) {
      out.line("\n" + key + ":");
      lines.forEach(out::line);
    }
  }

  private void walls(String key, Draft.WallDefault walls) {
    out.line("");
    out.toFinish("", walls.toFinish());
    String keys =
        (walls.masonry() ? "kind: masonry, " : "")
            + walls.thickness().map(t -> "thickness: " + tape.of(t)).orElse("");
    String clean = keys.endsWith(", ") ? keys.substring(0, keys.length() - 2) : keys;
    out.line(clean.isEmpty() ? "# " + key + ": {}" : key + ": { " + clean + " }");
  }

  private void level(Draft.Level l) {
    out.line("  " + Quoted.name(l.name()) + ":");
    l.above().ifPresent(a -> out.line("    above: " + Quoted.name(a)));
    out.line("    ceiling-height: " + tape.of(l.ceilingHeight()));
    l.rise().ifPresent(r -> out.line("    rise: " + tape.of(r)));
    out.toFinish("    ", l.toFinish());
    out.line(
        l.concrete() ? "    floor: slab" : "    floor: { run: %s }".formatted(word(l.joists())));
  }

  private void room(Draft.Room r) {
    out.line("  " + Quoted.name(r.name()) + ":");
    out.toFinish("    ", r.toFinish());
    out.line("    level: " + Quoted.name(r.level()));
    out.line(
        "    outline: ["
            + r.outline().stream().map(this::pair).collect(Collectors.joining(", "))
            + "]");
    r.at().ifPresent(p -> out.line("    at: " + pair(p)));
    r.elevation().ifPresent(e -> out.line("    elevation: " + tape.of(e)));
    r.ceilingHeight().ifPresent(h -> out.line("    ceiling-height: " + tape.of(h)));
    if (r.garage()) {
      out.line("    garage: yes");
    }
  }

  private String pair(Point2 p) {
    return "[%s, %s]".formatted(tape.of(new Length(p.x())), tape.of(new Length(p.y())));
  }

  private String wall(Draft.Wall w) {
    String where =
        w.face().map(f -> "side: " + face(f)).orElseGet(() -> "between: " + names(w.between()));
    return "  - { %s, thickness: %s }".formatted(where, tape.of(w.thickness()));
  }

  private static String names(List<String> names) {
    return names.stream().map(Quoted::name).collect(Collectors.joining(", ", "[", "]"));
  }

  private static String face(Draft.Face f) {
    return Quoted.name(
        f.room() + " " + f.side().word() + (f.ordinal() == 1 ? "" : " " + f.ordinal()));
  }

  private String opening(Draft.Hole h) {
    boolean low = h.kind() != Opening.Kind.WINDOW && h.sill().nm() == 0;
    String line =
        "  - { %s, side: %s, from: %s %s, width: %s%s, head: %s }"
            .formatted(
                word(h.kind()),
                face(h.face()),
                h.from().word(),
                tape.of(h.along()),
                tape.of(h.width()),
                low ? "" : ", sill: " + tape.of(h.sill()),
                tape.of(h.head()));
    return h.remark().isEmpty() ? line : line + "  # " + Comments.plain(h.remark());
  }

  private void roof(Draft.Cover r) {
    out.toFinish("  ", r.toFinish());
    out.line("  - over: " + r.level().map(Quoted::name).orElseGet(() -> names(r.rooms())));
    out.line("    shape: " + word(r.shape()));
    if (r.shape() == Roof.Shape.SHED) {
      out.line("    low-side: " + r.lowSide().map(Side::word).orElse("south"));
    } else if (r.shape() != Roof.Shape.FLAT) {
      out.line("    ridge: " + word(r.ridge()));
    }
    if (r.shape() != Roof.Shape.FLAT) {
      out.line("    pitch: " + String.format(Locale.ROOT, "%.1f deg", r.degrees()));
    }
    out.line("    frame: trusses");
  }

  private void request() {
    out.line("");
    out.toFinish("", List.of("where the network gear stands; this spot is a stand-in"));
    out.line("cabinet: { " + spot(draft.cabinet()) + " }");
    out.line("");
    out.toFinish(
        "", List.of("where cables are wanted; this outlet is a stand-in so that the file reads"));
    out.line("outlets:");
    out.line("  - { name: first outlet, " + spot(draft.outlet()) + ", cables: [cat6] }");
  }

  private String spot(Draft.Spot s) {
    String wall =
        s.face().side().word() + (s.face().ordinal() == 1 ? "" : " " + s.face().ordinal());
    return "in: %s, wall: %s, from: %s %s, height: %s"
        .formatted(
            Quoted.name(s.face().room()),
            wall,
            s.from().word(),
            tape.of(s.along()),
            tape.of(s.height()));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
