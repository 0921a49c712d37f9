package holloway.check;

/**
 * One reason why a plan is refused.
 *
 * @param run id of the run, empty when the fault is of the plan as a whole
 * @param step position of the step in the run from 1, 0 when no single step is at fault
 * @param place id of the hollow, crossing, hole, work or total at fault
 * @param text what was found and what would have been right
 */
public record Refusal(String run, int step, String place, String text) {
  @Override
  public String toString() {
    String where = run.isEmpty() ? "plan" : step == 0 ? run : run + ", step " + step;
    return where + " (" + place + "): " + text;
  }
}
