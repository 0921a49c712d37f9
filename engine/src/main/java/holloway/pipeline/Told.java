package holloway.pipeline;

import holloway.request.Effort;
import holloway.request.Profile;
import java.util.Locale;

/** Puts the planner's progress into words: which round it is at, how plan and bound close in. */
final class Told implements holloway.solve.Progress {
  private static final int EVERY = 50;

  private final Progress progress;
  private final Profile profile;
  private String last = "";

  Told(Progress progress, Profile profile) {
    this.progress = progress;
    this.profile = profile;
  }

  @Override
  public void at(String what, int done, int of) {
    if (done == of || done % EVERY == 0) {
      progress.now("%s, %d of %d".formatted(what, done, of));
    }
  }

  @Override
  public void closing(long price, long bound) {
    double gap = price == 0 ? 0 : (price - bound) / (double) price;
    String within = String.format(Locale.ROOT, "within %.2f %% of the least", 100 * gap);
    String words =
        profile == Profile.LEAST_WORK
            ? "plan %s min, none under %s min: %s".formatted(minutes(price), minutes(bound), within)
            : "a plan " + within;
    if (!words.equals(last)) {
      progress.now(words);
    }
    last = words;
  }

  private static String minutes(long units) {
    return String.format(Locale.ROOT, "%.1f", units / (double) Effort.PER_MINUTE);
  }
}
