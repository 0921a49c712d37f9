package holloway.look;

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

  public boolean within(Area o) {
    return x >= o.x && y >= o.y && right() <= o.right() && bottom() <= o.bottom();
  }

  /** Smaller by a margin on every side, larger if it is under 0. */
  public Area inset(float margin) {
    return new Area(x + margin, y + margin, width - 2 * margin, height - 2 * margin);
  }
}
