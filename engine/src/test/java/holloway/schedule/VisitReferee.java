package holloway.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Follows each person from step to step: who has come out of a zone has ended that visit. */
final class VisitReferee {
  private final WorkSchedule schedule;
  private final List<String> faults = new ArrayList<>();

  /** The visit that each person is on, 0 in no zone. */
  private final Map<Integer, Integer> now = new HashMap<>();

  private final Set<Integer> ended = new HashSet<>();

  private VisitReferee(WorkSchedule schedule) {
    this.schedule = schedule;
  }

  static List<String> faults(WorkSchedule schedule) {
    VisitReferee r = new VisitReferee(schedule);
    schedule.steps().forEach(r::step);
    return r.faults;
  }

  /** Alone, one feeds a cable in some time before one catches it: when, the step does not say. */
  private void step(Step s) {
    boolean alone = schedule.crew() == 1 && s.other().isPresent();
    if (!alone) {
      goes(s, s.person(), s.visit());
    }
    if (s.other().isPresent()) {
      goes(s, alone ? 1 : s.helper(), s.otherVisit());
    }
  }

  private void goes(Step s, int person, int visit) {
    int before = now.getOrDefault(person, 0);
    if (visit == before) {
      return;
    }
    if (before > 0) {
      ended.add(before);
    }
    if (ended.contains(visit)) {
      faults.add(s.id() + ": goes back into visit " + visit);
    }
    boolean known = visit > 0 && visit <= schedule.visits().size();
    if (known && schedule.visits().get(visit - 1).person() != person) {
      faults.add(s.id() + ": visit " + visit + " is another person's");
    }
    now.put(person, visit);
  }
}
