package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;
import java.util.Optional;

/** What the places say of notches; each pack asks here with how binding it is there. */
final class NotchLimits {
  private static final String NHBC =
      " (sources differ: NHBC Standards 6.4 lets 0.15 of the depth, but at 0.1 to 0.2 of the span"
          + " and in the top edge only)";

  private NotchLimits() {}

  /** IRC R502.8.1: a sixth of the depth, a quarter at the ends, never in the middle third. */
  static Verdict us(JoistNotch n) {
    Source law = NotchFigures.US_DEEP.from();
    Optional<Verdict> engineered = engineered(n, Severity.LAW, Source.us("IRC R502.8.2, R802.7.2"));
    if (engineered.isPresent()) {
      return engineered.get();
    }
    Figure deep = n.end() ? NotchFigures.US_DEEP_AT_END : NotchFigures.US_DEEP;
    if (!deep.holds(n.deep(), n.depth())) {
      return no(Severity.LAW, law, tooDeep(n, deep));
    }
    if (!NotchFigures.US_LONG.holds(n.run(), n.depth())) {
      String text = "A notch of %s along is over %s of the depth of %s.";
      return no(Severity.LAW, law, text.formatted(n.run(), NotchFigures.US_LONG.said(), n.depth()));
    }
    if (!NotchFigures.US_THIRD.holds(n.to(), n.span())) {
      return no(Severity.LAW, law, "The notch lies in the middle third of the span.");
    }
    boolean thick = n.thickness().compareTo(NotchFigures.US_TENSION_SIDE.length()) >= 0;
    return thick && !n.top() && !n.end()
        ? no(Severity.LAW, law, "The lower edge of so thick a member is notched at its ends only.")
        : Verdict.yes(law);
  }

  /** BS 5268-2: an eighth of the depth, at most 35 mm, at 0.07 to 0.25 of the span. */
  static Verdict uk(JoistNotch n) {
    Optional<Verdict> engineered =
        engineered(n, Severity.STANDARD, Source.uk("LABC guidance on notching and drilling"));
    if (engineered.isPresent()) {
      return engineered.get();
    }
    Source source = NotchFigures.UK_DEEP.from().noting(NHBC);
    if (!NotchFigures.UK_DEEP.holds(n.deep(), n.depth())) {
      return no(Severity.STANDARD, source, tooDeep(n, NotchFigures.UK_DEEP));
    }
    if (n.deep().compareTo(NotchFigures.UK_MOST.length()) > 0) {
      return no(
          Severity.STANDARD,
          source,
          "A notch of " + n.deep() + " is over " + NotchFigures.UK_MOST.said() + " deep.");
    }
    boolean near = n.from().nm() < Math.ceil(NotchFigures.UK_FROM.value() * n.span().nm());
    return near || !NotchFigures.UK_TO.holds(n.to(), n.span())
        ? no(
            Severity.STANDARD,
            source,
            "The notch is not between 0.07 and 0.25 of the span from a support.")
        : Verdict.yes(source);
  }

  /** IRC R602.6(1). */
  static Verdict stud(Length width, Length deep, boolean bearing, Severity severity, Source from) {
    Figure share = bearing ? NotchFigures.US_STUD_BEARING : NotchFigures.US_STUD_PARTITION;
    String text = "A notch of %s is over %s of the stud's width of %s.";
    return share.holds(deep, width)
        ? Verdict.yes(from)
        : no(severity, from, text.formatted(deep, share.said(), width));
  }

  private static String tooDeep(JoistNotch n, Figure share) {
    return "A notch of %s is over %s of the depth of %s."
        .formatted(n.deep(), share.said(), n.depth());
  }

  private static Optional<Verdict> engineered(JoistNotch n, Severity severity, Source source) {
    return n.make() == MemberMake.SOLID
        ? Optional.empty()
        : Optional.of(
            no(
                severity,
                source,
                "No notch in " + n.make().words() + " without its maker or a designer."));
  }

  private static Verdict no(Severity severity, Source source, String text) {
    return Verdict.no(severity, source, text);
  }
}
