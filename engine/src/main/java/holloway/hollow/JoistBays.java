package holloway.hollow;

import holloway.framing.Deck;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The closed bays between joists: from rim to rim, shut by blocking and by obstacles that fill
 * them. Over a crawlspace or a room with an open ceiling there are none: those joists are worked
 * from below.
 */
final class JoistBays {
  static final long NARROWEST = 60_000_000;
  static final long SHORTEST = 150_000_000;

  private final Framed framed;
  private final Jetties jetties;

  /**
   * @param refused takes what is shut because nobody can know what is in it
   */
  JoistBays(Framed framed, List<Refused> refused) {
    this.framed = framed;
    this.jetties = new Jetties(framed, refused);
  }

  List<Hollow> bays() {
    List<Hollow> out = new ArrayList<>();
    for (Deck deck : framed.decks()) {
      if (deck.spec().crawlspace().isEmpty()) {
        out.addAll(baysOf(deck));
      }
    }
    return out;
  }

  private List<Hollow> baysOf(Deck deck) {
    List<Hollow> out = new ArrayList<>();
    Polygon2 local = Scan.toLocal(deck.outline(), deck.frame());
    List<Member> shut = framed.members().stream().filter(m -> shuts(deck, m)).toList();
    for (int i = 0; i + 1 < deck.joists().size(); i++) {
      Interval v =
          new Interval(
              deck.joists().get(i).hi(),
              Math.max(deck.joists().get(i).hi(), deck.joists().get(i + 1).lo()));
      if (v.length() < NARROWEST) {
        continue;
      }
      for (Interval u : Scan.inside(local, v)) {
        List<Interval> closed = new ArrayList<>(openBelow(deck, v));
        deck.wells().stream().filter(w -> w.y().overlaps(v)).forEach(w -> closed.add(w.x()));
        shut.forEach(m -> closedBy(deck.frame(), deck.joistZ(), m, v).ifPresent(closed::add));
        for (Interval stretch : u.without(closed, SHORTEST)) {
          if (!jetties.isOne(deck, v, stretch)) {
            out.add(bay(deck, v, stretch, deck.fill()));
          } else if (jetties.isKnown(deck, v, stretch)) {
            out.add(bay(deck, v, stretch, coldFill(deck)));
          }
        }
      }
    }
    return out;
  }

  private static boolean shuts(Deck deck, Member m) {
    boolean own =
        m.owner().equals(deck.id())
            && (m.kind() == MemberKind.RIM
                || m.kind() == MemberKind.BLOCKING
                || m.kind() == MemberKind.HEADER);
    return own
        || Neighbours.isTheirs(m)
        || m.kind() == MemberKind.OBSTACLE
        || m.kind() == MemberKind.BEAM
        || m.kind() == MemberKind.MASONRY;
  }

  /**
   * The stretch of a bay that a member takes, if it stands in the joists' depth and leaves no
   * passage beside it.
   */
  static Optional<Interval> closedBy(Frame frame, Interval depth, Member m, Interval v) {
    Box b = m.box();
    var p = frame.toLocal(m.frame().toWorld(b.x0(), b.y0(), b.z0()));
    var q = frame.toLocal(m.frame().toWorld(b.x1(), b.y1(), b.z1()));
    Interval mu = new Interval(Math.min(p.x(), q.x()), Math.max(p.x(), q.x()));
    Interval mv = new Interval(Math.min(p.y(), q.y()), Math.max(p.y(), q.y()));
    Interval mz = new Interval(Math.min(p.z(), q.z()), Math.max(p.z(), q.z()));
    boolean inDepth = mz.overlaps(depth);
    boolean across = mv.lo() <= v.lo() + NARROWEST && mv.hi() >= v.hi() - NARROWEST;
    boolean middle = mv.overlaps(new Interval(v.mid() - 20_000_000, v.mid() + 20_000_000));
    return inDepth && (across || middle) ? Optional.of(mu) : Optional.empty();
  }

  /** Stretches over rooms whose ceiling is open. */
  private List<Interval> openBelow(Deck deck, Interval v) {
    List<Interval> out = new ArrayList<>();
    for (PlacedRoom r : roomsBelow(framed, deck)) {
      if (r.room().ceiling() == Lining.OPEN && r.room().standing().isOpen()) {
        Polygon2 local = Scan.toLocal(r.outline(), deck.frame());
        for (Interval u : Scan.along(local, v.mid())) {
          out.add(new Interval(u.lo() - 10_000_000, u.hi() + 10_000_000));
        }
      }
    }
    return out;
  }

  /** Rooms of the level right below a deck, by name. */
  static List<PlacedRoom> roomsBelow(Framed framed, Deck deck) {
    PlacedLevel own = framed.placed().getLevel(deck.level());
    return framed.placed().rooms().stream()
        .filter(r -> own.isNextOver(framed.placed().getLevel(r.room().level())))
        .sorted(Comparator.comparing(PlacedRoom::name))
        .toList();
  }

  /** A floor over the open air is probably filled, also where the rest of it is empty. */
  private static Fill coldFill(Deck deck) {
    return deck.fill() == Fill.EMPTY ? Fill.UNKNOWN : deck.fill();
  }

  private Hollow bay(Deck deck, Interval v, Interval u, Fill fill) {
    Box box = new Box(u.lo(), u.hi(), v.lo(), v.hi(), deck.joistZ().lo(), deck.joistZ().hi());
    String id = deck.id() + "/bay-" + Tags.of(v.lo()) + "-" + Tags.of(u.lo());
    return new Hollow(
        id,
        HollowKind.JOIST_BAY,
        deck.frame(),
        box,
        Optional.empty(),
        fill,
        deck.id(),
        Optional.empty());
  }
}
