package holloway.limits;

import holloway.finding.Severity;
import holloway.units.Length;

/**
 * UK guidance for solid timber and masonry. The Building Regulations themselves only ask that the
 * structure stays sound, so these limits are standards, not law.
 */
final class UkPack implements RulePack {
  private static final String DESIGNED = "LABC guidance on notching and drilling";

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
    if (!TimberFigures.UK_JOIST_SHARE.holds(diameter, depth)) {
      return no("A hole of " + diameter + " is over a quarter of the joist's depth of " + depth);
    }
    if (diameter.compareTo(TimberFigures.UK_JOIST_MOST.length()) > 0) {
      return no("A hole of " + diameter + " is over the 65 mm that any joist allows");
    }
    long off = Math.abs(top.nm() - bottom.nm());
    if (off > 2 * TimberFigures.UK_CENTRELINE.length().nm()) {
      return no("The hole is off the joist's centreline by " + new Length(off / 2));
    }
    return inZone(along, span)
        ? Verdict.yes(TimberFigures.UK_JOIST_SHARE.source())
        : no("The hole is not between 0.25 and 0.4 of the span from a support");
  }

  /** Either end is a support, so the zone lies twice in the span. */
  private static boolean inZone(Length along, Length span) {
    Length near = along.nm() * 2 <= span.nm() ? along : span.minus(along);
    boolean farEnough = near.nm() >= Math.ceil(TimberFigures.UK_SPAN_FROM.value() * span.nm());
    return farEnough && TimberFigures.UK_SPAN_TO.holds(near, span);
  }

  private static Verdict no(String text) {
    return no(TimberFigures.UK_JOIST_SHARE.source(), text + ".");
  }

  private static Verdict no(String source, String text) {
    return Verdict.no(Severity.STANDARD, source, text);
  }

  /** No published figure for studs was seen; the joist's quarter is borrowed, as practice. */
  @Override
  public Verdict studBore(
      Length width, Length diameter, Length edge, boolean bearing, boolean doubled) {
    return bearing ? quarter(width, diameter) : CommonPractice.partition(width, diameter, edge);
  }

  @Override
  public Verdict plateBore(Length width, Length diameter, boolean bearing) {
    Length edge = RulePack.centredEdge(width, diameter);
    return bearing ? quarter(width, diameter) : CommonPractice.partition(width, diameter, edge);
  }

  private static Verdict quarter(Length width, Length diameter) {
    Figure share = TimberFigures.UK_STUD_SHARE;
    return share.holds(diameter, width)
        ? Verdict.yes(share.cited())
        : Verdict.no(
            Severity.PRACTICE,
            share.cited(),
            "A hole of " + diameter + " is over a quarter of the width of " + width + ".");
  }

  /** C4-1: three diameters of the wider hole, centre to centre. */
  @Override
  public Verdict joistSpacing(Length centres, Length diameter, Length other) {
    Length wide = diameter.compareTo(other) < 0 ? other : diameter;
    return centres.nm() >= TimberFigures.UK_SPACING.value() * wide.nm()
        ? Verdict.yes(TimberFigures.UK_SPACING.source())
        : no("Two holes are " + centres + " apart; three diameters of " + wide + " are needed");
  }

  @Override
  public Verdict channel(Length leaf, Length depth, boolean upright) {
    return channel(
        leaf, depth, upright, Severity.STANDARD, TimberFigures.UK_CHANNEL_UPRIGHT.cited());
  }

  /** A third of the leaf upright, a sixth level. */
  static Verdict channel(
      Length leaf, Length depth, boolean upright, Severity severity, String source) {
    Figure share = upright ? TimberFigures.UK_CHANNEL_UPRIGHT : TimberFigures.UK_CHANNEL_LEVEL;
    return share.holds(depth, leaf)
        ? Verdict.yes(source)
        : Verdict.no(
            severity,
            source,
            (upright ? "An upright" : "A level")
                + " channel may be at most "
                + (upright ? "a third" : "a sixth")
                + " of the leaf of "
                + leaf
                + " deep; this is "
                + depth
                + ".");
  }

  /** No UK clause was confirmed; cable along a return-air space is advised against. */
  @Override
  public Verdict returnAir(boolean across, boolean plenumRated) {
    return CommonPractice.returnAir(across, plenumRated);
  }

  @Override
  public Verdict fromPower(Length gap, PowerWiring power, Length wanted) {
    Figure least = WiringFigures.UK_FROM_POWER;
    return gap.compareTo(least.length()) < 0
        ? Verdict.no(
            Severity.STANDARD,
            least.cited(),
            "Keep 50 mm from mains cable, or a divider between; this is " + gap + ".")
        : PowerPractice.judge(gap, wanted, least.cited());
  }
}
