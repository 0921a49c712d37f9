package holloway.units;

/** How lengths are printed for a person. */
public enum UnitSystem {
  FT_IN,
  METRIC;

  public String format(Length length) {
    return this == FT_IN ? LengthText.feetInches(length) : LengthText.metric(length);
  }
}
