package holloway.survey;

import holloway.geometry.Interval;
import holloway.house.Room;
import holloway.house.WallSpec;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Cuts the faces of one heading into stretches by what lies in front of them. */
final class StripFinder {
  /** Faces further apart than this do not share a wall; as the survey's contract has it. */
  private static final long FURTHEST = 450 * Length.NM_PER_MM;

  /** Two walls boarded on one side each, with 100 mm of space between them. */
  private static final long TWO_WALLS =
      2 * (Makeup.BOARD + Makeup.STUD_2X4.depth().nm()) + 100 * Length.NM_PER_MM;

  /** Facing stretches and leftovers shorter than this are no wall of their own. */
  private static final long LEAST = 60 * Length.NM_PER_MM;

  private static final long LEAST_ONE_SIDED = 150 * Length.NM_PER_MM;

  /** By what faces each other, without the leftovers that it has taken already. */
  private static final Comparator<Strip> FACES_MOST =
      Comparator.comparingLong((Strip s) -> -Math.round(s.shown().get(0).s().length() / 1e6))
          .thenComparing(Strip::rooms)
          .thenComparing(Strip.ORDER);

  private final Heading heading;
  private final Outdoors outdoors;
  private final Outdoors whole;
  private final StripMakes makes;
  private final Gaps gaps;
  private final Problems problems;
  private final Texts texts;

  StripFinder(
      Heading heading,
      Outdoors outdoors,
      Outdoors whole,
      StripMakes makes,
      Gaps gaps,
      Problems problems,
      Texts texts) {
    this.heading = heading;
    this.outdoors = outdoors;
    this.whole = whole;
    this.makes = makes;
    this.gaps = gaps;
    this.problems = problems;
    this.texts = texts;
  }

  /** A leftover of a face that no other face stands in front of. */
  private record Lone(Edge edge, Interval s, boolean inside, boolean split) {}

  /**
   * A short leftover may belong to the wall behind a longer one beside it, whichever end of the
   * face it lies at: the longer one has its wall first.
   */
  private static final Comparator<Lone> LONGEST =
      Comparator.comparingLong((Lone l) -> -Math.round(l.s.length() / 1e5))
          .thenComparing(l -> l.edge.id())
          .thenComparingLong(l -> l.s.lo());

  private final List<Strip> raw = new ArrayList<>();
  private final List<Lone> lone = new ArrayList<>();

  /** First half: what faces what. */
  List<Strip> look() {
    for (Edge e : heading.edges()) {
      lone.addAll(facing(e, raw));
    }
    return raw;
  }

  /** Second half, once the walls between each two rooms are numbered. */
  List<Strip> find() {
    List<Strip> strips = new ArrayList<>(makes.between(raw));
    lone.sort(LONGEST);
    for (Lone l : lone) {
      attachOrAdd(l, strips);
    }
    strips.sort(Strip.ORDER);
    return strips;
  }

  /** Adds the strips between e and the nearest faces in front of it; returns what is left of e. */
  private List<Lone> facing(Edge e, List<Strip> strips) {
    List<Interval> left = new ArrayList<>(List.of(e.s()));
    List<Edge> others =
        heading.edges().stream()
            .filter(o -> o.below() != e.below() && o.room() != e.room())
            .filter(o -> apart(e, o) >= least(e, o) && apart(e, o) <= furthest(e, o))
            .sorted(Comparator.comparingLong((Edge o) -> apart(e, o)).thenComparing(Edge::id))
            .toList();
    for (Edge o : others) {
      List<Interval> taken = new ArrayList<>();
      for (Interval l : left) {
        l.cut(o.s()).filter(i -> i.length() >= LEAST).ifPresent(taken::add);
      }
      for (Interval i : taken) {
        if (e.below() && !makes.isOpenThrough(e, o)) {
          strips.add(raw(e, o, i));
        }
      }
      left = left.stream().flatMap(l -> l.without(taken, 1).stream()).toList();
    }
    return left.stream().flatMap(l -> split(e, l).stream()).toList();
  }

  /**
   * A stated thickness may be anything up to the limit; else wider gaps are two walls and space.
   */
  private long furthest(Edge e, Edge o) {
    long stated = makes.stated(e, o) + StripMakes.SAME_LINE;
    return makes.hasThickness(e, o) ? Math.max(FURTHEST, stated) : TWO_WALLS;
  }

  /** Faces of an open side coincide, give or take rounding. */
  private long least(Edge e, Edge o) {
    return makes.isOpenThrough(e, o) ? -Length.NM_PER_MM : 0;
  }

  private static long apart(Edge e, Edge o) {
    return e.below() ? o.t() - e.t() : e.t() - o.t();
  }

  private List<Lone> split(Edge e, Interval s) {
    List<Interval> inside = outdoors.insideAhead(heading.frame(), e, s);
    List<Lone> out = new ArrayList<>();
    inside.forEach(i -> out.add(new Lone(e, i, true, false)));
    for (Interval rest : s.without(inside, 1000)) {
      List<Interval> split = whole.insideAhead(heading.frame(), e, rest);
      split.forEach(i -> out.add(new Lone(e, i, true, true)));
      rest.without(split, 1000).forEach(i -> out.add(new Lone(e, i, false, false)));
    }
    return out;
  }

  private Strip raw(Edge low, Edge high, Interval s) {
    Interval t = new Interval(low.t(), high.t());
    if (t.length() < Makeup.THINNEST_WALL) {
      problems.add(
          high.room().room().where(),
          "between %s %s and %s %s only %s is left; a wall needs %s. Maybe a size or a shift is wrong. %s",
          low.room().name(),
          low.side().word(),
          high.room().name(),
          high.side().word(),
          texts.length(t.length()),
          texts.length(Makeup.THINNEST_WALL),
          gaps.between(low, high));
    }
    List<Strip.Shown> shown = List.of(new Strip.Shown(low, 0, s), new Strip.Shown(high, 1, s));
    return new Strip(
        heading,
        Strip.Kind.BETWEEN,
        s,
        t,
        t,
        -1,
        makes.usual(low.room().room().level(), false),
        shown);
  }

  /** Short leftovers belong to the strip beside them; longer ones are walls seen from one side. */
  private void attachOrAdd(Lone l, List<Strip> strips) {
    long limit = l.inside ? FURTHEST : LEAST_ONE_SIDED;
    int side = l.edge.below() ? 0 : 1;
    int best = -1;
    for (int i = 0; i < strips.size(); i++) {
      Strip s = strips.get(i);
      boolean same = s.shown().stream().anyMatch(f -> f.edge() == l.edge);
      boolean touches = s.s().lo() == l.s.hi() || s.s().hi() == l.s.lo();
      if (same
          && touches
          && l.s.length() <= limit
          && (best < 0 || FACES_MOST.compare(s, strips.get(best)) < 0)) {
        best = i;
      }
    }
    if (best >= 0 && !l.split) {
      strips.set(best, strips.get(best).stretched(l.s, new Strip.Shown(l.edge, side, l.s)));
    } else if (l.s.length() >= LEAST) {
      strips.add(oneSided(l, side));
    }
  }

  private Strip oneSided(Lone l, int side) {
    boolean outer = !l.inside;
    Make made = makes.behind(l.edge, outer);
    Make make = l.split ? made.besideOtherPart() : made;
    Room room = l.edge.room().room();
    long near = StripMakes.lining(make, room, l.edge.side());
    long core = StripMakes.core(make, outer, near);
    long far = outer && make.kind() == WallSpec.Kind.FRAMED ? StripMakes.cladding(make, near) : 0;
    long t = l.edge.t();
    Interval whole =
        l.edge.below()
            ? new Interval(t, t + near + core + far)
            : new Interval(t - near - core - far, t);
    Interval framed =
        l.edge.below()
            ? new Interval(t + near, t + near + core)
            : new Interval(t - near - core, t - near);
    Strip.Kind kind = outer ? Strip.Kind.OUTER : Strip.Kind.SPACE;
    return new Strip(
        heading,
        kind,
        l.s,
        whole,
        framed,
        outer ? 1 - side : -1,
        make,
        List.of(new Strip.Shown(l.edge, side, l.s)));
  }
}
