package holloway.housefile;

import holloway.house.Beam;
import holloway.house.CeilingSpot;
import holloway.house.Chase;
import holloway.house.Fill;
import holloway.house.House;
import holloway.house.Obstacle;
import holloway.house.Opening;
import holloway.house.Origin;
import holloway.house.Roof;
import holloway.house.Skirting;
import holloway.house.Soffit;
import holloway.house.Stair;
import holloway.house.Tape;
import holloway.house.Thing;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes openings, roofs, stated hollows, obstacles, things and tapes. */
final class OuterWriter {
  /** What a pitch in degrees is kept over. */
  private static final int DEGREES_RUN = 10_000;

  private final House house;

  OuterWriter(House house) {
    this.house = house;
  }

  void into(Words file) {
    file.put("openings", house.openings().stream().map(OuterWriter::opening).toList());
    file.put("roof", house.roofs().stream().map(OuterWriter::roof).toList());
    List<Object> hollows = new ArrayList<>();
    house.chases().forEach(c -> hollows.add(chase(c)));
    house.conduits().forEach(c -> hollows.add(ConduitWriter.of(c)));
    house.soffits().forEach(f -> hollows.add(soffit(f)));
    house.skirtings().forEach(k -> hollows.add(skirting(k)));
    file.put("hollows", hollows);
    file.put("stairs", house.stairs().stream().map(OuterWriter::stair).toList());
    file.put("beams", house.beams().stream().map(OuterWriter::beam).toList());
    file.put("porches", house.porches().stream().map(PorchReader::written).toList());
    file.put("obstacles", house.obstacles().stream().map(OuterWriter::obstacle).toList());
    file.put("things", house.things().stream().map(OuterWriter::thing).toList());
    file.put("measures", house.tapes().stream().map(OuterWriter::tape).toList());
  }

  private static Map<String, Object> opening(Opening o) {
    Words w = new Words().word("kind", o.kind());
    HouseWriter.ref(o.wall(), w);
    return w.put("from", Words.of(o.along()))
        .length("width", o.width())
        .length("sill", o.sill())
        .length("head", o.head())
        .map();
  }

  static Map<String, Object> hatch(CeilingSpot at, Length eastWest, Length northSouth) {
    return new Words()
        .put("in", at.room())
        .put("at", Words.of(at))
        .put("size", Words.size(eastWest, northSouth))
        .map();
  }

  private static Map<String, Object> roof(Roof r) {
    Words w = new Words();
    Object over = r.level().<Object>map(l -> l).orElse(r.rooms());
    w.put("over", over);
    String usual = "roof over " + r.level().orElse(String.join(", ", r.rooms()));
    if (!r.name().equals(usual)) {
      w.put("name", r.name());
    }
    w.word("shape", r.shape());
    if (r.shape() == Roof.Shape.SHED) {
      w.maybe("low-side", r.lowSide(), s -> s.word());
    } else {
      w.word("ridge", r.ridge());
    }
    w.maybe("run", r.run(), d -> Shape.word(d));
    w.put("pitch", pitch(r.pitchRise(), r.pitchRun())).length("eaves", r.eaves());
    w.word("frame", r.frame()).timber("chord", java.util.Optional.of(r.chord()));
    w.length("every", r.every()).length("heel", r.heel());
    if (!r.insulation().isAssumed()) {
      w.put("insulation", insulation(r));
    }
    if (!r.joins().isEmpty()) {
      w.put("joins", r.joins().stream().map(OuterWriter::join).toList());
    }
    if (!r.knees().isEmpty()) {
      w.put("knee-walls", r.knees().stream().map(OuterWriter::knee).toList());
    }
    if (!r.skylights().isEmpty()) {
      w.put(
          "skylights",
          r.skylights().stream().map(k -> hatch(k.at(), k.eastWest(), k.northSouth())).toList());
    }
    if (!r.dormers().isEmpty()) {
      w.put("dormers", r.dormers().stream().map(DormerReader::written).toList());
    }
    return w.yesNo("boarded", r.boarded())
        .put(
            "hatches",
            r.hatches().stream().map(h -> hatch(h.at(), h.eastWest(), h.northSouth())).toList())
        .map();
  }

  private static Map<String, Object> join(Roof.Join j) {
    Words w = new Words().put("to", j.to()).maybe("valley", j.valley(), v -> Shape.word(v));
    if (j.valley().isPresent() && j.wide().nm() == 0) {
      return w.map();
    }
    return j.shut()
        ? w.put("shut", true).map()
        : w.put("size", Words.size(j.wide(), j.high())).maybe("from", j.from(), Words::of).map();
  }

  private static Map<String, Object> knee(Roof.Knee k) {
    return new Words()
        .put("side", Words.of(k.face()))
        .put("height", Words.of(k.height()))
        .put("behind", k.bare() ? "bare" : "boarded")
        .map();
  }

  private static Map<String, Object> stair(Stair s) {
    return new Words()
        .put("stair", s.name())
        .put("in", s.near().room())
        .put("from", Words.of(s.near()))
        .put("size", Words.size(s.size().eastWest(), s.size().northSouth()))
        .word("climbs", s.climbs())
        .word("under", s.under())
        .map();
  }

  private static Map<String, Object> beam(Beam b) {
    return new Words()
        .put("beam", b.name())
        .put("in", b.room())
        .word("run", b.run())
        .put("from", Words.of(b.from()))
        .length("width", b.width())
        .length("drop", b.drop())
        .length("depth", b.height())
        .word("made", b.made())
        .map();
  }

  private static String insulation(Roof r) {
    boolean none = r.insulation().origin() == Origin.STATED && r.fill() == Fill.EMPTY;
    return none ? "none" : Words.of(r.insulation()) + " " + Shape.word(r.fill());
  }

  /** Degrees are kept as rise over ten thousand: the thousandth of a degree that gives that. */
  static String pitch(int rise, int run) {
    if (run != DEGREES_RUN) {
      return rise + "/" + run;
    }
    long middle = Math.round(1000 * StrictMath.toDegrees(StrictMath.atan2(rise, run)));
    for (long off = 0; off < 1000; off++) {
      for (long thousandths : new long[] {middle + off, middle - off}) {
        double angle = StrictMath.toRadians(thousandths / 1000.0);
        if (Math.round(DEGREES_RUN * StrictMath.tan(angle)) == rise) {
          return "%d.%03d deg".formatted(thousandths / 1000, thousandths % 1000);
        }
      }
    }
    throw new IllegalArgumentException("no angle has a rise of " + rise + " in " + run);
  }

  private static Map<String, Object> chase(Chase c) {
    Words w = new Words().put("chase", c.name()).put("beside", Words.of(c.beside()));
    w.maybe("along", c.along(), a -> Words.of(a)).yesNo("inside", c.inside());
    w.put("from", c.from()).put("to", c.to());
    w.put("size", Words.size(c.alongFace(), c.awayFromFace()));
    w.put("contents", c.contents().stream().map(Shape::word).toList());
    Map<String, Object> floors = new LinkedHashMap<>();
    c.floors().forEach((level, pass) -> floors.put(level, Shape.word(pass.value())));
    return w.put("floors", floors).yesNo("known", c.known()).map();
  }

  private static Map<String, Object> soffit(Soffit f) {
    if (f.face().isEmpty()) {
      return new Words()
          .put("dropped-ceiling", f.name())
          .put("in", f.room())
          .length("drop", f.drop())
          .word("cover", f.cover())
          .map();
    }
    return new Words()
        .put("soffit", f.name())
        .put("along", Words.of(f.face().get()))
        .maybe("from", f.along(), a -> Words.of(a))
        .length("length", f.length())
        .put("size", Words.size(f.out().orElseThrow(), f.drop()))
        .word("cover", f.cover())
        .map();
  }

  private static Map<String, Object> skirting(Skirting k) {
    return new Words()
        .put("skirting", k.room())
        .put("sides", k.sides().stream().map(s -> s.word()).toList())
        .length("height", k.height())
        .map();
  }

  private static Map<String, Object> obstacle(Obstacle o) {
    Words w = new Words().word("kind", o.kind());
    o.inWall()
        .ifPresent(
            in ->
                w.put("side", Words.of(in.face()))
                    .put("from", Words.of(in.along()))
                    .length("width", in.width())
                    .length("bottom", in.bottom())
                    .length("top", in.top()));
    o.inVoid()
        .ifPresent(
            in ->
                w.put(SeenReader.key(in.place()), in.at().room())
                    .put("at", Words.of(in.at()))
                    .put("size", Words.size(in.eastWest(), in.northSouth()))
                    .maybe(
                        "height",
                        Optional.of(in.height()).filter(h -> o.kind() != Obstacle.Kind.PIER),
                        Words::of));
    return w.map();
  }

  private static Map<String, Object> thing(Thing t) {
    return new Words()
        .word("kind", t.kind())
        .spot(t.at())
        .put("width", Words.of(t.width()))
        .put("top", Words.of(t.top()))
        .map();
  }

  private static Map<String, Object> tape(Tape t) {
    return new Words()
        .put("from", Words.of(t.from()))
        .put("to", Words.of(t.to()))
        .length("distance", t.distance())
        .map();
  }
}
