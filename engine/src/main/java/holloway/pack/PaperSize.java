package holloway.pack;

import holloway.house.House;
import holloway.house.RulePlace;

/** The sheets that the pack is printed on. */
public enum PaperSize {
  A4("a4", 210, 297),
  LETTER("letter", 215.9, 279.4);

  private final String word;
  private final double wideMm;
  private final double highMm;

  PaperSize(String word, double wideMm, double highMm) {
    this.word = word;
    this.wideMm = wideMm;
    this.highMm = highMm;
  }

  /** What is in the printers of a country. */
  public static PaperSize usual(House house) {
    return house.place() == RulePlace.US ? LETTER : A4;
  }

  public String word() {
    return word;
  }

  double wideMm() {
    return wideMm;
  }

  double highMm() {
    return highMm;
  }
}
