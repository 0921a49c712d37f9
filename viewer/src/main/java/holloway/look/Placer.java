package holloway.look;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for labels: near what they name, not over each other, not over what must stay seen.
 * The same labels in the same order get the same places.
 */
public final class Placer {
  private static final int DIRECTIONS = 16;
  private static final float[] FAR = {0, 10, 22, 38, 58, 84, 116, 156, 204};

  private final Area bounds;
  private final float scale;
  private final List<Area> taken = new ArrayList<>();

  /**
   * @param bounds labels stay inside
   * @param scale of the type: distances grow with it
   */
  public Placer(Area bounds, float scale) {
    this.bounds = bounds;
    this.scale = scale;
  }

  /** Nothing may be put over this. */
  public void keepFree(Area a) {
    taken.add(a);
  }

  /** Whether something was put there or is kept free there. */
  public boolean isFree(Area a) {
    return a.within(bounds) && taken.stream().allMatch(t -> t.shared(a) == 0);
  }

  /**
   * A place for a label of a size beside a point, and takes it. Where none is free, the one that
   * hides least.
   *
   * @param gap pixels from the point to the label at least
   */
  public Area beside(float x, float y, float width, float height, float gap) {
    Area best = null;
    double least = Double.MAX_VALUE;
    for (float far : FAR) {
      for (int i = 0; i < DIRECTIONS; i++) {
        Area a = at(x, y, width, height, gap + far * scale, i);
        double cost = hides(a) + far * 0.01;
        if (cost < least) {
          least = cost;
          best = a;
        }
        if (hides(a) == 0) {
          taken.add(a);
          return a;
        }
      }
    }
    taken.add(best);
    return best;
  }

  private static Area at(float x, float y, float w, float h, float gap, int direction) {
    // Up and to the right first, then round from there.
    double angle = Math.PI / 4 + 2 * Math.PI * direction / DIRECTIONS;
    float dx = (float) Math.cos(angle);
    float dy = (float) -Math.sin(angle);
    return new Area(x + dx * (gap + w / 2) - w / 2, y + dy * (gap + h / 2) - h / 2, w, h);
  }

  private double hides(Area a) {
    double sum = 0;
    for (Area t : taken) {
      sum += t.shared(a);
    }
    double outside = a.width() * a.height() - a.shared(bounds);
    return sum + 4 * Math.max(0, outside > 0.5 ? outside : 0);
  }
}
