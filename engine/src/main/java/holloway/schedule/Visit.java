package holloway.schedule;

import java.util.List;

/**
 * One time that somebody gets set up in a zone and works there until coming out.
 *
 * @param number from 1, in order of time
 * @param steps ids of the steps done there meanwhile, in order
 * @param bring all that these steps use there, and what is worn
 */
public record Visit(int number, WorkPlace zone, int person, List<String> steps, List<Bring> bring) {
  public Visit {
    steps = List.copyOf(steps);
    bring = List.copyOf(bring);
  }
}
