package holloway.limits;

import holloway.finding.Severity;
import holloway.units.Length;

/** The IRC's bore limits and the NEC's wiring rules, as models; the local code decides. */
final class UsPack implements RulePack {
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
        NeverBored.judge(make, diameter, top, bottom, Severity.LAW, "IRC R502.8.2, R802.7.2");
    if (engineered.isPresent()) {
      return engineered.get();
    }
    if (make == MemberMake.BEAM) {
      return Verdict.no(
          Severity.PRACTICE,
          "common practice, no published source",
          "Do not bore a beam, girder or header for a cable.");
    }
    String source = TimberFigures.US_JOIST_SHARE.source();
    if (!TimberFigures.US_JOIST_SHARE.holds(diameter, depth)) {
      return Verdict.no(
          Severity.LAW,
          source,
          "A hole of " + diameter + " is over a third of the joist's depth of " + depth + ".");
    }
    Length least = TimberFigures.US_JOIST_EDGE.length();
    if (top.compareTo(least) < 0 || bottom.compareTo(least) < 0) {
      return Verdict.no(
          Severity.LAW,
          source,
          "The hole leaves less than 51 mm (2 in) to the top or bottom of the joist.");
    }
    return Verdict.yes(source);
  }

  /** IRC R602.6(2): 40 % bearing or outer, 60 % doubled or partition; 5/8 in to the edge. */
  @Override
  public Verdict studBore(
      Length width, Length diameter, Length edge, boolean bearing, boolean doubled) {
    Figure share = studShare(bearing, doubled);
    if (!share.holds(diameter, width)) {
      String percent = Math.round(share.value() * 100) + " %";
      return Verdict.no(
          Severity.LAW,
          share.source(),
          "A hole of "
              + diameter
              + " is over "
              + percent
              + " of the stud's width of "
              + width
              + ".");
    }
    if (edge.compareTo(TimberFigures.US_STUD_EDGE.length()) < 0) {
      return Verdict.no(
          Severity.LAW,
          TimberFigures.US_STUD_EDGE.source(),
          "The hole leaves less than 16 mm (5/8 in) to the edge of the stud.");
    }
    boolean onlyDoubled = !TimberFigures.US_STUD_BEARING.holds(diameter, width) && bearing;
    return onlyDoubled
        ? Verdict.yesBut(Severity.LAW, share.source(), "At most two such doubled studs in a row.")
        : Verdict.yes(share.source());
  }

  private static Figure studShare(boolean bearing, boolean doubled) {
    if (!bearing) {
      return TimberFigures.US_STUD_PARTITION;
    }
    return doubled ? TimberFigures.US_STUD_DOUBLED : TimberFigures.US_STUD_BEARING;
  }

  /**
   * R602.6.1 asks a steel tie where more than half of a bearing wall's plate is cut, for piping or
   * ductwork. It does not speak of cable, so half is taken as the limit out of good practice; in a
   * partition the stud's 60 % likewise.
   */
  @Override
  public Verdict plateBore(Length width, Length diameter, boolean bearing) {
    Figure share = bearing ? TimberFigures.US_PLATE_SHARE : TimberFigures.US_STUD_PARTITION;
    String source = share.source() + (bearing ? " (worded for pipes and ducts)" : " (for studs)");
    return share.holds(diameter, width)
        ? Verdict.yes(source)
        : Verdict.no(
            Severity.PRACTICE,
            source,
            "A hole of " + diameter + " weakens the plate, which is " + width + " wide.");
  }

  /** IRC R502.8.1: 2 in of wood between two holes. */
  @Override
  public Verdict joistSpacing(Length centres, Length diameter, Length other) {
    long clear = 2 * centres.nm() - diameter.nm() - other.nm();
    String source = TimberFigures.US_JOIST_EDGE.source();
    return clear >= 2 * TimberFigures.US_JOIST_EDGE.length().nm()
        ? Verdict.yes(source)
        : Verdict.no(
            Severity.LAW, source, "Less than 51 mm (2 in) of joist is left between two holes.");
  }

  /** No US figure was confirmed; the UK's is used as practice. */
  @Override
  public Verdict channel(Length leaf, Length depth, boolean upright) {
    return UkPack.channel(
        leaf, depth, upright, Severity.PRACTICE, "no US source confirmed; as in the UK");
  }

  /** NEC 300.22(C) and its exception for dwellings. */
  @Override
  public Verdict returnAir(boolean across, boolean plenumRated) {
    if (across) {
      return Verdict.yes("NEC 300.22(C) exception");
    }
    return plenumRated
        ? Verdict.yes("NEC 300.22(C), 800.113")
        : Verdict.no(
            Severity.LAW,
            "NEC 300.22(C)",
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
          WiringFigures.FROM_POWER.source(),
          "Keep 51 mm (2 in) from open power conductors; this is " + gap + ".");
    }
    return PowerPractice.judge(gap, wanted, "NEC 800.133 exception 1 lets it");
  }
}
