package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import holloway.framing.Deck;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Point3;
import holloway.house.RulePlace;
import holloway.house.Timber;
import holloway.limits.MemberMake;
import holloway.limits.RulePack;
import holloway.limits.SteelPractice;
import holloway.limits.Verdict;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** C1, C2, C4: what the rule pack of the place says of every member that is bored. */
final class BoredMember implements PlanRule {
  /** Blocking and rims rest on a wall all along, so any place along them is the kindest one. */
  private static final Length SUPPORTED = Length.mm(3000L);

  private static final String DECIDES = " The local code decides.";

  @Override
  public String id() {
    return "bored-member";
  }

  @Override
  public String about() {
    return "Holes in joists, studs and plates must keep within the sizes and edge distances of the"
        + " place's rules. Nothing is said of a hole that does.";
  }

  @Override
  public Entry entry() {
    return new Entry(
        "law (US), standard (UK), practice elsewhere",
        "IRC R502.8, R602.6, R802.7; BS 5268-2 for the UK",
        "of the depth: 1/3 (US), 1/4 and 0.25 to 0.4 of the span (UK); of a stud: 40 or 60 % (US)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    List<Finding> out = new ArrayList<>();
    for (Finished.Made made : finished.holes()) {
      for (Member m : finished.pierced(made.site())) {
        judge(m, made, finished)
            .filter(v -> !v.allowed() || v.severity() != Severity.NOTE)
            .ifPresent(v -> out.add(finding(made, m, v, finished)));
      }
    }
    return out;
  }

  private Finding finding(Finished.Made made, Member m, Verdict v, Finished finished) {
    RulePlace place = finished.place();
    String where = "%s in the %s: ".formatted(made.hole().label(), finished.named(m));
    Length deep = new Length(standsUpright(m.kind()) ? m.box().y().length() : m.box().z().length());
    String measured =
        Legs.number("%.0f mm", made.hole().diameterMm()) + Legs.number(" in %.0f mm", deep.toMm());
    return say(
        v.severity(),
        Place.of(made.hole().id(), made.hole().at()),
        v.from(),
        !v.allowed(),
        v.allowed()
            ? new Said(where + "it may be bored.", measured, "as is said here", v.text() + DECIDES)
            : new Said(
                where + v.text(),
                measured,
                limit(v, place),
                "Do not bore it; plan again without it." + DECIDES));
  }

  /** The packs' limits; of a person's own rules the text names the figure. */
  private static String limit(Verdict v, RulePlace place) {
    if (v.own()) {
      return "as said by the " + v.source();
    }
    return switch (place) {
      case US -> "of a joist's depth 1/3; of a stud's width 40 % where it bears, else 60 %";
      case UK -> "of a joist's depth 1/4, at 0.25 to 0.4 of the span; of a stud's width 1/4";
      case EU, NONE -> "the stricter of the US and UK figures";
    };
  }

  /** Of these a hole takes part of the wall's depth, of all others part of the member's height. */
  private static boolean standsUpright(MemberKind kind) {
    return switch (kind) {
      case JOIST, BLOCKING, RIM, CEILING_JOIST, RAFTER, HEADER, CHORD, TOP_CHORD, LEDGER -> false;
      default -> true;
    };
  }

  private static Optional<Verdict> judge(Member m, Finished.Made made, Finished finished) {
    Length bit = Length.mm((long) made.hole().diameterMm());
    RulePack pack = finished.pack();
    boolean bearing =
        finished.wall(m.owner()).map(w -> w.bearing().value() || w.isOuter()).orElse(true);
    Length width = new Length(m.box().y().length());
    if (m.kind().isTimber()
        && m.kind() != MemberKind.FIRE_BLOCK
        && GrommetInSteel.isSteel(m.owner(), finished)) {
      boolean track = m.kind() == MemberKind.TOP_PLATE || m.kind() == MemberKind.BOTTOM_PLATE;
      return Optional.of(track ? SteelPractice.trackBore(bearing) : SteelPractice.studBore());
    }
    return switch (m.kind()) {
      case TOP_PLATE, BOTTOM_PLATE -> Optional.of(pack.plateBore(width, bit, bearing));
      case STUD, KING_STUD, JACK_STUD, CRIPPLE, POST, FIRE_BLOCK, SILL ->
          Optional.of(
              pack.studBore(width, bit, NailPlate.edge(m, made.site(), bit), bearing, false));
      case JOIST, BLOCKING, RIM, CEILING_JOIST, RAFTER, HEADER, CHORD, TOP_CHORD, LEDGER ->
          Optional.of(spanning(m, made, finished, bit));
      default -> Optional.empty();
    };
  }

  private static Verdict spanning(Member m, Finished.Made made, Finished finished, Length bit) {
    Point3 at = m.frame().toLocal(made.site().middle());
    Length top = new Length(m.box().z1() - at.z() - bit.nm() / 2);
    Length bottom = new Length(at.z() - m.box().z0() - bit.nm() / 2);
    long[] bay = bay(m, at.x(), finished);
    boolean spanless = m.kind() == MemberKind.BLOCKING || m.kind() == MemberKind.RIM;
    Length span = spanless ? SUPPORTED : new Length(bay[1] - bay[0]);
    Length along = spanless ? new Length(SUPPORTED.nm() / 3) : new Length(at.x() - bay[0]);
    return finished
        .pack()
        .joistBore(
            new Length(m.box().z().length()), bit, top, bottom, along, span, make(m, finished));
  }

  /** The supports on either side of a place along a member: its ends and bearing walls between. */
  static long[] bay(Member m, long u, Finished finished) {
    long[] bay = {m.box().x0(), m.box().x1()};
    deck(m, finished)
        .ifPresent(
            d ->
                d.bearings()
                    .forEach(
                        b -> {
                          if (b.mid() <= u) {
                            bay[0] = Math.max(bay[0], b.mid());
                          } else {
                            bay[1] = Math.min(bay[1], b.mid());
                          }
                        }));
    return bay;
  }

  private static Optional<Deck> deck(Member m, Finished finished) {
    return finished.house().framed().decks().stream()
        .filter(d -> d.id().equals(m.owner()))
        .findFirst();
  }

  static MemberMake make(Member m, Finished finished) {
    return switch (m.kind()) {
      case HEADER -> MemberMake.BEAM;
      case CHORD, TOP_CHORD -> MemberMake.TRUSS;
      case RAFTER -> MemberMake.RAFTER;
      default ->
          deck(m, finished).map(d -> make(d.timber().value().kind())).orElse(MemberMake.SOLID);
    };
  }

  private static MemberMake make(Timber.Kind kind) {
    return switch (kind) {
      case SOLID -> MemberMake.SOLID;
      case I_JOIST -> MemberMake.I_JOIST;
      case OPEN_WEB -> MemberMake.OPEN_WEB;
      case STEEL -> MemberMake.STEEL;
    };
  }

  static boolean spans(MemberKind kind) {
    return kind == MemberKind.JOIST || kind == MemberKind.CEILING_JOIST;
  }
}
