package holloway.limits;

import holloway.units.Length;

/** Lengths as the sources print them. */
final class Inches {
  static final Length STUD_2X4 = in(3.5);
  static final Length STUD_2X6 = in(5.5);
  static final Length JOIST_2X8 = in(7.25);
  static final Length JOIST_2X10 = in(9.25);
  static final Length JOIST_2X12 = in(11.25);
  static final Length ONE_NM = new Length(1);

  private Inches() {}

  static Length in(double inches) {
    return new Length(Math.round(inches * Length.NM_PER_INCH));
  }

  static Length mm(double millimetres) {
    return Length.mm(millimetres);
  }

  static Length more(Length length) {
    return length.plus(ONE_NM);
  }

  static Length less(Length length) {
    return length.minus(ONE_NM);
  }
}
