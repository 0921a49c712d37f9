package holloway.survey;

import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the test on residuals says of a loop, for a person with a tape in hand. */
final class Verdict {
  /** Of an error in a measurement checked worse than this, little shows; a usual rule of thumb. */
  private static final double WELL_CHECKED = 0.1;

  private final Texts texts;

  Verdict(Texts texts) {
    this.texts = texts;
  }

  static List<Misclosure.Suspect> suspects(List<Snooping.Group> groups) {
    List<Misclosure.Suspect> out = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      for (Residual r : groups.get(g).suspects()) {
        out.add(
            new Misclosure.Suspect(
                g + 1, r.observation().text(), Length.mm(r.error()), r.w(), r.redundancy()));
      }
    }
    return out;
  }

  /** One sentence a group; one that nothing stands out when there is none. */
  List<String> says(List<Snooping.Group> groups) {
    if (groups.isEmpty()) {
      return List.of(
          "No single measurement stands out enough to be blamed (the critical w is 3.29). Measure"
              + " those of this loop again, the longest first.");
    }
    return groups.stream().map(this::says).toList();
  }

  String says(Snooping.Group group) {
    List<Residual> suspects = group.suspects();
    String test = String.format(Locale.ROOT, " (w %.1f, critical 3.29)", group.w());
    if (suspects.size() == 1) {
      return "Likeliest culprit" + test + ": " + says(suspects.get(0)) + rough(suspects) + ".";
    }
    return "One of these "
        + suspects.size()
        + " is wrong"
        + test
        + ", and the numbers cannot tell which: "
        + suspects.stream().map(this::says).collect(Collectors.joining("; or "))
        + rough(suspects)
        + ". Measure them again, or tape across by another way, which would tell.";
  }

  private String says(Residual r) {
    String by = texts.length(Math.abs(Math.round(r.error() * 1e6)));
    boolean more = r.error() > 0;
    String how =
        switch (r.observation().label().sort()) {
          case TAPED -> "the tape probably read %s too %s in";
          case THICKNESS -> "this is probably %s %s than written:";
          case IN_LINE -> "these probably stand %s %s:";
        };
    String which =
        switch (r.observation().label().sort()) {
          case TAPED -> more ? "much" : "little";
          case THICKNESS -> more ? "thinner" : "thicker";
          case IN_LINE -> "off where they are said to be";
        };
    return how.formatted(by, which) + " " + r.observation().text();
  }

  private static String rough(List<Residual> suspects) {
    boolean badly = suspects.stream().anyMatch(r -> r.redundancy() < WELL_CHECKED);
    return badly ? " (so little checks this that the size is a rough guess)" : "";
  }
}
