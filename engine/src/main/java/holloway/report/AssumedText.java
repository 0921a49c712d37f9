package holloway.report;

import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.house.House;
import holloway.house.Level;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.survey.Placed;
import holloway.units.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What place and era decided because the person did not say, with the line that says otherwise;
 * then what the survey assumed of single walls.
 */
final class AssumedText {
  private final Placed placed;
  private final UnitWords units;
  private final Page page;
  private int count;

  AssumedText(Placed placed, UnitWords units, Page page) {
    this.placed = placed;
    this.units = units;
    this.page = page;
  }

  void put() {
    House h = placed.house();
    if (h.built().isAssumed()) {
      say("the year, taken as " + h.built().value(), "built: 1985");
    }
    walls("outer walls", "outer-walls", h.outerWalls());
    walls("inner walls", "inner-walls", h.innerWalls());
    h.levels().forEach(this::level);
    h.roofs().forEach(this::roof);
    openings(h.openings());
    for (String line : new TreeSet<>(placed.assumed())) {
      page.put("  - ", line);
      count++;
    }
    if (count == 0) {
      page.put("  ", "Nothing.");
    } else {
      page.put(
          "  ",
          "One wall alone: walls: - { side: ROOM SIDE, studs: ..., every: ..., thickness: ...,"
              + " studs-from: SIDE DISTANCE, bearing: yes or no, fill: ... }. One room alone:"
              + " finish, ceiling, ceiling-height and floor in its own entry.");
    }
  }

  private void say(String what, String instead) {
    page.put("  - ", what + "; say " + instead);
    count++;
  }

  private void walls(String word, String key, WallSpec w) {
    boolean framed = w.kind().filter(k -> k != WallSpec.Kind.FRAMED).isEmpty();
    if (framed) {
      timber(word + ": studs", key + ": { studs: ... }", w.studs());
      length(word + ": stud spacing", key + ": { every: ... }", w.every());
    }
    length(word + ": thickness", key + ": { thickness: ... }", w.thickness());
    w.fill()
        .filter(f -> f.isAssumed() && framed)
        .ifPresent(
            f ->
                say(
                    word + ": fill " + f.value().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    key + ": { fill: ... }"));
  }

  private void level(Level l) {
    String key = "levels: { " + l.name() + ": { ";
    length(
        l.name() + ": ceiling height",
        key + "ceiling-height: ... } }",
        Optional.of(l.ceilingHeight()));
    if (l.floor().kind() == FloorSpec.Kind.JOISTS) {
      String floor = key + "floor: { ";
      timber(l.name() + ": joists", floor + "joists: ... } } }", l.floor().joists());
      length(
          l.name() + ": joist spacing", floor + "every: ... } } }", Optional.of(l.floor().every()));
      length(
          l.name() + ": height of the crawlspace",
          floor + "over: { crawlspace: { clearance: ... } } } } }",
          l.floor().crawlspace().map(FloorSpec.Crawlspace::clearance));
    }
  }

  private void roof(Roof r) {
    String word = "roof " + r.name();
    timber(word + ": ceiling joists or bottom chords", "chord: ... there", Optional.of(r.chord()));
    length(word + ": their spacing", "every: ... there", Optional.of(r.every()));
    length(word + ": eaves", "eaves: ... there", Optional.of(r.eaves()));
    length(word + ": depth of insulation", "insulation: ... there", Optional.of(r.insulation()));
  }

  private void openings(List<Opening> openings) {
    long heads = openings.stream().filter(o -> o.head().isAssumed()).count();
    if (heads > 0) {
      say("the head of " + UnitWords.count(heads, "opening"), "head: ... there");
    }
    long sills =
        openings.stream()
            .filter(o -> o.kind() == Opening.Kind.WINDOW && o.sill().isAssumed())
            .count();
    if (sills > 0) {
      say("the sill of " + UnitWords.count(sills, "window"), "sill: ... there");
    }
  }

  private void timber(String what, String instead, Optional<Fact<Timber>> f) {
    f.filter(Fact::isAssumed).ifPresent(t -> say(what + " " + t.value().name(), instead));
  }

  private void length(String what, String instead, Optional<Fact<Length>> f) {
    f.filter(Fact::isAssumed).ifPresent(l -> say(what + " " + units.tape(l.value().nm()), instead));
  }
}
