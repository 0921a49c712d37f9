package holloway.survey;

import holloway.house.Conduit;
import holloway.house.Fact;
import holloway.house.Origin;
import holloway.house.Room.Placing;
import holloway.house.Side;
import holloway.house.Where;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Walks through the placings from the first room, gives every face its start position, and adds one
 * observation per placing and axis.
 */
final class Placement {
  private final TreeMap<String, RoomShape> shapes;
  private final Columns columns;
  private final Anchors anchors;
  private final WallPriors priors;
  private final Texts texts;
  private final Problems problems;
  private final List<String> assumed = new ArrayList<>();
  private final List<Conduit> links;
  private RoomShape first;

  Placement(
      Network ew,
      Network ns,
      TreeMap<String, RoomShape> shapes,
      Columns columns,
      WallPriors priors,
      Texts texts,
      Problems problems,
      List<Conduit> links) {
    this.links = links;
    this.anchors = new Anchors(ew, ns, texts);
    this.shapes = shapes;
    this.columns = columns;
    this.priors = priors;
    this.texts = texts;
    this.problems = problems;
  }

  List<String> assumed() {
    return assumed;
  }

  /** The first room; its first corner is held during the adjustment. */
  RoomShape first() {
    return first;
  }

  void walk() {
    List<RoomShape> free =
        all().stream().filter(s -> s.room().placing() instanceof Placing.Free).toList();
    if (free.isEmpty()) {
      problems.add(
          Where.NOWHERE,
          "every room is placed by another; one room has to be the first, without a place");
      return;
    }
    free.stream()
        .skip(1)
        .forEach(
            s ->
                problems.add(
                    s.room().where(),
                    "room %s says nothing of where it is; only the first room (%s) may. Maybe: east-of, north-of, above, or at",
                    s.room().name(),
                    free.get(0).room().name()));
    first = free.get(0);
    anchors.settle(first, 0, 0);
    grow();
    all().stream().filter(s -> s.room().placing() instanceof Placing.Apart).forEach(this::apart);
    reportUnplaced();
  }

  private void grow() {
    boolean moved = true;
    while (moved) {
      moved = false;
      for (RoomShape s : all()) {
        if (!anchors.hold(s.room().name())) {
          moved |= tryPlace(s);
        }
      }
    }
  }

  /** Stands the building up somewhere, then moves it to where it is drawn. */
  private void apart(RoomShape s) {
    List<RoomShape> there = standing();
    anchors.settle(s, 0, 0);
    grow();
    List<RoomShape> own = new ArrayList<>(standing());
    own.removeAll(there);
    new ApartPlace(shapes, anchors, there, own).settle(links, first, s);
    assumed.add(
        "the building of %s stands apart and nobody taped where: it is drawn where its link reaches. Maybe tape it and say 'at'"
            .formatted(s.room().name()));
  }

  private List<RoomShape> standing() {
    return all().stream().filter(r -> anchors.hold(r.room().name())).toList();
  }

  private Collection<RoomShape> all() {
    return shapes.values();
  }

  private void reportUnplaced() {
    if (!problems.isEmpty()) {
      return;
    }
    for (RoomShape s : all()) {
      if (!anchors.hold(s.room().name())) {
        problems.add(
            s.room().where(),
            "room %s cannot be placed: the rooms it is placed by lead round in a circle, never to %s",
            s.room().name(),
            first.room().name());
      }
    }
  }

  private boolean tryPlace(RoomShape s) {
    Placing placing = s.room().placing();
    if (placing instanceof Placing.At at) {
      return placeAt(s, at);
    }
    if (placing instanceof Placing.Beside b) {
      return isPlaced(s, b.neighbour(), b.where()) && placeBeside(s, shapes.get(b.neighbour()), b);
    }
    if (placing instanceof Placing.Stacked t) {
      return isPlaced(s, t.neighbour(), t.where()) && placeStacked(s, shapes.get(t.neighbour()), t);
    }
    return false;
  }

  private boolean isPlaced(RoomShape s, String neighbour, Where where) {
    if (!shapes.containsKey(neighbour)) {
      problems.add(
          where, "room %s is placed by %s, which is not a room", s.room().name(), neighbour);
    } else if (neighbour.equals(s.room().name())) {
      problems.add(where, "room %s is placed by itself", neighbour);
    }
    return anchors.hold(neighbour);
  }

  private boolean placeAt(RoomShape s, Placing.At at) {
    RoomShape.Face west = s.edge(Side.WEST);
    RoomShape.Face south = s.edge(Side.SOUTH);
    RoomShape.Face west0 = first.edge(Side.WEST);
    RoomShape.Face south0 = first.edge(Side.SOUTH);
    String what = s.room().name() + " at, ";
    long dx = anchors.tie(west0, west, at.x(), at.x().spread().nm(), what + "eastward");
    long dy = anchors.tie(south0, south, at.y(), at.y().spread().nm(), what + "northward");
    anchors.settle(s, dx, dy);
    return true;
  }

  private boolean placeBeside(RoomShape s, RoomShape n, Placing.Beside b) {
    if (!s.room().level().equals(n.room().level()) && !columns.apart(s.room(), n.room())) {
      problems.add(
          b.where(),
          "room %s lies beside %s, which is on level %s",
          s.room().name(),
          n.room().name(),
          n.room().level());
      return false;
    }
    if (b.align().runsEastWest() == b.side().runsEastWest()) {
      problems.add(
          b.where(),
          "room %s lies %s of %s, so align one of the other two sides, not %s",
          s.room().name(),
          b.side().word(),
          n.room().name(),
          b.align().word());
      return false;
    }
    RoomShape.Face own = s.edge(b.align());
    RoomShape.Face theirs = n.edge(b.align());
    String what = "%s in line with %s".formatted(own, theirs);
    long spread = Anchors.spread(b.shift(), Makeup.ALIGN_SPREAD);
    long d = anchors.tie(theirs, own, b.shift(), spread, what);
    return push(s, n, b, d);
  }

  /** Two faces that look at each other, and where the room would be with a wall between them. */
  private record Pair(
      RoomShape.Face theirs, RoomShape.Face own, WallPriors.Prior prior, long offset) {}

  /** Moves the room against its neighbour until the first facing faces are one wall apart. */
  private boolean push(RoomShape s, RoomShape n, Placing.Beside b, long d) {
    int sign = b.side() == Side.EAST || b.side() == Side.NORTH ? 1 : -1;
    Optional<Pair> best =
        pairs(s, n, b, d, sign).stream()
            .max((p, q) -> Long.compare(sign * p.offset, sign * q.offset));
    if (best.isEmpty()) {
      problems.add(
          b.where(),
          "room %s is said to lie %s of %s, but aligned so no part of it faces it. Maybe another side is aligned, or the shift is too large",
          s.room().name(),
          b.side().word(),
          n.room().name());
      return false;
    }
    Pair p = best.get();
    anchors
        .network(b.side())
        .observe(
            p.theirs.unknown(),
            p.own.unknown(),
            sign * p.prior.thickness(),
            p.prior.spread(),
            Label.thickness(p.prior.text(), p.prior.where()));
    boolean ew = b.side().runsEastWest();
    anchors.settle(s, ew ? d : p.offset, ew ? p.offset : d);
    return true;
  }

  private List<Pair> pairs(RoomShape s, RoomShape n, Placing.Beside b, long d, int sign) {
    long shift = d - anchors.of(n, Axis.across(b.align()));
    long base = anchors.of(n, Axis.across(b.side()));
    List<Pair> pairs = new ArrayList<>();
    for (RoomShape.Face t : n.squareFaces(b.side())) {
      for (RoomShape.Face o : s.squareFaces(b.side().opposite())) {
        if (t.along().lo() < o.along().hi() + shift && o.along().lo() + shift < t.along().hi()) {
          WallPriors.Prior prior = priors.between(t, o);
          long offset = base + t.across() + sign * prior.thickness() - o.across();
          pairs.add(new Pair(t, o, prior, offset));
        }
      }
    }
    return pairs;
  }

  private boolean placeStacked(RoomShape s, RoomShape n, Placing.Stacked t) {
    if (s.room().level().equals(n.room().level())) {
      problems.add(
          t.where(),
          "room %s lies %s %s, but both are on level %s",
          s.room().name(),
          t.above() ? "above" : "below",
          n.room().name(),
          s.room().level());
      return false;
    }
    RoomShape.Face ownNs = s.edge(t.alignNorthSouth());
    RoomShape.Face ownEw = s.edge(t.alignEastWest());
    RoomShape.Face theirNs = n.edge(t.alignNorthSouth());
    RoomShape.Face theirEw = n.edge(t.alignEastWest());
    String what =
        "%s %s %s".formatted(s.room().name(), t.above() ? "above" : "below", n.room().name());
    anchors.settle(
        s,
        storeyTie(theirEw, ownEw, t.shiftEast(), what),
        storeyTie(theirNs, ownNs, t.shiftNorth(), what));
    return true;
  }

  /** A tie that nobody taped is assumed, and its spread reaches everything on that storey. */
  private long storeyTie(
      RoomShape.Face theirs, RoomShape.Face own, Fact<Length> shift, String what) {
    if (shift.origin() != Origin.MEASURED) {
      assumed.add(
          "%s: where it stands over the other storey is assumed to within %s. Maybe tape an outside corner or the stairwell"
              .formatted(what, texts.length(Makeup.TIE_SPREAD)));
    }
    return anchors.tie(theirs, own, shift, Anchors.spread(shift, Makeup.TIE_SPREAD), what);
  }
}
