package holloway.limits;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The figures that a rule file of one's own may state. Each stands for one or two figures of the
 * packs, which are what is taken otherwise.
 */
public enum RuleKey {
  JOIST_HOLE(
      Sort.SHARE,
      false,
      "a hole in a joist, of its depth",
      Map.of("us", TimberFigures.US_JOIST_SHARE, "uk", TimberFigures.UK_JOIST_SHARE)),
  JOIST_HOLE_SIZE(
      Sort.LENGTH,
      false,
      "the widest hole in any joist",
      Map.of("uk", TimberFigures.UK_JOIST_MOST)),
  JOIST_EDGE(
      Sort.LENGTH,
      true,
      "wood from a joist's hole to its edges, and between two holes",
      Map.of("us", TimberFigures.US_JOIST_EDGE)),
  JOIST_HOLE_FROM(
      Sort.SHARE,
      true,
      "from the nearer support to a joist's hole, of the span",
      Map.of("uk", TimberFigures.UK_SPAN_FROM)),
  JOIST_HOLE_TO(
      Sort.SHARE,
      false,
      "from the nearer support to a joist's hole, of the span",
      Map.of("uk", TimberFigures.UK_SPAN_TO)),
  JOIST_HOLES_APART(
      Sort.COUNT,
      true,
      "two holes in a joist, centre to centre, in diameters of the wider one",
      Map.of("uk", TimberFigures.UK_SPACING)),
  BEARING_STUD_HOLE(
      Sort.SHARE,
      false,
      "a hole in a stud of a bearing or outer wall, of its width",
      Map.of("us", TimberFigures.US_STUD_BEARING, "uk", TimberFigures.UK_STUD_SHARE)),
  DOUBLED_STUD_HOLE(
      Sort.SHARE,
      false,
      "a hole in a doubled stud of such a wall",
      Map.of("us", TimberFigures.US_STUD_DOUBLED)),
  PARTITION_STUD_HOLE(
      Sort.SHARE,
      false,
      "a hole in a stud of a wall that bears nothing, of its width",
      Map.of("us", TimberFigures.US_STUD_PARTITION, "uk", TimberFigures.PARTITION_SHARE)),
  STUD_EDGE(
      Sort.LENGTH,
      true,
      "wood from a stud's hole to the stud's edge",
      Map.of("us", TimberFigures.US_STUD_EDGE, "uk", TimberFigures.PARTITION_EDGE)),
  BEARING_PLATE_HOLE(
      Sort.SHARE,
      false,
      "a hole in a plate of a bearing or outer wall, of its width",
      Map.of("us", TimberFigures.US_PLATE_SHARE, "uk", TimberFigures.UK_STUD_SHARE)),
  PARTITION_PLATE_HOLE(
      Sort.SHARE,
      false,
      "a hole in a plate of a wall that bears nothing, of its width",
      Map.of("us", TimberFigures.US_STUD_PARTITION, "uk", TimberFigures.PARTITION_SHARE)),
  NAIL_PLATE_EDGE(
      Sort.LENGTH,
      true,
      "wood from a hole to the face of a stud or plate, before steel is put over it",
      every(TimberFigures.PLATE_EDGE)),
  UPRIGHT_CHANNEL(
      Sort.SHARE,
      false,
      "the depth of an upright channel, of the masonry leaf",
      every(TimberFigures.UK_CHANNEL_UPRIGHT)),
  LEVEL_CHANNEL(
      Sort.SHARE,
      false,
      "the depth of a level channel, of the masonry leaf",
      every(TimberFigures.UK_CHANNEL_LEVEL)),
  BESIDE_POWER(
      Sort.LENGTH,
      true,
      "data cable from sheathed power cable in the same wall",
      Map.of("us", WiringFigures.BESIDE_POWER, "uk", WiringFigures.UK_FROM_POWER)),
  OUTDOOR_CABLE_INDOORS(
      Sort.LENGTH,
      false,
      "unlisted outdoor cable from where it comes in",
      every(WiringFigures.OUTSIDE_CABLE_INDOORS)),
  BONDING_WIRE(
      Sort.LENGTH, false, "the bonding wire of a provider's line", every(EntryFigures.BOND_LONG)),
  BURIED_CABLE(Sort.LENGTH, true, "earth over bare cable", every(EntryFigures.BURIED)),
  BURIED_TUBE(Sort.LENGTH, true, "earth over a plastic duct", every(EntryFigures.BURIED_TUBE)),
  SUPPORTS(Sort.LENGTH, false, "between two supports of a cable", every(CablingFigures.SUPPORTS)),
  LINK(Sort.LENGTH, false, "a four-pair cable, slack and all", every(CablingFigures.LINK_MOST)),
  BOXES_APART(
      Sort.LENGTH,
      true,
      "boxes back to back in a wall that parts fire",
      every(FireFigures.RATED_BOXES));

  /** What kind of number it is. */
  public enum Sort {
    /** A part of a whole. */
    SHARE,
    LENGTH,
    /** A whole number. */
    COUNT
  }

  private final Sort sort;
  private final boolean least;
  private final String what;
  private final Map<String, Figure> usual;

  RuleKey(Sort sort, boolean least, String what, Map<String, Figure> usual) {
    this.sort = sort;
    this.least = least;
    this.what = what;
    this.usual = usual;
  }

  private static Map<String, Figure> every(Figure figure) {
    return Map.of("us", figure, "uk", figure);
  }

  /** The word of a rule file. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public Sort sort() {
    return sort;
  }

  /** True where more than the figure is asked for, false where no more is allowed. */
  public boolean least() {
    return least;
  }

  /** The word before the figure in a rule file. */
  public String bound() {
    return least ? "at-least" : "at-most";
  }

  public String what() {
    return what;
  }

  /**
   * The figures of a pack that it stands for, one; two where a house without rules keeps both; none
   * where that pack knows no such figure.
   */
  public List<Figure> usual(String place) {
    return usual.containsKey(place)
        ? List.of(usual.get(place))
        : place.equals("us") || place.equals("uk")
            ? List.of()
            : usual.values().stream().distinct().toList();
  }

  public static Optional<RuleKey> find(String word) {
    return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
  }
}
