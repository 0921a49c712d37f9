package holloway.survey;

import holloway.finding.Finding;
import holloway.finding.Place;
import holloway.finding.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** What the survey has to say beside its result. */
final class Notes {
  private static final String EXPERIENCE = "common practice, no published source";
  private static final String SNOOPING =
      "Baarda 1968, A Testing Procedure for Use in Geodetic Networks";

  private final Gaps gaps;
  private final Texts texts;

  private final TreeSet<Finding> found =
      new TreeSet<>(
          Comparator.comparing(Finding::rule)
              .thenComparing(f -> f.place().id())
              .thenComparing(Finding::text));

  Notes(Gaps gaps, Texts texts) {
    this.gaps = gaps;
    this.texts = texts;
  }

  List<Finding> findings() {
    return List.copyOf(found);
  }

  /** A measurement between the rest of the house and itself, although each of its loops closes. */
  void standsOut(String verdict) {
    found.add(
        new Finding(
            "measurement-stands-out", Severity.NOTE, Place.of("survey"), SNOOPING, verdict));
  }

  /** With the measurements of both rooms that leave the gap. */
  private void add(String rule, Strip s, String text) {
    String id = String.join("-", s.sides());
    Place place = Place.of(id, s.heading().frame().toWorld(s.s().mid(), s.t().mid(), 0));
    String measures = gaps.between(s.shown().get(0).edge(), s.shown().get(1).edge());
    found.add(new Finding(rule, Severity.NOTE, place, EXPERIENCE, text + " " + measures));
  }

  void tight(Strip s) {
    add(
        "studs-do-not-fit",
        s,
        "The gap between %s is %s, too little for the stated %s studs with board on both faces. Check the sizes of the rooms or the studs."
            .formatted(both(s), gap(s), studs(s)));
  }

  void tightLayers(Strip s, long linings) {
    add(
        "linings-do-not-fit",
        s,
        "The gap between %s is %s, too little for its studs and %s of linings. Check the sizes of the rooms, the studs or the layers."
            .formatted(both(s), gap(s), texts.length(linings)));
  }

  void roomy(Strip s) {
    add(
        "wall-thicker-than-framing",
        s,
        "The gap between %s is %s, more than the stated %s studs and any lining fill. It may hold a chase, a pipe or two rows of studs, or a size is wrong; state its thickness once you know."
            .formatted(both(s), gap(s), studs(s)));
  }

  void taken2x6(Strip s) {
    add(
        "wall-taken-for-2x6",
        s,
        "The gap between %s is %s, so its studs are taken for 2x6. Look into a box cut-out to be sure."
            .formatted(both(s), gap(s)));
  }

  void thin(Strip s) {
    add(
        "thin-wall",
        s,
        "The wall between %s is only %s thick, too thin for 2x4 studs the usual way. Find out how it is built."
            .formatted(both(s), gap(s)));
  }

  void thick(Strip s) {
    add(
        "thick-wall",
        s,
        "The wall between %s is %s thick. It may hold a chase, a pipe or two rows of studs; state its studs or thickness once you know."
            .formatted(both(s), gap(s)));
  }

  void thinMasonry(Strip s, long core) {
    add(
        "thin-masonry",
        s,
        "The gap between %s is %s; that leaves %s for the masonry, less than any brick or block wall has. Check the sizes of the rooms."
            .formatted(both(s), gap(s), texts.length(Math.max(0, core))));
  }

  void notAsStated(Strip s) {
    add(
        "wall-not-as-thick-as-stated",
        s,
        "The wall between %s is stated as %s thick, but the rooms leave %s. Measure it again at a door or a window."
            .formatted(
                both(s), texts.length(s.make().thickness().orElseThrow().value().nm()), gap(s)));
  }

  private String gap(Strip s) {
    return texts.length(s.t().length());
  }

  private static String studs(Strip s) {
    return s.make().studs().value().name();
  }

  private static String both(Strip s) {
    return String.join(" and ", s.sides());
  }
}
