package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Fact;
import holloway.house.Lining;
import holloway.house.Room;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Standing;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Gives strips their make and the place of studs or masonry within the thickness. */
final class StripMakes {
  /** Strips whose cores differ by no more are one; the survey's contract. */
  static final long SAME_LINE = 12 * Length.NM_PER_MM;

  /** A gap along the line no longer than this is bridged (a wall stands across it). */
  static final long BRIDGED = 450 * Length.NM_PER_MM;

  /** Linings thinner than this on each side mean that the studs do not fit. */
  private static final long LEAST_LINING = 3 * Length.NM_PER_MM;

  private final Specs specs;
  private final Notes notes;

  StripMakes(Specs specs, Notes notes) {
    this.specs = specs;
    this.notes = notes;
  }

  Make usual(String level, boolean outer) {
    return Make.of(specs.house(), level, List.of(), outer);
  }

  Make behind(Edge e, boolean outer) {
    Make make =
        Make.of(
            specs.house(), level(e), specs.behind(e.room().name(), e.side(), e.ordinal()), outer);
    return isNeighbours(e) ? make.besideNeighbours() : make;
  }

  private static String level(Edge e) {
    return e.room().room().level();
  }

  private static boolean isNeighbours(Edge e) {
    return e.room().room().standing() == Standing.SOMEBODY_ELSES;
  }

  /** Does the person state how thick the wall between two faces is? */
  boolean hasThickness(Edge a, Edge b) {
    List<WallSpec> said = new ArrayList<>(specs.between(a.room().name(), b.room().name(), 1));
    said.addAll(specs.behind(a.room().name(), a.side(), a.ordinal()));
    said.addAll(specs.behind(b.room().name(), b.side(), b.ordinal()));
    Make make = Make.of(specs.house(), level(a), said, false);
    return make.thickness().isPresent() || make.kind() != WallSpec.Kind.FRAMED;
  }

  /** What the person states of the thickness of the wall between two faces, nanometres. */
  long stated(Edge a, Edge b) {
    List<WallSpec> said = new ArrayList<>(specs.between(a.room().name(), b.room().name(), 1));
    said.addAll(specs.behind(a.room().name(), a.side(), a.ordinal()));
    said.addAll(specs.behind(b.room().name(), b.side(), b.ordinal()));
    return Make.of(specs.house(), level(a), said, false)
        .thickness()
        .map(t -> t.value().nm())
        .orElse(0L);
  }

  /** Do these two faces coincide, with nothing between the rooms? */
  boolean isOpenThrough(Edge a, Edge b) {
    return Make.of(
            specs.house(), level(a), specs.between(a.room().name(), b.room().name(), 1), false)
        .isOpenThrough();
  }

  /**
   * Strips between rooms with what is said of them. Walls between the same two rooms are counted
   * from the west or south; stretches in one line count as one. All headings have to be counted
   * together, so callers number them first.
   */
  List<Strip> between(List<Strip> raw) {
    return raw.stream().map(this::made).toList();
  }

  private Strip made(Strip s) {
    Edge low = s.shown().get(0).edge();
    Edge high = s.shown().get(1).edge();
    List<WallSpec> said =
        new ArrayList<>(
            specs.between(low.room().name(), high.room().name(), ordinals.getOrDefault(key(s), 1)));
    said.addAll(specs.behind(low.room().name(), low.side(), low.ordinal()));
    said.addAll(specs.behind(high.room().name(), high.side(), high.ordinal()));
    Make make = Make.of(specs.house(), level(low), said, false);
    boolean theirs = isNeighbours(low) || isNeighbours(high);
    return fitted(s.withMake(theirs ? make.besideNeighbours() : make));
  }

  private final TreeMap<String, Integer> ordinals = new TreeMap<>();

  /** Which of the walls between its two rooms a strip is. */
  int ordinal(Strip s) {
    return ordinals.getOrDefault(key(s), 1);
  }

  private static String key(Strip s) {
    Edge low = s.shown().get(0).edge();
    Edge high = s.shown().get(1).edge();
    return low.id() + "/" + high.id() + "/" + s.s().lo();
  }

  /** Numbers the raw strips of all headings of a level. */
  void number(List<Strip> raw) {
    TreeMap<String, List<Strip>> pairs = new TreeMap<>();
    for (Strip s : raw) {
      String a = s.shown().get(0).edge().room().name();
      String b = s.shown().get(1).edge().room().name();
      pairs
          .computeIfAbsent(a.compareTo(b) < 0 ? a + "\t" + b : b + "\t" + a, k -> new ArrayList<>())
          .add(s);
    }
    for (List<Strip> pair : pairs.values()) {
      pair.sort(Comparator.comparing(StripMakes::southWest).thenComparing(Strip.ORDER));
      List<Strip> firsts = new ArrayList<>();
      for (Strip s : pair) {
        int at = 0;
        while (at < firsts.size() && !isInLine(firsts.get(at), s)) {
          at++;
        }
        if (at == firsts.size()) {
          firsts.add(s);
        }
        ordinals.put(key(s), at + 1);
      }
    }
  }

  private static Point2 southWest(Strip s) {
    Point2 a = s.heading().frame().toWorld(s.s().lo(), s.t().lo(), 0).plan();
    Point2 b = s.heading().frame().toWorld(s.s().hi(), s.t().hi(), 0).plan();
    return new Point2(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()));
  }

  private static boolean isInLine(Strip a, Strip b) {
    return a.heading() == b.heading() && near(a.t(), b.t());
  }

  static boolean near(Interval a, Interval b) {
    return Math.abs(a.lo() - b.lo()) <= SAME_LINE && Math.abs(a.hi() - b.hi()) <= SAME_LINE;
  }

  /**
   * Studs centred in the gap; 2x6 when nobody said and the gap is its; masonry less its plaster.
   */
  private Strip fitted(Strip s) {
    long gap = s.t().length();
    Edge low = s.shown().get(0).edge();
    Edge high = s.shown().get(1).edge();
    long near = lining(s.make(), low.room().room(), low.side());
    long far = lining(s.make(), high.room().room(), high.side());
    if (s.make().kind() != WallSpec.Kind.FRAMED && s.make().kind() != WallSpec.Kind.OPEN) {
      long a = Math.min(near, gap / 4);
      long b = Math.min(far, gap / 4);
      solid(s, gap - near - far);
      return withCore(s, new Interval(s.t().lo() + a, s.t().hi() - b), s.make());
    }
    if (s.make().isDouble()) {
      return doubled(s, near, far);
    }
    boolean layered = s.make().isLayered();
    long more = layered ? near + far - 2 * Makeup.BOARD : 0;
    Make make = chosen(s, Math.max(gap - more, gap / 4));
    long depth = make.studs().value().depth().nm();
    if (layered && gap < depth + near + far - 2 * LEAST_LINING) {
      notes.tightLayers(s, near + far);
    } else if (!make.studs().isAssumed() && gap < depth + 2 * LEAST_LINING) {
      notes.tight(s);
    }
    if (!make.studs().isAssumed() && gap - more > depth + 2 * THICK_LINING && !isStated(s, gap)) {
      notes.roomy(s);
    }
    depth = Math.min(depth, gap);
    long aside = layered ? (near - far) / 2 : 0;
    long lo = s.t().lo() + Math.max(0, Math.min(gap - depth, (gap - depth) / 2 + aside));
    return withCore(s, new Interval(lo, lo + depth), make);
  }

  /** Two rows of studs, each behind its own lining, and nothing between them. */
  private Strip doubled(Strip s, long near, long far) {
    long gap = s.t().length();
    long depth = s.make().studs().value().depth().nm();
    if (gap < 2 * depth + near + far - 2 * LEAST_LINING) {
      notes.tightLayers(s, near + far);
    }
    long a = Math.min(near, gap / 4);
    long b = Math.min(far, gap / 4);
    return withCore(s, new Interval(s.t().lo() + a, s.t().hi() - b), s.make());
  }

  private Make chosen(Strip s, long gap) {
    if (!s.make().studs().isAssumed()) {
      return s.make();
    }
    if (WallPriors.looksLike2x6(gap)) {
      notes.taken2x6(s);
      return s.make().withStuds(Fact.assumed(Makeup.STUD_2X6));
    }
    long depth = s.make().studs().value().depth().nm();
    if (gap < depth + 2 * LEAST_LINING) {
      long room = Math.max(gap / 2, gap - 2 * Makeup.BOARD);
      notes.thin(s);
      Timber thin = Timber.solid("thin stud", new Length(Makeup.PLATE), new Length(room));
      return s.make().withStuds(Fact.assumed(thin));
    }
    if (gap > depth + 2 * StripMakes.THICK_LINING) {
      notes.thick(s);
    }
    return s.make();
  }

  /** Masonry thinner than any, or not as thick as stated. */
  private void solid(Strip s, long core) {
    if (core < thinnestMasonry()) {
      notes.thinMasonry(s, core);
    } else if (s.make().thickness().isPresent() && !isStated(s, s.t().length())) {
      notes.notAsStated(s);
    }
  }

  /** Brick 102.5 mm, block 75 mm (UK); block and brick 3-5/8 in (US); from memory. */
  private long thinnestMasonry() {
    return specs.house().place() == RulePlace.US
        ? Length.inches(29, 8).nm()
        : 75 * Length.NM_PER_MM;
  }

  /** Does the person say themselves that it is so thick? */
  private static boolean isStated(Strip s, long gap) {
    return s.make()
        .thickness()
        .filter(t -> Math.abs(t.value().nm() - gap) <= SAME_LINE)
        .isPresent();
  }

  /** More than this beside studs is no lining any more; from experience. */
  private static final long THICK_LINING = 40 * Length.NM_PER_MM;

  private static Strip withCore(Strip s, Interval core, Make make) {
    return new Strip(s.heading(), s.kind(), s.s(), s.t(), core, s.outside(), make, s.shown());
  }

  /** What lies between the room and studs or masonry. */
  static long lining(Make make, Room room, Side side) {
    Optional<Long> layers = make.traits().findLayers(side).map(WallTraits.Layers::nm);
    return switch (make.kind()) {
      case OPEN -> layers.orElse(Makeup.lining(room.walls()));
      case FRAMED -> layers.orElse(Makeup.lining(room.walls())) + battens(make, room, side);
      case MASONRY -> layers.orElse(room.walls() == Lining.OPEN ? 0 : Makeup.PLASTER);
      case GLAZED -> 0;
      case FURRED, DABBED -> make.behindBoard() + layers.orElse(Makeup.BOARD);
    };
  }

  /** What a service layer takes up: none stands before the bare walls of a room. */
  static long battens(Make make, Room room, Side side) {
    boolean framed = make.kind() == WallSpec.Kind.FRAMED;
    boolean bare = room.walls() == Lining.OPEN && make.traits().findLayers(side).isEmpty();
    return framed && !bare ? make.traits().battensNm(side) : 0;
  }

  /** Thickness of studs or masonry of a wall seen from one side. */
  static long core(Make make, boolean outer, long lining) {
    if (make.isDouble()) {
      long rows = 2 * make.studs().value().depth().nm();
      long skin = outer ? Makeup.SHEATHING + Makeup.CLADDING : 0;
      return make.thickness()
          .map(t -> Math.max(rows, t.value().nm() - lining - skin))
          .orElse(rows + Makeup.BETWEEN_ROWS);
    }
    if (make.kind() == WallSpec.Kind.FRAMED || make.kind() == WallSpec.Kind.OPEN) {
      return make.studs().value().depth().nm();
    }
    long whole =
        make.thickness()
            .map(t -> t.value().nm())
            .orElse(outer ? Makeup.MASONRY_OUTER : Makeup.MASONRY_INNER + lining);
    return Math.max(Makeup.THINNEST_WALL, whole - lining);
  }

  /** Sheathing and cladding, or what a stated thickness leaves for them. */
  static long cladding(Make make, long lining) {
    long usual = Makeup.SHEATHING + Makeup.CLADDING;
    if (make.isDouble()) {
      return usual;
    }
    return make.thickness()
        .map(
            t ->
                Math.max(
                    Makeup.SHEATHING, t.value().nm() - lining - make.studs().value().depth().nm()))
        .orElse(usual);
  }
}
