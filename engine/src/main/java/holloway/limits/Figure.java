package holloway.limits;

import holloway.finding.Source;
import holloway.units.Length;
import holloway.units.LengthText;
import java.math.BigDecimal;
import java.util.List;

/**
 * One number of a rule with its pedigree.
 *
 * @param id the row of the list of facts this project computes with, for example {@code C1-2}
 * @param what what the number limits, in plain words
 * @param value in {@code unit}; the unit that the source states is the master
 * @param unit {@code in}, {@code ft}, {@code mm}, {@code m}, {@code fraction}, {@code count} or
 *     {@code minutes}
 */
public record Figure(String id, String what, double value, String unit, Source from, Grade grade) {
  /** How the figure was verified. */
  public enum Grade {
    /** The wording of the code or standard itself was seen. */
    A,
    /** A trade, vendor or university page states it and names the standard. */
    B,
    /** A practice page, or a single weak source: common practice. */
    C,
    /** Arithmetic from grade A or B values. */
    D,
    /** From memory, not confirmed: a default, never a test's oracle. */
    M,
    /** A person's own rule file: nobody here has seen its source. */
    L
  }

  /** Parts of one that have a word of their own, from a half on. */
  private static final List<String> PARTS = List.of("half", "a third", "a quarter", "", "a sixth");

  /** The value as an exact length. Throws if the unit is not one of length. */
  public Length length() {
    double nm =
        switch (unit) {
          case "in" -> value * Length.NM_PER_INCH;
          case "ft" -> value * 12 * Length.NM_PER_INCH;
          case "mm" -> value * Length.NM_PER_MM;
          case "m" -> value * 1000 * Length.NM_PER_MM;
          default -> throw new IllegalStateException(id + " is no length but in " + unit);
        };
    return new Length(Math.round(nm));
  }

  /** The figure for a sentence: {@code a third}, {@code 40 %}, {@code 51 mm (2 in)}. */
  public String said() {
    return switch (unit) {
      case "fraction" -> share();
      case "in", "ft" -> length() + " (" + LengthText.feetInches(length()) + ")";
      case "mm", "m" -> length().toString();
      default -> plain(value);
    };
  }

  private String share() {
    for (int i = 0; i < PARTS.size(); i++) {
      if (Math.abs(value * (i + 2) - 1) < 1e-9 && !PARTS.get(i).isEmpty()) {
        return PARTS.get(i);
      }
    }
    return plain(Math.round(value * 1000) / 10.0) + " %";
  }

  private static String plain(double v) {
    return new BigDecimal(String.valueOf(v)).stripTrailingZeros().toPlainString();
  }

  /** For comparing two figures of one sort: millimetres, or the plain number. */
  double size() {
    return switch (unit) {
      case "in", "ft", "mm", "m" -> length().toMm();
      default -> value;
    };
  }

  /**
   * True if {@code part} is at most this fraction of {@code whole}; exact for the fractions used.
   */
  boolean holds(Length part, Length whole) {
    if (!unit.equals("fraction")) {
      throw new IllegalStateException(id + " is no fraction but in " + unit);
    }
    return part.nm() <= Math.floor(whole.nm() * value + 1e-3);
  }

  /** The source in words, without its grade. */
  public String source() {
    return from.words();
  }

  /** The source for a person, with the grade spelled out where it is weak. */
  public Source cited() {
    return switch (grade) {
      case A, B, D, L -> from;
      case C -> from.noting(" (common practice, no published source)");
      case M -> from.noting(" (from memory)");
    };
  }
}
