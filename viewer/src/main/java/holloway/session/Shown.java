package holloway.session;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Everything about a view but the eye's place. A value: a change gives another.
 *
 * @param hiddenLevels names of levels that are not shown
 * @param step the step of the chosen run at which the person is on their walk, from 0
 * @param fat how many times thicker than they are cables are drawn
 * @param type steps of larger type, under 0 of smaller
 * @param light the ground for print
 */
public record Shown(
    Peel peel,
    Set<String> hiddenLevels,
    Optional<Cut> cut,
    Choice choice,
    Optional<Integer> step,
    Page page,
    int fat,
    int type,
    boolean light,
    boolean help) {
  /** What the list beside the model holds. */
  public enum Page {
    RUNS,
    HOLES,
    FINDINGS,
    CHANGES;

    public Page next() {
      return values()[(ordinal() + 1) % values().length];
    }
  }

  public static final Shown FIRST =
      new Shown(
          Peel.VEILED,
          Set.of(),
          Optional.empty(),
          Choice.NONE,
          Optional.empty(),
          Page.RUNS,
          1,
          0,
          false,
          false);

  private static final int MOST_TYPE = 6;
  private static final int LEAST_TYPE = -2;
  private static final int MOST_FAT = 16;

  public Shown {
    hiddenLevels = java.util.Collections.unmodifiableSet(new TreeSet<>(hiddenLevels));
  }

  public Shown with(Peel p) {
    return new Shown(p, hiddenLevels, cut, choice, step, page, fat, type, light, help);
  }

  /** With one level hidden that was shown, or shown again. */
  public Shown turned(String level) {
    Set<String> next = new TreeSet<>(hiddenLevels);
    if (!next.remove(level)) {
      next.add(level);
    }
    return new Shown(peel, next, cut, choice, step, page, fat, type, light, help);
  }

  /** With those levels hidden and no other. */
  public Shown hiding(Set<String> levels) {
    return new Shown(peel, levels, cut, choice, step, page, fat, type, light, help);
  }

  public Shown with(Optional<Cut> c) {
    return new Shown(peel, hiddenLevels, c, choice, step, page, fat, type, light, help);
  }

  /** With something else picked out; a walk ends. */
  public Shown choosing(Choice c) {
    return new Shown(peel, hiddenLevels, cut, c, Optional.empty(), page, fat, type, light, help);
  }

  /** At a step of the chosen run, from 0; empty ends the walk. */
  public Shown walking(Optional<Integer> at) {
    return new Shown(peel, hiddenLevels, cut, choice, at, page, fat, type, light, help);
  }

  public Shown with(Page p) {
    return new Shown(peel, hiddenLevels, cut, choice, step, p, fat, type, light, help);
  }

  /** Cables twice or half as thick, from 1 to 16 times. */
  public Shown fatter(boolean more) {
    int next = more ? Math.min(MOST_FAT, fat * 2) : Math.max(1, fat / 2);
    return new Shown(peel, hiddenLevels, cut, choice, step, page, next, type, light, help);
  }

  public Shown larger(int by) {
    int next = Math.max(LEAST_TYPE, Math.min(MOST_TYPE, type + by));
    return new Shown(peel, hiddenLevels, cut, choice, step, page, fat, next, light, help);
  }

  public Shown withLight(boolean l) {
    return new Shown(peel, hiddenLevels, cut, choice, step, page, fat, type, l, help);
  }

  public Shown withHelp(boolean h) {
    return new Shown(peel, hiddenLevels, cut, choice, step, page, fat, type, light, h);
  }

  /** How many times larger than usual the type is. */
  public float typeScale() {
    return (float) Math.pow(1.15, type);
  }
}
