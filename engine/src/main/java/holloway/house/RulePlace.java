package holloway.house;

/** Which rule pack applies; every rule defers to the local code. */
public enum RulePlace {
  US,
  UK,
  NONE
}
