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

  private final TreeSet<Finding> found =
      new TreeSet<>(
          Comparator.comparing(Finding::rule)
              .thenComparing(f -> f.place().id())
              .thenComparing(Finding::text));

  List<Finding> findings() {
    return List.copyOf(found);
  }

  private void add(String rule, Strip s, String text) {
    String id = String.join("-", s.sides());
    Place place = Place.of(id, s.heading().frame().toWorld(s.s().mid(), s.t().mid(), 0));
    found.add(new Finding(rule, Severity.NOTE, place, EXPERIENCE, text));
  }

  void tight(Strip s, Texts texts) {
    add(
        "studs-do-not-fit",
        s,
        "The gap between %s is %s, too little for the stated %s studs with board on both faces. Check the sizes of the rooms or the studs."
            .formatted(both(s), texts.length(s.t().length()), s.make().studs().value().name()));
  }

  void taken2x6(Strip s, Texts texts) {
    add(
        "wall-taken-for-2x6",
        s,
        "The gap between %s is %s, so its studs are taken for 2x6. Look into a box cut-out to be sure."
            .formatted(both(s), texts.length(s.t().length())));
  }

  void thin(Strip s, Texts texts) {
    add(
        "thin-wall",
        s,
        "The wall between %s is only %s thick, too thin for 2x4 studs the usual way. Find out how it is built."
            .formatted(both(s), texts.length(s.t().length())));
  }

  void thick(Strip s, Texts texts) {
    add(
        "thick-wall",
        s,
        "The wall between %s is %s thick. It may hold a chase, a pipe or two rows of studs; state its studs or thickness once you know."
            .formatted(both(s), texts.length(s.t().length())));
  }

  private static String both(Strip s) {
    return String.join(" and ", s.sides());
  }
}
