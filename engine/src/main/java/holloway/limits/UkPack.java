package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;
import java.math.BigDecimal;

/**
 * UK guidance for solid timber and masonry. The Building Regulations themselves only ask that the
 * structure stays sound, so these limits are standards, not law.
 */
final class UkPack implements RulePack {
  private static final Source DESIGNED = Source.uk("LABC guidance on notching and drilling");

  private final LocalRules local;

  UkPack(LocalRules local) {
    this.local = local;
  }

  @Override
  public LocalRules local() {
    return local;
  }

  @Override
  public String name() {
    return "uk";
  }

  /** C4-1: a quarter of the depth, at most 65 mm, on the centreline, 0.25 to 0.4 of the span. */
  @Override
  public Verdict joistBore(
      Length depth,
      Length diameter,
      Length top,
      Length bottom,
      Length along,
      Length span,
      MemberMake make) {
    var engineered = NeverBored.judge(make, diameter, top, bottom, Severity.STANDARD, DESIGNED);
    if (engineered.isPresent()) {
      return engineered.get();
    }
    if (make != MemberMake.SOLID) {
      return no(DESIGNED, "No hole in " + make.words() + " without a designer; only in joists.");
    }
    Figure share = local.of(RuleKey.JOIST_HOLE, TimberFigures.UK_JOIST_SHARE);
    if (!share.holds(diameter, depth)) {
      return no(
          RuleKey.JOIST_HOLE,
          share,
          "A hole of %s is over %s of the joist's depth of %s"
              .formatted(diameter, share.said(), depth));
    }
    Figure most = local.of(RuleKey.JOIST_HOLE_SIZE, TimberFigures.UK_JOIST_MOST);
    if (diameter.compareTo(most.length()) > 0) {
      return no(
          RuleKey.JOIST_HOLE_SIZE,
          most,
          "A hole of %s is over the %s that any joist allows".formatted(diameter, most.said()));
    }
    long off = Math.abs(top.nm() - bottom.nm());
    if (off > 2 * TimberFigures.UK_CENTRELINE.length().nm()) {
      return no("The hole is off the joist's centreline by " + new Length(off / 2));
    }
    return inZone(along, span);
  }

  /** Either end is a support, so the zone lies twice in the span. */
  private Verdict inZone(Length along, Length span) {
    Length near = along.nm() * 2 <= span.nm() ? along : span.minus(along);
    Figure from = local.of(RuleKey.JOIST_HOLE_FROM, TimberFigures.UK_SPAN_FROM);
    Figure to = local.of(RuleKey.JOIST_HOLE_TO, TimberFigures.UK_SPAN_TO);
    boolean farEnough = near.nm() >= Math.ceil(from.value() * span.nm());
    if (farEnough && to.holds(near, span)) {
      return Verdict.yes(local.of(RuleKey.JOIST_HOLE, TimberFigures.UK_JOIST_SHARE).from());
    }
    return no(
        farEnough ? RuleKey.JOIST_HOLE_TO : RuleKey.JOIST_HOLE_FROM,
        farEnough ? to : from,
        "The hole is not between %s and %s of the span from a support"
            .formatted(plain(from.value()), plain(to.value())));
  }

  private static String plain(double share) {
    return new BigDecimal(String.valueOf(share)).stripTrailingZeros().toPlainString();
  }

  private Verdict no(RuleKey key, Figure figure, String text) {
    return Verdict.no(local.severity(key, Severity.STANDARD), figure.from(), text + ".");
  }

  private static Verdict no(String text) {
    return no(TimberFigures.UK_JOIST_SHARE.from(), text + ".");
  }

  private static Verdict no(Source source, String text) {
    return Verdict.no(Severity.STANDARD, source, text);
  }

  /** No published figure for studs was seen; the joist's quarter is borrowed, as practice. */
  @Override
  public Verdict studBore(
      Length width, Length diameter, Length edge, boolean bearing, boolean doubled) {
    return bearing
        ? quarter(width, diameter, RuleKey.BEARING_STUD_HOLE)
        : CommonPractice.partition(width, diameter, edge, RuleKey.PARTITION_STUD_HOLE, local);
  }

  @Override
  public Verdict plateBore(Length width, Length diameter, boolean bearing) {
    Length edge = RulePack.centredEdge(width, diameter);
    return bearing
        ? quarter(width, diameter, RuleKey.BEARING_PLATE_HOLE)
        : CommonPractice.partition(width, diameter, edge, RuleKey.PARTITION_PLATE_HOLE, local);
  }

  private Verdict quarter(Length width, Length diameter, RuleKey key) {
    Figure share = local.of(key, TimberFigures.UK_STUD_SHARE);
    return share.holds(diameter, width)
        ? Verdict.yes(share.cited())
        : Verdict.no(
            local.severity(key, Severity.PRACTICE),
            share.cited(),
            "A hole of %s is over %s of the width of %s.".formatted(diameter, share.said(), width));
  }

  /** C4-1: three diameters of the wider hole, centre to centre. */
  @Override
  public Verdict joistSpacing(Length centres, Length diameter, Length other) {
    Length wide = diameter.compareTo(other) < 0 ? other : diameter;
    Figure least = local.of(RuleKey.JOIST_HOLES_APART, TimberFigures.UK_SPACING);
    String many = least.value() == 3 ? "three" : least.said();
    return centres.nm() >= least.value() * wide.nm()
        ? Verdict.yes(least.from())
        : no(
            RuleKey.JOIST_HOLES_APART,
            least,
            "Two holes are %s apart; %s diameters of %s are needed".formatted(centres, many, wide));
  }

  @Override
  public Verdict joistNotch(JoistNotch notch) {
    return NotchLimits.uk(notch);
  }

  /** No published figure for studs was seen; the US one is borrowed, as practice. */
  @Override
  public Verdict studNotch(Length width, Length deep, boolean bearing) {
    return NotchLimits.stud(width, deep, bearing, Severity.PRACTICE, Source.PRACTICE);
  }

  /** C4-4: along the joist; an Irish guide asks the joist's whole depth. */
  @Override
  public Verdict besideNotch(Length clear, Length along) {
    Figure least = TimberFigures.UK_HOLE_TO_NOTCH;
    return along.compareTo(least.length()) >= 0
        ? Verdict.yes(least.from())
        : no(
            least.from().noting("; sources differ, Ireland's TGD A asks the joist's depth"),
            "Less than " + least.said() + " along the joist between the hole and a notch.");
  }

  @Override
  public Verdict channel(Length leaf, Length depth, boolean upright) {
    return channel(
        leaf, depth, upright, Severity.STANDARD, TimberFigures.UK_CHANNEL_UPRIGHT.cited(), local);
  }

  /** A third of the leaf upright, a sixth level. */
  static Verdict channel(
      Length leaf,
      Length depth,
      boolean upright,
      Severity severity,
      Source source,
      LocalRules local) {
    RuleKey key = upright ? RuleKey.UPRIGHT_CHANNEL : RuleKey.LEVEL_CHANNEL;
    Figure share = local.of(key, key.usual("uk").get(0));
    Source whose = share.from().isOwn() ? share.from() : source;
    return share.holds(depth, leaf)
        ? Verdict.yes(whose)
        : Verdict.no(
            local.severity(key, severity),
            whose,
            "%s channel may be at most %s of the leaf of %s deep; this is %s."
                .formatted(upright ? "An upright" : "A level", share.said(), leaf, depth));
  }

  /** No UK clause was confirmed; cable along a return-air space is advised against. */
  @Override
  public Verdict returnAir(boolean across, boolean plenumRated) {
    return CommonPractice.returnAir(across, plenumRated);
  }

  @Override
  public Verdict fromPower(Length gap, PowerWiring power, Length wanted) {
    Figure least = local.of(RuleKey.BESIDE_POWER, WiringFigures.UK_FROM_POWER);
    return gap.compareTo(least.length()) < 0
        ? Verdict.no(
            local.severity(RuleKey.BESIDE_POWER, Severity.STANDARD),
            least.cited(),
            "Keep %s from mains cable, or a divider between; this is %s."
                .formatted(least.said(), gap))
        : PowerPractice.judge(gap, wanted, least.cited(), local);
  }
}
