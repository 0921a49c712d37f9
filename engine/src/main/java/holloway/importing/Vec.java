package holloway.importing;

/** A point or direction in space, millimetres. */
record Vec(double x, double y, double z) {
  static final Vec ZERO = new Vec(0, 0, 0);
  static final Vec X = new Vec(1, 0, 0);
  static final Vec Y = new Vec(0, 1, 0);
  static final Vec Z = new Vec(0, 0, 1);

  Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y, z + o.z);
  }

  Vec minus(Vec o) {
    return new Vec(x - o.x, y - o.y, z - o.z);
  }

  Vec times(double f) {
    return new Vec(x * f, y * f, z * f);
  }

  double dot(Vec o) {
    return x * o.x + y * o.y + z * o.z;
  }

  Vec cross(Vec o) {
    return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  double length() {
    return Math.sqrt(dot(this));
  }

  /** Of length one; a direction without length is refused. */
  Vec unit() {
    double l = length();
    if (!(l > 1e-12)) {
      throw new Unreadable("a direction has no length");
    }
    return times(1 / l);
  }
}
