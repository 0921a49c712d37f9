package holloway.look;

import java.util.Optional;

/** A rectangle of pixels, from the upper left corner. */
public record Area(float x, float y, float width, float height) {
  /** The left half (0) or the right one (1). */
  public Area half(int which) {
    return new Area(x + which * width / 2, y, width / 2, height);
  }

  public float right() {
    return x + width;
  }

  public float bottom() {
    return y + height;
  }

  public float midX() {
    return x + width / 2;
  }

  public float midY() {
    return y + height / 2;
  }

  /** How many square pixels two have in common. */
  public float shared(Area o) {
    float w = Math.min(right(), o.right()) - Math.max(x, o.x);
    float h = Math.min(bottom(), o.bottom()) - Math.max(y, o.y);
    return w > 0 && h > 0 ? w * h : 0;
  }

  /** What of a line lies in here: x and y of both its ends. */
  public Optional<float[]> part(float x0, float y0, float x1, float y1) {
    float from = 0;
    float to = 1;
    float[] start = {x0 - x, right() - x0, y0 - y, bottom() - y0};
    float[] gain = {x1 - x0, x0 - x1, y1 - y0, y0 - y1};
    for (int i = 0; i < 4; i++) {
      // Inside of this edge where start + t * gain is not under 0.
      if (gain[i] > 0) {
        from = Math.max(from, -start[i] / gain[i]);
      } else if (gain[i] < 0) {
        to = Math.min(to, -start[i] / gain[i]);
      } else if (start[i] < 0) {
        return Optional.empty();
      }
    }
    float dx = x1 - x0;
    float dy = y1 - y0;
    return from > to
        ? Optional.empty()
        : Optional.of(new float[] {x0 + from * dx, y0 + from * dy, x0 + to * dx, y0 + to * dy});
  }

  public boolean within(Area o) {
    return x >= o.x && y >= o.y && right() <= o.right() && bottom() <= o.bottom();
  }

  /** Smaller by a margin on every side, larger if it is under 0. */
  public Area inset(float margin) {
    return new Area(x + margin, y + margin, width - 2 * margin, height - 2 * margin);
  }
}
