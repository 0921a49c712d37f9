package holloway.schedule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One thing to do, at one place, by one person or by two together. Values only; sentences are made
 * elsewhere.
 *
 * @param id the same for the same work, also in a plan made again
 * @param kind what is done
 * @param subject id of the hole, opening, outlet, pull or run it is about
 * @param at where it is done, and {@code other} where a second person is needed at the same time
 *     (or where one person goes to catch what was fed in)
 * @param person who does it, from 1; {@code helper} who stands at {@code other}, 0 for nobody
 * @param visit number of the visit to a zone it belongs to, from 1; 0 for work in no zone
 * @param runs ids of the runs it serves
 * @param needs what has to be there, as tokens; see {@link WorkSchedule}
 * @param makes what is there afterwards
 * @param bring what is used at {@code at}
 * @param bringOther what is used at {@code other}
 */
public record Step(
    String id,
    Kind kind,
    String subject,
    WorkPlace at,
    Optional<WorkPlace> other,
    int person,
    int helper,
    int visit,
    int otherVisit,
    List<String> runs,
    List<String> needs,
    List<String> makes,
    List<Bring> bring,
    List<Bring> bringOther) {
  /** In the order in which work of the same standing is done. */
  public enum Kind {
    CHECK_FIRST,
    OPEN,
    CUT,
    PILOT,
    DRILL,
    MARK,
    PULL,
    SEAL,
    TERMINATE,
    LABEL,
    TEST,
    CLOSE;

    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public Step {
    runs = List.copyOf(runs);
    needs = List.copyOf(needs);
    makes = List.copyOf(makes);
    bring = List.copyOf(bring);
    bringOther = List.copyOf(bringOther);
  }

  /** The same step at its turn. */
  Step placed(int who, int with, int theVisit, int theOther) {
    return new Step(
        id,
        kind,
        subject,
        at,
        other,
        who,
        with,
        theVisit,
        theOther,
        runs,
        needs,
        makes,
        bring,
        bringOther);
  }
}
