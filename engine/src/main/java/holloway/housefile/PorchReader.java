package holloway.housefile;

import static holloway.housefile.Shape.ALONG;
import static holloway.housefile.Shape.FACE;
import static holloway.housefile.Shape.LENGTH;
import static holloway.housefile.Shape.NAME;
import static holloway.housefile.Shape.wordsOf;
import static holloway.housefile.Table.may;
import static holloway.housefile.Table.must;

import holloway.house.Along;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Porch;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads and writes the roofs over open porches. */
final class PorchReader {
  /** Lower nobody stands under it, and narrower it is an eave; from experience. */
  private static final Length LOWEST = Length.mm(1_800);

  private static final Length NARROWEST = Length.mm(600);

  static final Table TABLE =
      Table.of(
          "porch",
          "a roof over an open porch at an outer wall",
          must("porch", NAME, "its name"),
          must("side", FACE, "the room and side behind whose wall it stands outside"),
          must("from", ALONG, "from an end of that side to the porch's nearer end"),
          must("length", LENGTH, "along the wall, from end to end"),
          must("out", LENGTH, "from the outside of the wall to its outer edge"),
          must("height", LENGTH, "from the floor of that room to its ceiling, or bare joists"),
          must("ceiling", Shape.words("boarded", "open"), "joists closed below, or in sight"),
          must("roof", wordsOf(Porch.Cover.class), "shed slopes away from the wall"),
          may("pitch", new Shape.Text(Form.PITCH), "of its roof"),
          may("joists", new Shape.Text(Form.TIMBER), "of its ceiling"),
          may("every", Shape.SPACING, "of these joists"),
          may("run", wordsOf(Porch.Run.class), "of these joists: out from the wall, or along it"));

  private final Defaults defaults;

  PorchReader(Defaults defaults) {
    this.defaults = defaults;
  }

  /** Sorted by name. */
  List<Porch> read(Entry house) {
    List<Porch> out = new ArrayList<>();
    Map<String, Where> names = new TreeMap<>();
    for (Entry e : house.maps("porches", TABLE)) {
      e.text("porch").ifPresent(n -> Unique.claim(e, "porch", n, names, "porch"));
      porch(e).ifPresent(out::add);
    }
    out.sort(Comparator.comparing(Porch::name));
    return out;
  }

  private Optional<Porch> porch(Entry e) {
    Optional<String> name = e.text("porch");
    Optional<FaceRef> face = e.face("side");
    Optional<Along> from = e.along("from");
    Optional<Fact<Length>> length = e.length("length");
    Optional<Fact<Length>> out = e.length("out");
    Optional<Fact<Length>> height = e.length("height");
    Optional<Porch.Cover> cover = e.choice("roof", Porch.Cover.class);
    face.ifPresent(f -> from.ifPresent(a -> Spots.fits(e, "from", f, a)));
    cover.ifPresent(c -> checkPitch(e, c));
    checkSizes(e, out, height);
    if (name.isEmpty()
        || face.isEmpty()
        || from.isEmpty()
        || length.isEmpty()
        || out.isEmpty()
        || height.isEmpty()
        || cover.isEmpty()) {
      return Optional.empty();
    }
    Forms.Pitch pitch =
        e.parsed("pitch", s -> Forms.pitch(s.text())).orElse(new Forms.Pitch(0, 12));
    return Optional.of(
        new Porch(
            name.get(),
            face.get(),
            from.get(),
            length.get(),
            out.get(),
            height.get(),
            e.text("ceiling").filter("boarded"::equals).isPresent(),
            cover.get(),
            pitch.rise(),
            pitch.run(),
            e.timber("joists").orElseGet(() -> defaults.porchJoists(name.get())),
            e.length("every").orElseGet(() -> defaults.porchSpacing(name.get())),
            e.choice("run", Porch.Run.class)
                .map(r -> Fact.stated(r, e.where("run")))
                .orElse(Fact.assumed(Porch.Run.OUT)),
            e.where()));
  }

  private static void checkPitch(Entry e, Porch.Cover cover) {
    if (cover == Porch.Cover.FLAT && e.has("pitch")) {
      e.problem("pitch", "roof: shed, or no pitch", "", "a flat porch roof has no pitch");
    } else if (cover != Porch.Cover.FLAT && !e.has("pitch")) {
      String word = cover.word();
      e.problem("pitch", "pitch: 3/12", "", "the " + word + " roof of a porch needs a pitch");
    }
  }

  private static void checkSizes(
      Entry e, Optional<Fact<Length>> out, Optional<Fact<Length>> height) {
    if (height.isPresent() && height.get().value().compareTo(LOWEST) < 0) {
      e.problem(
          "height",
          "height: 7 ft 6 in",
          "",
          "nobody stands under a porch as low as that: it is taped from the floor of the room"
              + " behind the wall up to the porch's ceiling, not from the ceiling to its roof");
    }
    if (out.isPresent() && out.get().value().compareTo(NARROWEST) < 0) {
      e.problem(
          "out",
          "out: 6 ft",
          "",
          "a porch stands out from the wall by more than that; what is this narrow is the eaves of"
              + " a roof ('eaves')");
    }
  }

  static Map<String, Object> written(Porch p) {
    Words w =
        new Words()
            .put("porch", p.name())
            .put("side", Words.of(p.face()))
            .put("from", Words.of(p.from()))
            .length("length", p.length())
            .length("out", p.out())
            .length("height", p.height())
            .put("ceiling", p.boarded() ? "boarded" : "open")
            .word("roof", p.cover());
    if (p.cover() != Porch.Cover.FLAT) {
      w.put("pitch", OuterWriter.pitch(p.pitchRise(), p.pitchRun()));
    }
    return w.timber("joists", Optional.of(p.joists()))
        .length("every", p.every())
        .fact("run", Optional.of(p.run()), Shape::word)
        .map();
  }
}
