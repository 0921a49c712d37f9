package holloway.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Data snooping: looks for gross errors one at a time by the w-test. The observation with the
 * largest standardised residual is suspected if that is over the critical value; those that would
 * explain what is seen equally well are suspected with it. One of them is then left out and the
 * rest is looked at again, until nothing stands out.
 *
 * <p>Source: W. Baarda, A Testing Procedure for Use in Geodetic Networks, Netherlands Geodetic
 * Commission, Publications on Geodesy 2(5), Delft 1968.
 */
final class Snooping {
  /** Normal quantile of a two-sided test at the level 0.1 %, Baarda's usual choice. */
  static final double CRITICAL = 3.29;

  /**
   * Standardised residuals this near to the largest cannot be told from it; in a single loop all
   * are equal, and doubles round at 1e-12.
   */
  private static final double TIE = 1e-3;

  /** Observations of which one is wrong by about that much, most easily misread first. */
  record Group(List<Residual> suspects) {
    Group {
      suspects = List.copyOf(suspects);
    }

    double w() {
      return suspects.stream().mapToDouble(s -> Math.abs(s.w())).max().orElse(0);
    }
  }

  private Snooping() {}

  /** Groups in the order they were found, the most certain first. */
  static List<Group> of(Network network, int held) {
    List<Group> groups = new ArrayList<>();
    Network rest = network;
    Set<Observation> named = new HashSet<>();
    while (true) {
      Group group = strongest(Residual.of(rest, held));
      if (group.suspects.isEmpty()) {
        return groups;
      }
      List<Residual> news =
          group.suspects.stream().filter(s -> named.add(s.observation())).toList();
      if (!news.isEmpty()) {
        groups.add(new Group(news));
      }
      rest = rest.without(group.suspects.get(0).observation());
    }
  }

  private static Group strongest(List<Residual> residuals) {
    double most = residuals.stream().mapToDouble(r -> Math.abs(r.w())).max().orElse(0);
    if (most <= CRITICAL) {
      return new Group(List.of());
    }
    return new Group(
        residuals.stream()
            .filter(r -> Math.abs(r.w()) >= most * (1 - TIE))
            .sorted(
                Comparator.comparing((Residual r) -> r.observation().label().sort())
                    .thenComparing(Residual::observation, Observation.ORDER))
            .toList());
  }
}
