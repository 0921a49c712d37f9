package holloway.survey;

import holloway.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What the test on residuals says of a loop, for a person with a tape in hand. */
final class Verdict {
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
      Residual only = suspects.get(0);
      return "Likeliest culprit%s: %s %s, give or take %s."
          .formatted(
              test,
              fault(only, "probably "),
              only.observation().text(),
              length(only.errorSpread()));
    }
    return "One of these %d is wrong%s, and the numbers cannot tell which: %s. Measure them again, or tape across by another way, which would tell."
        .formatted(suspects.size(), test, together(suspects));
  }

  /** Suspects of which the same would have to be said are said it of once. */
  private String together(List<Residual> suspects) {
    Map<String, List<String>> byFault = new LinkedHashMap<>();
    for (Residual r : suspects) {
      byFault.computeIfAbsent(fault(r, ""), key -> new ArrayList<>()).add(r.observation().text());
    }
    return byFault.entrySet().stream()
        .map(e -> e.getKey() + " " + String.join(", or in ", e.getValue()))
        .collect(Collectors.joining("; or "));
  }

  private String fault(Residual r, String how) {
    String by = length(Math.abs(r.error()));
    boolean more = r.error() > 0;
    return switch (r.observation().label().sort()) {
      case TAPED -> "the tape %sread %s too %s in".formatted(how, by, more ? "much" : "little");
      case THICKNESS -> "%s%s %s than written in".formatted(how, by, more ? "thinner" : "thicker");
      case IN_LINE -> "%s%s out of place in".formatted(how, by);
    };
  }

  private String length(double mm) {
    return texts.length(Math.round(mm * 1e6));
  }
}
