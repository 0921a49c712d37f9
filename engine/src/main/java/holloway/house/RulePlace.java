package holloway.house;

/**
 * Which rule pack applies, and how houses are usually built there; every rule defers to the local
 * code. EU is Europe in metres: no rules of its own.
 */
public enum RulePlace {
  US,
  UK,
  EU,
  NONE
}
