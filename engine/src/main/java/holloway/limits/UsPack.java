package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;

/** The IRC's bore limits and the NEC's wiring rules, as models; the local code decides. */
final class UsPack implements RulePack {
  private final LocalRules local;

  UsPack(LocalRules local) {
    this.local = local;
  }

  @Override
  public LocalRules local() {
    return local;
  }

  @Override
  public String name() {
    return "us";
  }

  /** IRC R502.8.1 and R802.7.1: a third of the depth, 2 in to top and bottom, anywhere along. */
  @Override
  public Verdict joistBore(
      Length depth,
      Length diameter,
      Length top,
      Length bottom,
      Length along,
      Length span,
      MemberMake make) {
    var engineered =
        NeverBored.judge(
            make, diameter, top, bottom, Severity.LAW, Source.us("IRC R502.8.2, R802.7.2"));
    if (engineered.isPresent()) {
      return engineered.get();
    }
    if (make == MemberMake.BEAM) {
      return Verdict.no(
          Severity.PRACTICE, Source.PRACTICE, "Do not bore a beam, girder or header for a cable.");
    }
    Figure share = local.of(RuleKey.JOIST_HOLE, TimberFigures.US_JOIST_SHARE);
    if (!share.holds(diameter, depth)) {
      return Verdict.no(
          local.severity(RuleKey.JOIST_HOLE, Severity.LAW),
          share.from(),
          "A hole of %s is over %s of the joist's depth of %s."
              .formatted(diameter, share.said(), depth));
    }
    Figure least = local.of(RuleKey.JOIST_EDGE, TimberFigures.US_JOIST_EDGE);
    if (top.compareTo(least.length()) < 0 || bottom.compareTo(least.length()) < 0) {
      return Verdict.no(
          local.severity(RuleKey.JOIST_EDGE, Severity.LAW),
          least.from(),
          "The hole leaves less than %s to the top or bottom of the joist."
              .formatted(least.said()));
    }
    return Verdict.yes(share.from());
  }

  /** IRC R602.6(2): 40 % bearing or outer, 60 % doubled or partition; 5/8 in to the edge. */
  @Override
  public Verdict studBore(
      Length width, Length diameter, Length edge, boolean bearing, boolean doubled) {
    RuleKey key = studKey(bearing, doubled);
    Figure share = local.of(key, key.usual("us").get(0));
    if (!share.holds(diameter, width)) {
      return Verdict.no(
          local.severity(key, Severity.LAW),
          share.from(),
          "A hole of %s is over %s of the stud's width of %s."
              .formatted(diameter, share.said(), width));
    }
    Figure least = local.of(RuleKey.STUD_EDGE, TimberFigures.US_STUD_EDGE);
    if (edge.compareTo(least.length()) < 0) {
      return Verdict.no(
          local.severity(RuleKey.STUD_EDGE, Severity.LAW),
          least.from(),
          "The hole leaves less than " + least.said() + " to the edge of the stud.");
    }
    Figure single = local.of(RuleKey.BEARING_STUD_HOLE, TimberFigures.US_STUD_BEARING);
    boolean onlyDoubled = !single.holds(diameter, width) && bearing;
    return onlyDoubled
        ? Verdict.yesBut(Severity.LAW, share.from(), "At most two such doubled studs in a row.")
        : Verdict.yes(share.from());
  }

  private static RuleKey studKey(boolean bearing, boolean doubled) {
    if (!bearing) {
      return RuleKey.PARTITION_STUD_HOLE;
    }
    return doubled ? RuleKey.DOUBLED_STUD_HOLE : RuleKey.BEARING_STUD_HOLE;
  }

  /**
   * R602.6.1 asks a steel tie where more than half of a bearing wall's plate is cut, for piping or
   * ductwork. It does not speak of cable, so half is taken as the limit out of good practice; in a
   * partition the stud's 60 % likewise.
   */
  @Override
  public Verdict plateBore(Length width, Length diameter, boolean bearing) {
    RuleKey key = bearing ? RuleKey.BEARING_PLATE_HOLE : RuleKey.PARTITION_PLATE_HOLE;
    Figure share = local.of(key, key.usual("us").get(0));
    String worded = bearing ? " (worded for pipes and ducts)" : " (for studs)";
    Source source = share.from().isOwn() ? share.from() : share.from().noting(worded);
    return share.holds(diameter, width)
        ? Verdict.yes(source)
        : Verdict.no(
            local.severity(key, Severity.PRACTICE),
            source,
            "A hole of " + diameter + " weakens the plate, which is " + width + " wide.");
  }

  /** IRC R502.8.1: 2 in of wood between two holes. */
  @Override
  public Verdict joistSpacing(Length centres, Length diameter, Length other) {
    long clear = 2 * centres.nm() - diameter.nm() - other.nm();
    Figure least = local.of(RuleKey.JOIST_EDGE, TimberFigures.US_JOIST_EDGE);
    return clear >= 2 * least.length().nm()
        ? Verdict.yes(least.from())
        : Verdict.no(
            local.severity(RuleKey.JOIST_EDGE, Severity.LAW),
            least.from(),
            "Less than " + least.said() + " of joist is left between two holes.");
  }

  @Override
  public Verdict joistNotch(JoistNotch notch) {
    return NotchLimits.us(notch);
  }

  @Override
  public Verdict studNotch(Length width, Length deep, boolean bearing) {
    return NotchLimits.stud(
        width, deep, bearing, Severity.LAW, NotchFigures.US_STUD_BEARING.from());
  }

  /** IRC R502.8.1: 2 in of wood between a hole and a notch. */
  @Override
  public Verdict besideNotch(Length clear, Length along) {
    Figure least = local.of(RuleKey.JOIST_EDGE, TimberFigures.US_JOIST_EDGE);
    return clear.compareTo(least.length()) >= 0
        ? Verdict.yes(least.from())
        : Verdict.no(
            local.severity(RuleKey.JOIST_EDGE, Severity.LAW),
            least.from(),
            "Less than " + least.said() + " of joist is left between the hole and a notch.");
  }

  /** No US figure was confirmed; the UK's is used as practice. */
  @Override
  public Verdict channel(Length leaf, Length depth, boolean upright) {
    return UkPack.channel(
        leaf,
        depth,
        upright,
        Severity.PRACTICE,
        Source.anywhere("no US source confirmed; as in the UK"),
        local);
  }

  /** NEC 300.22(C) and its exception for dwellings. */
  @Override
  public Verdict returnAir(boolean across, boolean plenumRated) {
    if (across) {
      return Verdict.yes(Source.us("NEC 300.22(C) exception"));
    }
    return plenumRated
        ? Verdict.yes(Source.us("NEC 300.22(C), 800.113"))
        : Verdict.no(
            Severity.LAW,
            Source.us("NEC 300.22(C)"),
            "Cable that is not plenum-rated runs along a return-air space. Cross it at right"
                + " angles, use plenum cable, or go another way.");
  }

  /** NEC 800.133: 2 in from open conductors; beside NM and other sheathed cable only practice. */
  @Override
  public Verdict fromPower(Length gap, PowerWiring power, Length wanted) {
    if (power == PowerWiring.OPEN_CONDUCTORS
        && gap.compareTo(WiringFigures.FROM_POWER.length()) < 0) {
      return Verdict.no(
          Severity.LAW,
          WiringFigures.FROM_POWER.from(),
          "Keep 51 mm (2 in) from open power conductors; this is " + gap + ".");
    }
    return PowerPractice.judge(gap, wanted, Source.us("NEC 800.133 exception 1 lets it"), local);
  }
}
