package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;
import java.util.Optional;

/** Makes that nobody bores without their maker or a designer, the same in every pack. */
final class NeverBored {
  private static final Source MAKERS = TimberFigures.I_JOIST_KNOCKOUT.from();

  private NeverBored() {}

  /** The verdict for an engineered make; empty for sawn timber, which the packs judge. */
  static Optional<Verdict> judge(
      MemberMake make,
      Length diameter,
      Length top,
      Length bottom,
      Severity severity,
      Source source) {
    return switch (make) {
      case SOLID, RAFTER, BEAM -> Optional.empty();
      case I_JOIST -> Optional.of(knockout(diameter, top, bottom, severity, source));
      case OPEN_WEB ->
          Optional.of(
              Verdict.no(severity, source, "Never bore an open-web joist: pass between its webs."));
      case TRUSS, LVL, GLULAM, STEEL ->
          Optional.of(
              Verdict.no(
                  severity,
                  source,
                  "Never cut, notch or bore "
                      + make.words()
                      + " without its maker or a designer."));
    };
  }

  /** C1-10, C1-11: only knockouts in the web, flanges whole, 1/8 in of web left. */
  private static Verdict knockout(
      Length diameter, Length top, Length bottom, Severity severity, Source source) {
    Length clear =
        TimberFigures.I_JOIST_FLANGE.length().plus(TimberFigures.I_JOIST_WEB_LEFT.length());
    if (diameter.compareTo(TimberFigures.I_JOIST_KNOCKOUT.length()) > 0) {
      return Verdict.no(
          severity,
          source.and(MAKERS),
          "Through an I-joist only the web's knockouts, 38 mm (1-1/2 in); this is "
              + diameter
              + ".");
    }
    if (top.compareTo(clear) < 0 || bottom.compareTo(clear) < 0) {
      return Verdict.no(
          severity,
          source.and(MAKERS),
          "The hole touches a flange of the I-joist, or leaves less than 3 mm (1/8 in) of web.");
    }
    return Verdict.yesBut(
        Severity.STANDARD, MAKERS, "Use a knockout in the web; see the maker's chart first.");
  }
}
