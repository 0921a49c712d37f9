package holloway.survey;

import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Fact;
import holloway.house.LayoutCorner;
import holloway.house.Lining;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.limits.SteelPractice;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToLongFunction;

/** Turns framed strips of one level into walls. */
final class WallBuilder {
  private final String level;
  private final Storeys storeys;
  private final Spreads spreads;
  private final Bearing bearing;
  private final LayoutCorner layout;

  WallBuilder(
      String level, Storeys storeys, Spreads spreads, Bearing bearing, LayoutCorner layout) {
    this.level = level;
    this.storeys = storeys;
    this.spreads = spreads;
    this.bearing = bearing;
    this.layout = layout;
  }

  /** Sorted by id; openings and found studs are added later. */
  List<Wall> build(List<Framed> framed) {
    List<String> ids = ids(framed);
    List<Wall> out = new ArrayList<>();
    for (int i = 0; i < framed.size(); i++) {
      out.add(wall(framed.get(i), ids.get(i), Junctions.on(framed.get(i), framed, ids)));
    }
    out.sort(Comparator.comparing(Wall::id));
    return out;
  }

  private List<String> ids(List<Framed> framed) {
    TreeMap<String, List<Integer>> byName = new TreeMap<>();
    for (int i = 0; i < framed.size(); i++) {
      byName.computeIfAbsent(stem(framed.get(i)), k -> new ArrayList<>()).add(i);
    }
    String[] ids = new String[framed.size()];
    byName.forEach(
        (stem, same) -> {
          same.sort(
              Comparator.comparing((Integer i) -> southWest(framed.get(i)))
                  .thenComparing(i -> framed.get(i).strip(), Strip.ORDER));
          for (int k = 0; k < same.size(); k++) {
            boolean named = framed.get(same.get(k)).strip().make().name().isPresent();
            ids[same.get(k)] = named && k == 0 ? stem : stem + "/" + (k + 1);
          }
        });
    return List.of(ids);
  }

  private String stem(Framed f) {
    List<String> sides = new ArrayList<>(pieceOf(f).sides());
    sides.sort(Comparator.naturalOrder());
    return f.strip().make().name().orElse(level + "/" + String.join("-", sides));
  }

  /** The strip with only the faces that this piece shows. */
  private static Strip pieceOf(Framed f) {
    Strip s = f.strip();
    List<Strip.Shown> own =
        s.shown().stream().filter(x -> f.range().contains(x.s().mid())).toList();
    return own.isEmpty()
        ? s
        : new Strip(s.heading(), s.kind(), s.s(), s.t(), s.core(), s.outside(), s.make(), own);
  }

  private static Point2 southWest(Framed f) {
    return f.strip().heading().frame().toWorld(f.range().lo(), f.strip().core().lo(), 0).plan();
  }

  private Wall wall(Framed f, String id, List<Wall.Junction> junctions) {
    Strip s = f.strip();
    Strip own = pieceOf(f);
    long z0 = most(own, e -> e.room().floorZ());
    Frame h = s.heading().frame();
    Frame frame = new Frame(h.toWorld(f.range().lo(), s.t().lo(), z0), h.u(), h.v(), h.w());
    Make make = s.make();
    long top = top(own, make);
    boolean separation = make.garageSeparation().orElse(separatesGarage(own));
    return new Wall(
        id,
        level,
        make.kind(),
        frame,
        f.range().length(),
        s.t().length(),
        shifted(s.core(), -s.t().lo()),
        top - z0,
        s.outside(),
        make.studs(),
        make.every(),
        laidOut(f, make.every().value()),
        bearing.of(f, separation),
        make.fill(),
        lining(own, make, 0),
        lining(own, make, 1),
        separation,
        make.balloon() && s.isOuter(),
        make.singleTopPlate() || isSteel(make) || make.traits().height().isPresent(),
        make.blocksAt().stream().map(WallBuilder::plain).toList(),
        faces(own, f.range(), z0, top - z0),
        List.of(),
        junctions,
        new Length(most(own, spreads::of)),
        traits(make, top - z0));
  }

  private static long most(Strip s, ToLongFunction<Edge> what) {
    return s.shown().stream().mapToLong(x -> what.applyAsLong(x.edge())).max().orElseThrow();
  }

  private static Fact<Long> plain(Fact<Length> b) {
    return new Fact<>(b.value().nm(), b.spread(), b.origin(), b.where());
  }

  /**
   * The usual layout from the end of the framing that layouts begin at, a stud centre at each
   * spacing. Nothing is known of it within one spacing, so its spread is the spacing over root 12.
   */
  private Fact<Long> laidOut(Framed f, Length every) {
    boolean down = LaidOut.fromHigh(layout, f.strip().heading().frame());
    long first = down ? f.range().length() - every.nm() : every.nm();
    return Fact.assumed(first, Length.mm(Math.round(every.toMm() / Math.sqrt(12))));
  }

  private static Interval shifted(Interval i, long by) {
    return new Interval(i.lo() + by, i.hi() + by);
  }

  private static boolean separatesGarage(Strip s) {
    boolean garage = s.shown().stream().anyMatch(x -> x.edge().room().room().garage());
    boolean other = s.shown().stream().anyMatch(x -> !x.edge().room().room().garage());
    return garage && other && !s.isOuter();
  }

  private static boolean isSteel(Make make) {
    return make.kind() == WallSpec.Kind.FRAMED && make.studs().value().kind() == Timber.Kind.STEEL;
  }

  /** Steel studs are punched where the person says, else where they usually are. */
  private static WallTraits traits(Make make, long height) {
    WallTraits t = make.traits();
    if (!isSteel(make) || !t.knockouts().isEmpty()) {
      return t;
    }
    List<Fact<Length>> usual =
        SteelPractice.usualKnockouts(new Length(height)).stream()
            .map(z -> Fact.assumed(z, SteelPractice.FIRST))
            .toList();
    return t.withKnockouts(usual);
  }

  /**
   * What a cut-out has to get through: of several layers the hardest; of several rooms what most of
   * that side is lined with.
   */
  private static Lining lining(Strip s, Make make, int side) {
    return s.shown().stream()
        .filter(x -> x.side() == side)
        .min(
            Comparator.comparingLong((Strip.Shown x) -> -Math.round(x.s().length() / 1e6))
                .thenComparing(x -> x.edge().room().name())
                .thenComparing(x -> x.edge().id()))
        .map(
            x ->
                make.traits()
                    .findLayers(x.edge().side())
                    .map(WallTraits.Layers::hardest)
                    .orElse(x.edge().room().room().walls()))
        .orElse(Lining.OPEN);
  }

  /** Of the upper plate: over the higher ceiling's lining, or under the cap of a low wall. */
  private long top(Strip s, Make make) {
    long whole = most(s, e -> e.room().ceilingZ() + storeys.lining(e.room().room()));
    return make.traits()
        .height()
        .map(h -> most(s, e -> e.room().floorZ()) + h.value().nm() - Makeup.CAP)
        .orElse(whole);
  }

  private static List<Wall.WallFace> faces(Strip s, Interval range, long z0, long height) {
    TreeMap<String, List<Strip.Shown>> byEdge = new TreeMap<>();
    for (Strip.Shown x : s.shown()) {
      byEdge.computeIfAbsent(x.edge().id(), k -> new ArrayList<>()).add(x);
    }
    List<Wall.WallFace> out = new ArrayList<>();
    for (List<Strip.Shown> same : byEdge.values()) {
      Edge e = same.get(0).edge();
      long lo = same.stream().mapToLong(x -> x.s().lo()).min().orElseThrow();
      long hi = same.stream().mapToLong(x -> x.s().hi()).max().orElseThrow();
      out.add(
          new Wall.WallFace(
              e.room().name(),
              e.side(),
              e.ordinal(),
              same.get(0).side(),
              new Interval(range.clamp(lo) - range.lo(), range.clamp(hi) - range.lo()),
              e.room().floorZ() - z0,
              s.make().traits().height().isPresent()
                  ? Math.min(height, e.room().ceilingZ() - z0)
                  : e.room().ceilingZ() - z0));
    }
    out.sort(
        Comparator.comparingInt(Wall.WallFace::side)
            .thenComparingLong(x -> x.s().lo())
            .thenComparing(Wall.WallFace::room));
    return out;
  }
}
