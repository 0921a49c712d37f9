package holloway.limits;

import holloway.finding.Severity;
import holloway.units.Length;

/**
 * No rule pack: the house stands where we know no code, so every limit is advice. The stricter of
 * the US and UK figures is taken for joists, so that a hole offered here would pass in both.
 */
final class NoPack implements RulePack {
  private final LocalRules local;
  private final RulePack us;
  private final RulePack uk;

  NoPack(LocalRules local) {
    this.local = local;
    us = new UsPack(local);
    uk = new UkPack(local);
  }

  @Override
  public LocalRules local() {
    return local;
  }

  @Override
  public String name() {
    return "none";
  }

  @Override
  public Verdict joistBore(
      Length depth,
      Length diameter,
      Length top,
      Length bottom,
      Length along,
      Length span,
      MemberMake make) {
    Verdict first = us.joistBore(depth, diameter, top, bottom, along, span, make);
    return advice(
        first.allowed() ? uk.joistBore(depth, diameter, top, bottom, along, span, make) : first);
  }

  @Override
  public Verdict studBore(
      Length width, Length diameter, Length edge, boolean bearing, boolean doubled) {
    Verdict first = us.studBore(width, diameter, edge, bearing, doubled);
    return advice(first.allowed() ? uk.studBore(width, diameter, edge, bearing, doubled) : first);
  }

  @Override
  public Verdict plateBore(Length width, Length diameter, boolean bearing) {
    Verdict first = us.plateBore(width, diameter, bearing);
    return advice(first.allowed() ? uk.plateBore(width, diameter, bearing) : first);
  }

  @Override
  public Verdict joistSpacing(Length centres, Length diameter, Length other) {
    Verdict first = us.joistSpacing(centres, diameter, other);
    return advice(first.allowed() ? uk.joistSpacing(centres, diameter, other) : first);
  }

  @Override
  public Verdict joistNotch(JoistNotch notch) {
    Verdict first = us.joistNotch(notch);
    return advice(first.allowed() ? uk.joistNotch(notch) : first);
  }

  @Override
  public Verdict studNotch(Length width, Length deep, boolean bearing) {
    return advice(us.studNotch(width, deep, bearing));
  }

  @Override
  public Verdict besideNotch(Length clear, Length along) {
    Verdict first = us.besideNotch(clear, along);
    return advice(first.allowed() ? uk.besideNotch(clear, along) : first);
  }

  @Override
  public Verdict channel(Length leaf, Length depth, boolean upright) {
    return advice(uk.channel(leaf, depth, upright));
  }

  @Override
  public Verdict returnAir(boolean across, boolean plenumRated) {
    return CommonPractice.returnAir(across, plenumRated);
  }

  @Override
  public Verdict fromPower(Length gap, PowerWiring power, Length wanted) {
    return advice(uk.fromPower(gap, power, wanted));
  }

  /** What is law or standard elsewhere is advice here; what the person's own rules say stays. */
  private static Verdict advice(Verdict verdict) {
    return verdict.severity() == Severity.NOTE || verdict.own()
        ? verdict
        : new Verdict(verdict.allowed(), verdict.from(), verdict.text(), Severity.PRACTICE);
  }
}
