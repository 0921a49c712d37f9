package holloway.schedule;

import java.util.List;

/**
 * The work in the order it is done. Steps name what they need and make as tokens: {@code
 * checked:HOLE}, {@code open:ACCESS}, {@code pilot:HOLE}, {@code hole:HOLE}, {@code marked:RUN},
 * {@code end:RUN:N} (the cable's leading end has come out of stretch N), {@code sealed:HOLE},
 * {@code through:HOLE:RUN}, {@code pulled:PULL}, {@code terminated:RUN:from} and {@code :to},
 * {@code labelled:RUN:from} and {@code :to}, {@code tested:RUN}, {@code closed:ACCESS}.
 *
 * @param steps in the order in which they can be done
 * @param pulls in the order of their steps
 * @param visits to zones, in the order of time
 * @param visitsBound no order of these steps with this crew needs fewer visits
 * @param crew 1 or 2
 * @param tests one a run, in the order of the plan
 * @param openings where patches, lifted boards and the like are that the steps open
 */
public record WorkSchedule(
    List<Step> steps,
    List<Pull> pulls,
    List<Visit> visits,
    int visitsBound,
    int crew,
    List<RunProof> tests,
    List<OpenPlace> openings) {
  public WorkSchedule {
    steps = List.copyOf(steps);
    pulls = List.copyOf(pulls);
    visits = List.copyOf(visits);
    tests = List.copyOf(tests);
    openings = List.copyOf(openings);
  }

  /** The same work with where its openings are. */
  WorkSchedule with(List<OpenPlace> where) {
    return new WorkSchedule(steps, pulls, visits, visitsBound, crew, tests, where);
  }

  /** True when the visits are proven to be as few as can be. */
  public boolean fewestProven() {
    return visits.size() == visitsBound;
  }
}
