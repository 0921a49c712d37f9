package holloway.hollow;

import holloway.catalog.Fit;
import holloway.finding.Source;
import holloway.framing.Attic;
import holloway.framing.Deck;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.framing.Notch;
import holloway.framing.Notches;
import holloway.geometry.Point3;
import holloway.house.Timber;
import holloway.limits.MemberMake;
import holloway.limits.RulePack;
import holloway.limits.SteelPractice;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Asks the rule pack for the largest bit at a spot of a member; knows how the house's members are
 * made.
 */
final class Lawful {
  /** The two answers for one member, millimetres; 0 where no bore is lawful. */
  record Bits(int plain, int plated, String source) {}

  private final RulePack pack;
  private final Map<String, Wall> walls = new TreeMap<>();
  private final Map<String, Deck> decks = new TreeMap<>();
  private final Map<String, List<Notch>> notches = new TreeMap<>();

  Lawful(Framed framed) {
    pack = framed.placed().house().rulePack();
    framed.placed().walls().forEach(w -> walls.put(w.id(), w));
    framed.decks().forEach(d -> decks.put(d.id(), d));
    for (Notch n : Notches.of(framed).cut()) {
      notches.computeIfAbsent(n.member().id(), k -> new ArrayList<>()).add(n);
    }
  }

  /**
   * The largest lawful bits through a member for a bore whose axis passes the world point {@code
   * at}.
   */
  Bits at(Member m, Point3 at) {
    int plain = 0;
    int plated = 0;
    String source = "";
    for (int bit : Fit.BITS_MM) {
      var verdict = verdict(m, m.frame().toLocal(at), Length.mm(bit));
      if (verdict.allowed()) {
        plated = bit;
        plain = plate(m, m.frame().toLocal(at), Length.mm(bit)) ? plain : bit;
      } else {
        source = verdict.source() + ": " + verdict.text();
        break;
      }
    }
    return new Bits(plain, plated, source);
  }

  /** A piece of a wall shared with a neighbour: no law of timber asks, nobody may cut it. */
  boolean isShared(Member m) {
    Wall w = walls.get(m.owner());
    return w != null && w.isParty();
  }

  Wall wallOf(Member m) {
    return walls.get(m.owner());
  }

  /** A stud, post, track or header of a wall of steel studs. */
  private boolean isSteel(Member m) {
    Wall w = walls.get(m.owner());
    return w != null
        && m.kind().isTimber()
        && m.kind() != MemberKind.FIRE_BLOCK
        && w.studs().value().kind() == Timber.Kind.STEEL;
  }

  /** The pack's word, and where that lets it the word of the person's own rules. */
  private holloway.limits.Verdict verdict(Member m, Point3 p, Length bit) {
    var packs = packs(m, p, bit);
    for (Notch n : notches.getOrDefault(m.id(), List.of())) {
      packs = packs.allowed() ? beside(n, p, bit) : packs;
    }
    return packs.allowed() ? pack.local().againstBore(m.kind().word(), bit).orElse(packs) : packs;
  }

  /** Whatever was cut out of this member before. */
  private holloway.limits.Verdict beside(Notch n, Point3 p, Length bit) {
    Length along = new Length(n.clearAlong(p, bit.nm() / 2));
    return n.upright()
        ? pack.studBesideNotch(along)
        : pack.besideNotch(new Length(n.clear(p, bit.nm() / 2)), along);
  }

  private holloway.limits.Verdict packs(Member m, Point3 p, Length bit) {
    if (isSteel(m)) {
      return m.kind() == MemberKind.TOP_PLATE || m.kind() == MemberKind.BOTTOM_PLATE
          ? SteelPractice.trackBore(bearing(m))
          : SteelPractice.studBore();
    }
    return switch (m.kind()) {
      case BOTTOM_PLATE, TOP_PLATE -> pack.plateBore(depthAcross(m), bit, bearing(m));
      case STUD, KING_STUD, JACK_STUD, CRIPPLE, POST, FIRE_BLOCK, SILL ->
          pack.studBore(depthAcross(m), bit, edge(m, p, bit), bearing(m), false);
      case JOIST, BLOCKING, RIM -> joist(m, p, bit);
      case CHORD, TOP_CHORD -> beam(m, p, bit, MemberMake.TRUSS);
      case HEADER -> beam(m, p, bit, MemberMake.BEAM);
      case CEILING_JOIST, RAFTER -> beam(m, p, bit, MemberMake.RAFTER);
      case LEDGER -> beam(m, p, bit, MemberMake.SOLID);
      default -> holloway.limits.Verdict.yes(Source.anywhere("no structural limit known"));
    };
  }

  private holloway.limits.Verdict joist(Member m, Point3 p, Length bit) {
    Deck deck = decks.get(m.owner());
    // rims and blocks of engineered floors come from the same maker: who knows better may say so
    MemberMake make = make(deck.timber().value());
    long top = m.box().z1() - p.z() - bit.nm() / 2;
    long bottom = p.z() - m.box().z0() - bit.nm() / 2;
    long[] bay = span(deck, m, p.x());
    boolean supported = m.kind() != MemberKind.JOIST;
    long span = supported ? m.box().y().length() : bay[1] - bay[0];
    long along = supported ? span / 3 : p.x() - bay[0];
    return pack.joistBore(
        new Length(m.box().z().length()),
        bit,
        new Length(top),
        new Length(bottom),
        new Length(along),
        new Length(span),
        make);
  }

  /** The supports on either side of a place along a joist: its ends and bearing walls between. */
  private static long[] span(Deck deck, Member joist, long u) {
    long lo = joist.box().x0();
    long hi = joist.box().x1();
    for (var b : deck.bearings()) {
      lo = b.mid() <= u ? Math.max(lo, b.mid()) : lo;
      hi = b.mid() > u ? Math.min(hi, b.mid()) : hi;
    }
    return new long[] {lo, hi};
  }

  private holloway.limits.Verdict beam(Member m, Point3 p, Length bit, MemberMake make) {
    long top = m.box().z1() - p.z() - bit.nm() / 2;
    long bottom = p.z() - m.box().z0() - bit.nm() / 2;
    long span = Math.max(m.box().x().length(), m.box().y().length());
    return pack.joistBore(
        new Length(m.box().z().length()),
        bit,
        new Length(top),
        new Length(bottom),
        new Length(span / 3),
        new Length(span),
        make);
  }

  private static MemberMake make(Timber t) {
    return switch (t.kind()) {
      case SOLID -> MemberMake.SOLID;
      case I_JOIST -> MemberMake.I_JOIST;
      case OPEN_WEB -> MemberMake.OPEN_WEB;
      case STEEL -> MemberMake.STEEL;
    };
  }

  private boolean plate(Member m, Point3 p, Length bit) {
    boolean inWall = walls.containsKey(m.owner()) && m.kind().isTimber() && !isSteel(m);
    return inWall && pack.needsNailPlate(depthAcross(m), bit, edge(m, p, bit));
  }

  private static Length depthAcross(Member m) {
    return new Length(m.box().y().length());
  }

  /**
   * Wood between the hole and the nearer face of the wall's framing; negative when the bit breaks
   * out.
   */
  private static Length edge(Member m, Point3 p, Length bit) {
    return new Length(Math.min(p.y() - m.box().y0(), m.box().y1() - p.y()) - bit.nm() / 2);
  }

  private boolean bearing(Member m) {
    Wall w = walls.get(m.owner());
    return w == null || w.isOuter() || w.bearing().value();
  }

  /**
   * Attics are named here so that a reader finds why chords are never bored: their make is TRUSS or
   * RAFTER.
   */
  static boolean neverBored(Attic attic) {
    return attic.roof().frame() == holloway.house.Roof.Frame.TRUSSES;
  }
}
