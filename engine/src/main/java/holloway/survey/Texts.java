package holloway.survey;

import holloway.house.Fact;
import holloway.house.House;
import holloway.house.RulePlace;
import holloway.house.Where;
import holloway.units.Length;
import holloway.units.UnitSystem;

/** Words for measurements in the units that the house's place uses. */
record Texts(UnitSystem units) {
  static Texts of(House house) {
    return new Texts(house.place() == RulePlace.US ? UnitSystem.FT_IN : UnitSystem.METRIC);
  }

  String length(long nm) {
    return units.format(new Length(nm));
  }

  /** What was measured, the length, and file and line. */
  String measured(String what, Fact<Length> fact) {
    return what + " " + units.format(fact.value()) + at(fact.where());
  }

  String at(Where where) {
    return where.equals(Where.NOWHERE)
        ? " (assumed)"
        : " (" + where.file() + ":" + where.line() + ")";
  }
}
