package holloway.house;

/** What lies in a hollow; foam shuts it, unknown is planned as unfaced batt and said so. */
public enum Fill {
  EMPTY,
  FACED_BATT,
  UNFACED_BATT,
  LOOSE,
  DENSE_PACKED,
  FOAM,
  UNKNOWN
}
