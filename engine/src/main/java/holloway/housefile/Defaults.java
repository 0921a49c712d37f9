package holloway.housefile;

import holloway.house.Fact;
import holloway.house.Fill;
import holloway.house.Lining;
import holloway.house.Timber;
import holloway.house.WallSpec;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What is assumed when the person does not say, by place and era. Every one is a {@link
 * Fact#assumed} and shows in a plan as such. Numbers with an id are from the trade facts; the
 * others are common practice without a published source, or from memory where that is said.
 */
final class Defaults {
  private static final Length NONE = Length.ZERO;

  private final Era era;

  Defaults(Era era) {
    this.era = era;
  }

  /** D1, D2: 2x6 outside from 1980, 2x4 before (common practice); UK 63x38 CLS (D7). */
  Fact<Timber> studs(boolean outer) {
    if (era.isUk()) {
      // J20: studs of about 100x50 before the 1920s
      return Fact.assumed(
          Timbers.parse(era.built() < 1920 ? "50x100" : "38x63", era.built()), Length.mm(6));
    }
    return Fact.assumed(
        Timbers.parse(outer && era.built() >= 1980 ? "2x6" : "2x4", era.built()), Length.mm(3));
  }

  /** D6: 16 in; D7: 400 mm; J20: about 460 mm before 1920; J28: mixed before 1940. */
  Fact<Length> studSpacing() {
    if (era.isUk()) {
      return Fact.assumed(Length.mm(era.built() < 1920 ? 460 : 400), Length.mm(15));
    }
    return Fact.assumed(Length.inches(16), Length.mm(era.built() < 1940 ? 40 : 6));
  }

  /** UK outer walls are masonry (J24: timber frame is the smaller part); others framed. */
  WallSpec.Kind kind(boolean outer) {
    return outer && era.isUk() ? WallSpec.Kind.MASONRY : WallSpec.Kind.FRAMED;
  }

  /**
   * Finish to finish, of masonry: a cavity wall with plaster is taken as 300 mm, a solid one before
   * 1925 as 250 mm (J25), a partition as 125 mm; all from memory. A framed wall is as thick as its
   * studs and what is on them, which the survey adds up.
   */
  Optional<Fact<Length>> thickness(boolean outer, WallSpec.Kind kind) {
    if (kind == WallSpec.Kind.FRAMED) {
      return Optional.empty();
    }
    return Optional.of(
        outer
            ? Fact.assumed(Length.mm(era.built() < 1925 ? 250 : 300), Length.mm(25))
            : Fact.assumed(Length.mm(125), Length.mm(15)));
  }

  /**
   * J12, J13: outer walls are filled from about 1980, unknown before; inner walls are empty. That
   * US batts are mostly faced is common practice, no published source.
   */
  Fact<Fill> wallFill(boolean outer) {
    if (!outer) {
      return Fact.assumed(Fill.EMPTY);
    }
    if (era.built() < 1980) {
      return Fact.assumed(Fill.UNKNOWN);
    }
    return Fact.assumed(era.isUk() ? Fill.UNFACED_BATT : Fill.FACED_BATT);
  }

  /** J11: wood lath to the late 1940s, board after; J20 and J23 for the UK. */
  Lining wallLining() {
    if (era.built() < 1950) {
      return era.isUk() ? Lining.PLASTER : Lining.LATH_AND_PLASTER;
    }
    return era.isUk() && era.built() < 1975 ? Lining.PLASTER : Lining.BOARD;
  }

  /** J11 as for walls; UK ceilings were lath and plaster before 1950. */
  Lining ceilingLining() {
    return era.built() < 1950 ? Lining.LATH_AND_PLASTER : Lining.BOARD;
  }

  /** D8, D9: 8 ft 1 in; 9 ft before 1930 and the UK heights are from memory. */
  Fact<Length> ceilingHeight() {
    boolean old = era.built() < 1930;
    Length spread = Length.mm(old ? 150 : 25);
    if (era.isUk()) {
      return Fact.assumed(Length.mm(old ? 2700 : 2400), spread);
    }
    return Fact.assumed(old ? Length.feet(9) : Length.inches(97), spread);
  }

  /** 2x10 (D4) and 47x195 joists: common practice. */
  Fact<Timber> joists(Timber.Kind kind) {
    Timber t = Timbers.parse(era.isUk() ? "47x195" : "2x10", era.built());
    return Fact.assumed(new Timber(t.name(), t.thickness(), t.depth(), kind), Length.mm(6));
  }

  /** D6, D7. */
  Fact<Length> joistSpacing() {
    return Fact.assumed(era.isUk() ? Length.mm(400) : Length.inches(16), Length.mm(10));
  }

  /** UK floors were boarded before about 1970; US boards lie under the finish floor (J10). */
  boolean liftingBoards() {
    return era.isUk() && era.built() < 1970;
  }

  /** C3-18 wants 18 in at the hatch; 24 in with a wide spread is from memory. */
  Fact<Length> crawlClearance() {
    return Fact.assumed(Length.inches(24), Length.mm(150));
  }

  /** Bottom chords of 2x4 (D20) at 24 in (D6), ceiling joists 2x6 at 16 in; UK from memory. */
  Fact<Timber> chord(boolean trusses) {
    String uk = trusses ? "35x97" : "47x97";
    String us = trusses ? "2x4" : "2x6";
    return Fact.assumed(Timbers.parse(era.isUk() ? uk : us, era.built()), Length.mm(6));
  }

  Fact<Length> chordSpacing(boolean trusses) {
    if (era.isUk()) {
      return Fact.assumed(Length.mm(trusses ? 600 : 400), Length.mm(15));
    }
    return Fact.assumed(Length.inches(trusses ? 24 : 16), Length.mm(15));
  }

  /** Overhang: from memory. */
  Fact<Length> eaves() {
    return Fact.assumed(era.isUk() ? Length.mm(300) : Length.inches(12), Length.mm(100));
  }

  /** Depth on an attic floor: from memory. */
  Fact<Length> atticInsulation() {
    return Fact.assumed(Length.mm(era.built() < 1980 ? 100 : 250), Length.mm(75));
  }

  /** D12: 6 ft 8 in; a UK leaf is 1981 mm (from memory). Windows commonly line up with doors. */
  Fact<Length> head() {
    return Fact.assumed(era.isUk() ? Length.mm(2000) : Length.inches(80), Length.mm(25));
  }

  /** Window sills: common practice, no published source. */
  Fact<Length> sill() {
    return Fact.assumed(era.isUk() ? Length.mm(900) : Length.feet(3), Length.mm(100));
  }

  /** D18: 16 in is a choice; 450 mm is the usual UK height (from memory). */
  Fact<Length> outletHeight() {
    return Fact.assumed(era.isUk() ? Length.mm(450) : Length.inches(16), NONE);
  }

  /** All outer or all inner walls, whole, from what the person said and these defaults. */
  WallSpec complete(WallSpec said, boolean outer) {
    WallSpec.Kind kind = said.kind().orElse(kind(outer));
    Fact<Timber> studs = said.studs().orElse(studs(outer));
    return new WallSpec(
        Optional.empty(),
        said.name(),
        Optional.of(kind),
        Optional.of(studs),
        Optional.of(said.every().orElse(studSpacing())),
        said.studsFrom(),
        said.thickness().or(() -> thickness(outer, kind)),
        said.bearing().or(() -> outer ? Optional.of(Fact.assumed(true)) : Optional.empty()),
        Optional.of(said.fill().orElse(wallFill(outer))),
        said.garageSeparation(),
        said.balloon(),
        said.singleTopPlate(),
        List.copyOf(said.blocksAt()),
        said.traits(),
        said.where());
  }
}
