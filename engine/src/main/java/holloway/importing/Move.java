package holloway.importing;

/**
 * From a local frame to the one around it: where its axes point and where its origin lies. The axes
 * may be longer or shorter than one where a mapped shape is scaled.
 */
record Move(Vec x, Vec y, Vec z, Vec origin) {
  static final Move NONE = new Move(Vec.X, Vec.Y, Vec.Z, Vec.ZERO);

  /** A right-handed frame with the third axis along {@code axis} and the first near {@code ref}. */
  static Move of(Vec origin, Vec axis, Vec ref) {
    Vec z = axis.unit();
    Vec along = ref.minus(z.times(ref.dot(z)));
    Vec x = along.length() > 1e-9 ? along.unit() : anyAcross(z);
    return new Move(x, z.cross(x), z, origin);
  }

  private static Vec anyAcross(Vec z) {
    Vec other = Math.abs(z.x()) < 0.9 ? Vec.X : Vec.Y;
    return other.minus(z.times(other.dot(z))).unit();
  }

  Vec apply(Vec p) {
    return origin.plus(turn(p));
  }

  /** A direction. */
  Vec turn(Vec d) {
    return x.times(d.x()).plus(y.times(d.y())).plus(z.times(d.z()));
  }

  /** The inner frame's move seen from the frame around this one. */
  Move then(Move inner) {
    return new Move(turn(inner.x), turn(inner.y), turn(inner.z), apply(inner.origin));
  }
}
