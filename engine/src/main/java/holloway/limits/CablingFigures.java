package holloway.limits;

import static holloway.limits.Figure.Grade.A;
import static holloway.limits.Figure.Grade.B;
import static holloway.limits.Figure.Grade.C;
import static holloway.limits.Figure.Grade.D;

import holloway.finding.Source;
import java.util.List;

/** Lengths, reaches and handling of data cable. */
public final class CablingFigures {
  private static final Source LINK = Source.anywhere("TIA-568.0/.1, ISO/IEC 11801-1");
  private static final Source TSB = Source.anywhere("TIA TSB-155-A");
  private static final Source BEND = Source.anywhere("TIA-568.0-D");
  private static final Source HEAT = Source.anywhere("ANSI/TIA-568-C.2 6.4.7");

  public static final Figure LINK_MOST =
      new Figure("A1-1", "permanent link of four-pair cable", 90, "m", LINK, B);
  public static final Figure CHANNEL_MOST =
      new Figure("A1-2", "channel, cords and all", 100, "m", LINK, B);
  public static final Figure CORDS_MOST =
      new Figure("A1-3", "all cords at a link of 90 m", 10, "m", Source.anywhere("TIA-568.1"), B);
  public static final Figure CORD_SUM =
      new Figure("A1-4", "H + (1 + D) x C, at most", 102, "m", Source.anywhere("TIA-568.0"), A);
  public static final Figure CORD_OUTLET =
      new Figure("A1-5", "cord at the outlet, 24 AWG", 22, "m", Source.anywhere("TIA-568.0"), A);
  public static final Figure HEAT_UTP =
      new Figure("A1-9", "more loss a degree, UTP, 20 to 40 C", 0.004, "fraction", HEAT, A);
  public static final Figure HEAT_UTP_HOT =
      new Figure("A1-9", "more loss a degree, UTP, 40 to 60 C", 0.006, "fraction", HEAT, A);
  public static final Figure HEAT_SCREENED =
      new Figure("A1-9", "more loss a degree, screened", 0.002, "fraction", HEAT, A);
  public static final Figure HOT_40 =
      new Figure("A1-10", "link at 40 C, UTP", 84, "m", Source.anywhere("TIA-568-C.2 Annex G"), B);
  public static final Figure HOT_50 =
      new Figure(
          "A1-11", "link at 50 C, UTP", 79.5, "m", Source.anywhere("TIA-568-B.2-1 Annex G"), B);
  public static final Figure HEAT_RULE =
      new Figure(
          "A1-14",
          "metres of link lost as loss doubles",
          75,
          "m",
          Source.anywhere("fit of A1-9 to A1-10 and A1-11, sources differ"),
          D);
  public static final Figure HEAT_FROM =
      new Figure("A1-16", "reference temperature", 20, "C", Source.anywhere("TIA-568-C.2"), A);
  public static final Figure ATTIC_HEAT =
      new Figure(
          "D25",
          "space under a roof in summer",
          50,
          "C",
          Source.anywhere("University of California, cited"),
          C);

  public static final Figure PULL_COPPER =
      new Figure("A2-1", "pull on one four-pair cable", 25, "lbf", Source.anywhere("TIA-568.0"), B);
  public static final Figure PULL_FIBRE =
      new Figure(
          "A2-2",
          "pull on indoor fibre of 2 or 4",
          50,
          "lbf",
          Source.anywhere("TIA-568-B.3, 568.0"),
          B);
  public static final Figure BEND_UTP =
      new Figure("A2-3", "inside bend radius, UTP, of its diameter", 4, "count", BEND, B);
  public static final Figure BEND_CORD =
      new Figure("A2-5", "inside bend radius, patch cord, of its diameter", 4, "count", BEND, B);
  public static final Figure BEND_FIBRE =
      new Figure(
          "A2-7",
          "bend radius, indoor fibre at rest",
          1,
          "in",
          Source.anywhere("TIA-568-B.3, 568.0"),
          B);
  public static final Figure BEND_FIBRE_PULLED =
      new Figure(
          "A2-7",
          "bend radius, indoor fibre pulled",
          2,
          "in",
          Source.anywhere("TIA-568-B.3, 568.0"),
          B);
  public static final Figure BEND_OTHER_FIBRE =
      new Figure(
          "A2-8",
          "bend radius, other fibre at rest, of its diameter",
          10,
          "count",
          Source.anywhere("TIA-568.3"),
          B);
  public static final Figure BEND_OTHER_PULLED =
      new Figure(
          "A2-8",
          "bend radius, other fibre pulled, of its diameter",
          20,
          "count",
          Source.anywhere("later editions of TIA-568.3; 15 in older ones, sources differ"),
          B);
  public static final Figure BEND_LEAD =
      new Figure("A2-9", "bend radius, fibre lead", 1, "in", BEND, B);
  public static final Figure SUPPORTS =
      new Figure(
          "A2-15",
          "between supports",
          4,
          "ft",
          Source.anywhere(
              "a university's cabling specification; TIA-569 is said to allow 5 ft, sources differ"),
          B);

  public static final Figure TEN_CAT6 =
      new Figure("A3-1", "10GBASE-T on Cat 6 UTP, expected", 37, "m", TSB, A);
  public static final Figure TEN_CAT6_MOST =
      new Figure("A3-1", "10GBASE-T on Cat 6 UTP with mitigation from", 55, "m", TSB, A);
  public static final Figure TEN_CAT6A =
      new Figure("A3-3", "10GBASE-T on Cat 6A", 100, "m", Source.anywhere("IEEE 802.3an"), B);
  public static final Figure GIGABIT =
      new Figure(
          "A3-4",
          "1000BASE-T and 2.5GBASE-T on Cat 5e",
          100,
          "m",
          Source.anywhere("IEEE 802.3ab/bz"),
          B);
  public static final Figure COLD_PULL =
      new Figure("E21", "pull no PVC jacket colder than", 32, "F", Source.anywhere("a vendor"), C);

  private CablingFigures() {}

  /** All figures of this sheet, in the order of the rules. */
  public static List<Figure> list() {
    return List.of(
        LINK_MOST,
        CHANNEL_MOST,
        CORDS_MOST,
        CORD_SUM,
        CORD_OUTLET,
        HEAT_UTP,
        HEAT_UTP_HOT,
        HEAT_SCREENED,
        HOT_40,
        HOT_50,
        HEAT_RULE,
        HEAT_FROM,
        ATTIC_HEAT,
        PULL_COPPER,
        PULL_FIBRE,
        BEND_UTP,
        BEND_CORD,
        BEND_FIBRE,
        BEND_FIBRE_PULLED,
        BEND_OTHER_FIBRE,
        BEND_OTHER_PULLED,
        BEND_LEAD,
        SUPPORTS,
        TEN_CAT6,
        TEN_CAT6_MOST,
        TEN_CAT6A,
        GIGABIT,
        COLD_PULL);
  }
}
