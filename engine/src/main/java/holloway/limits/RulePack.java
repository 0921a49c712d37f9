package holloway.limits;

import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.units.Length;
import java.util.List;
import java.util.OptionalInt;

/**
 * The rules of a place as pure predicates over plain lengths. Sections are actual sizes: a 2x4 is
 * 38.1 by 88.9 mm. The deeper or wider side of a member is the one given; {@code bearing} means a
 * bearing or an outer wall. Every verdict defers to the local code and licensed people.
 */
public interface RulePack {
  /** The word of the house file. */
  String name();

  /** The figures of a rule file of one's own that are in force here. */
  LocalRules local();

  /**
   * May a hole be bored through a member that spans?
   *
   * @param top clear wood between the hole's edge and the member's top; {@code bottom} likewise
   * @param along from one support to the hole's centre
   */
  Verdict joistBore(
      Length depth,
      Length diameter,
      Length top,
      Length bottom,
      Length along,
      Length span,
      MemberMake make);

  /**
   * May a hole be bored through a stud, across the wall?
   *
   * @param edge clear wood between the hole and the nearer edge of the stud
   * @param doubled two studs side by side
   */
  Verdict studBore(Length width, Length diameter, Length edge, boolean bearing, boolean doubled);

  /** May a centred hole be bored along the wall's height through a top or bottom plate? */
  Verdict plateBore(Length width, Length diameter, boolean bearing);

  /** May two holes lie in one joist with their centres this far apart? */
  Verdict joistSpacing(Length centres, Length diameter, Length other);

  /** Does a notch that somebody cut before keep within what a joist may lose? None is offered. */
  Verdict joistNotch(JoistNotch notch);

  /** Likewise for a notch in the face of a stud; {@code deep} of its width. */
  Verdict studNotch(Length width, Length deep, boolean bearing);

  /**
   * May a hole be bored this near to a notch in the same joist?
   *
   * @param clear wood between the two; {@code along} measured along the joist only
   */
  Verdict besideNotch(Length clear, Length along);

  /** How deep may a channel be cut into a masonry leaf? */
  Verdict channel(Length leaf, Length depth, boolean upright);

  /**
   * May cable lie in a stud or joist space used as return air?
   *
   * @param across it passes at right angles to the long dimension
   * @param plenumRated the cable is listed for air-handling spaces
   */
  Verdict returnAir(boolean across, boolean plenumRated);

  /**
   * Is this far enough from power wiring that it runs beside?
   *
   * @param wanted the person's own distance beside sheathed cable, see {@link
   *     WiringFigures#BESIDE_POWER}
   */
  Verdict fromPower(Length gap, PowerWiring power, Length wanted);

  /**
   * The pack of a place: {@code us}, {@code uk} or {@code none}; {@code eu} has none either; any
   * other word throws.
   */
  static RulePack of(String place) {
    return of(place, LocalRules.NONE);
  }

  /** The same with figures of one's own over its own. */
  static RulePack of(String place, LocalRules local) {
    return switch (place) {
      case "us" -> new UsPack(local);
      case "uk" -> new UkPack(local);
      case "none", "eu" -> new NoPack(local);
      default ->
          throw new IllegalArgumentException("no rule pack '" + place + "': us, uk, eu or none");
    };
  }

  /** The figure in force here. */
  default Figure figure(RuleKey key, Figure usual) {
    return local().of(key, usual);
  }

  /** How binding a figure is here. */
  default Severity severity(RuleKey key, Severity usual) {
    return local().severity(key, usual);
  }

  /**
   * Does a hole lie nearer than 1-1/4 in to a face of its stud or plate? NEC 300.4(A)(1) asks a
   * steel plate there for power wiring; it does not bind data cable in the editions seen, so for
   * data it is good practice in every pack.
   *
   * @param edge clear wood on one side of the hole; the other side is what is left of the width
   */
  default boolean needsNailPlate(Length width, Length diameter, Length edge) {
    Length far = width.minus(diameter).minus(edge);
    Length near = edge.compareTo(far) < 0 ? edge : far;
    return near.compareTo(figure(RuleKey.NAIL_PLATE_EDGE, TimberFigures.PLATE_EDGE).length()) < 0;
  }

  /** The same for a centred hole. */
  default boolean needsNailPlate(Length width, Length diameter) {
    return needsNailPlate(width, diameter, centredEdge(width, diameter));
  }

  /** Two holes in one plate or stud: three diameters, borrowed from C4-1 for every pack. */
  default Verdict plateSpacing(Length centres, Length diameter, Length other) {
    Length wide = diameter.compareTo(other) < 0 ? other : diameter;
    Source source = Source.PRACTICE.noting(" (a rule for joists, three diameters, borrowed)");
    return centres.nm() >= 3 * wide.nm()
        ? Verdict.yes(source)
        : Verdict.no(
            Severity.PRACTICE,
            source,
            "The holes are " + centres + " apart, less than three diameters of " + wide + ".");
  }

  /** IRC R602.6: never a hole and a notch in one section of a stud; elsewhere good practice. */
  default Verdict studBesideNotch(Length along) {
    boolean us = name().equals("us");
    Source source = us ? Source.us("IRC R602.6") : Source.PRACTICE;
    return along.nm() > 0
        ? Verdict.yes(source)
        : Verdict.no(
            us ? Severity.LAW : Severity.PRACTICE,
            source,
            "The hole lies in the same section of the stud as a notch.");
  }

  /**
   * The widest bit of a ladder, ascending millimetres, that may be bored centred through a joist at
   * the kindest lawful place along its span; empty if none may.
   */
  default OptionalInt largestJoistBore(Length depth, MemberMake make, List<Integer> bitsMm) {
    return BitLadder.widest(bitsMm, bit -> BitLadder.joist(this, depth, make, bit));
  }

  /** Likewise for a stud; without nail plates the hole keeps 1-1/4 in from both faces. */
  default OptionalInt largestStudBore(
      Length width, boolean bearing, boolean doubled, boolean nailPlate, List<Integer> bitsMm) {
    return BitLadder.widest(
        bitsMm,
        bit ->
            (nailPlate || !needsNailPlate(width, bit))
                && studBore(width, bit, centredEdge(width, bit), bearing, doubled).allowed());
  }

  /** Likewise for a top or bottom plate. */
  default OptionalInt largestPlateBore(
      Length width, boolean bearing, boolean nailPlate, List<Integer> bitsMm) {
    return BitLadder.widest(
        bitsMm,
        bit ->
            (nailPlate || !needsNailPlate(width, bit)) && plateBore(width, bit, bearing).allowed());
  }

  /** Clear wood on each side of a centred hole, rounded down; negative if the hole is wider. */
  static Length centredEdge(Length width, Length diameter) {
    return new Length(Math.floorDiv(width.nm() - diameter.nm(), 2));
  }
}
