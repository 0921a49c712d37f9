package holloway.limits;

import static holloway.limits.Figure.Grade.A;
import static holloway.limits.Figure.Grade.B;
import static holloway.limits.Figure.Grade.C;
import static holloway.limits.Figure.Grade.D;
import static holloway.limits.Figure.Grade.M;

import holloway.finding.Source;
import java.util.List;

/** Loss of fibre, power over the cable, and tubes with cable in them. */
public final class SignalFigures {
  private static final Source FIBRE = Source.anywhere("TIA-568.3");
  private static final Source IEEE = Source.anywhere("IEEE 802.3");
  private static final Source POWER = Source.anywhere("IEEE 802.3 clauses 33 and 145");
  private static final Source FILL =
      Source.us("NEC ch. 9 Table 1, borrowed: it does not bind data cable");

  public static final Figure CONNECTOR =
      new Figure("A4-1", "loss of a mated pair of connectors", 0.75, "dB", FIBRE, C);
  public static final Figure SPLICE = new Figure("A4-2", "loss of a splice", 0.3, "dB", FIBRE, B);
  public static final Figure PER_KM =
      new Figure(
          "A4-3",
          "loss of OM3 and OM4 a km at 850 nm",
          3.5,
          "dB",
          Source.anywhere("568-C.3, ISO/IEC 11801; 3.0 in later editions, sources differ"),
          C);
  public static final Figure PER_KM_SINGLE =
      new Figure("A4-11", "loss of single-mode fibre a km, indoors", 1.0, "dB", FIBRE, M);
  public static final Figure PER_KM_SINGLE_OUTSIDE =
      new Figure(
          "A4-12",
          "loss of single-mode fibre a km, outside plant",
          0.5,
          "dB",
          Source.anywhere("TIA-568-A, as a test gear maker's example has it"),
          B);
  public static final Figure BUDGET_SINGLE =
      new Figure("A4-13", "10GBASE-LR, loss on single-mode fibre", 6.2, "dB", IEEE, M);
  public static final Figure TEN_SR_OM3 =
      new Figure("A3-6", "10GBASE-SR on OM3", 300, "m", IEEE.noting("-2012"), B);
  public static final Figure TEN_SR_OM4 =
      new Figure(
          "A3-6",
          "10GBASE-SR on OM4",
          400,
          "m",
          IEEE.noting("-2012; makers print 550 m, sources differ"),
          B);
  public static final Figure BUDGET_OM3 =
      new Figure("A4-5", "10GBASE-SR, loss on OM3", 2.6, "dB", Source.anywhere("TIA-568-C.0"), A);
  public static final Figure BUDGET_OM4 =
      new Figure("A4-6", "10GBASE-SR, loss on OM4", 2.9, "dB", IEEE, B);

  public static final Figure PAIR_OHMS =
      new Figure(
          "A5-10",
          "resistance of one conductor, 100 m",
          9.38,
          "ohm",
          Source.anywhere("TIA-568-C.2"),
          B);
  public static final Figure LOOP_OHMS =
      new Figure("A5-9", "loop of one pairset", 12.5, "ohm", POWER, B);
  public static final Figure FAR_VOLTS =
      new Figure("A5-7", "least volts at the far end, class 3 to 6", 42.5, "V", POWER, B);
  public static final Figure FAR_VOLTS_8 =
      new Figure("A5-7", "least volts at the far end, class 7 and 8", 41.1, "V", POWER, B);
  public static final Figure BUNDLE =
      new Figure(
          "M-1",
          "powered cables in one bundle",
          24,
          "count",
          Source.anywhere("usual advice on bundles"),
          M);

  public static final Figure FILL_ONE =
      new Figure("A6-1", "one cable, of a tube's section", 0.53, "fraction", FILL, B);
  public static final Figure FILL_TWO =
      new Figure("A6-1", "two cables, of a tube's section", 0.31, "fraction", FILL, B);
  public static final Figure FILL_MORE =
      new Figure("A6-1", "three cables or more, of a tube's section", 0.40, "fraction", FILL, B);
  public static final Figure FILL_NIPPLE =
      new Figure("A6-2", "a tube of 24 in or less", 0.60, "fraction", FILL, B);
  public static final Figure TUBE_BENDS =
      new Figure(
          "A6-11",
          "quarter turns between pull points",
          2,
          "count",
          Source.anywhere(
              "TIA-569, BICSI; power rules let four through, sources differ by purpose"),
          B);
  public static final Figure TUBE_LONG =
      new Figure("A6-12", "between pull points", 30, "m", Source.anywhere("TIA-569"), B);
  public static final Figure FRICTION =
      new Figure(
          "E18", "friction of dry cable in a tube", 0.5, "fraction", Source.anywhere("generic"), C);
  public static final Figure QUARTER =
      new Figure(
          "E19",
          "pull after a quarter turn at 0.5",
          2.193,
          "times",
          Source.anywhere("capstan equation"),
          D);

  private SignalFigures() {}

  /** All figures of this sheet, in the order of the rules. */
  public static List<Figure> list() {
    return List.of(
        CONNECTOR,
        SPLICE,
        PER_KM,
        PER_KM_SINGLE,
        PER_KM_SINGLE_OUTSIDE,
        BUDGET_SINGLE,
        TEN_SR_OM3,
        TEN_SR_OM4,
        BUDGET_OM3,
        BUDGET_OM4,
        PAIR_OHMS,
        LOOP_OHMS,
        FAR_VOLTS,
        FAR_VOLTS_8,
        BUNDLE,
        FILL_ONE,
        FILL_TWO,
        FILL_MORE,
        FILL_NIPPLE,
        TUBE_BENDS,
        TUBE_LONG,
        FRICTION,
        QUARTER);
  }
}
